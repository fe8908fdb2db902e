import * as v from "valibot";
import type { Correction, Entry, EntryId, Json } from "./entry.ts";
import { compareClock } from "./order.ts";

/** The kind of entry that corrects others. It names first entries, never another correction. */
export const CORRECTED = "book.corrected";

/** Data of a `book.corrected` entry. */
export const correctionSchema = v.union(
  [
    v.strictObject({ withdrawn: v.literal(true) }),
    v.strictObject({ restored: v.literal(true) }),
    v.strictObject({
      /** The whole new data, in the shape of version `v` of the corrected kind (the first entry's when left out). */
      data: v.unknown(),
      v: v.optional(v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(1000))),
      at_ms: v.optional(v.pipe(v.number(), v.minValue(946_684_800_000), v.maxValue(7_258_118_400_000))),
      on: v.optional(v.array(v.string())),
    }),
  ],
  "a correction holds withdrawn: true, restored: true, or the whole new data",
);

/** What an entry says at one moment of its history. */
export interface Content {
  readonly v: number;
  readonly data: Json;
  readonly at_ms: number;
  readonly atFrom: "clock" | "typed";
  readonly on: readonly string[];
}

/** One version in the history of an entry, for the screen: the first content, or what a correction made of it. */
export interface Version {
  /** The entry that said so: the first entry itself, or a correction. */
  readonly said: Entry;
  readonly state: "said" | "withdrawn" | "restored" | "corrected";
  /** What stood after it; when withdrawn, what was taken back. */
  readonly content: Content;
}

/** A first entry with all that was said about it since. */
export interface Standing {
  readonly first: Entry;
  readonly inForce: "yes" | "withdrawn";
  readonly content: Content;
  /** All versions, oldest first by (clock, id); the last is in force. Never empty. */
  readonly versions: readonly Version[];
}

export const isCorrection = (entry: Entry): boolean => entry.kind === CORRECTED;

/**
 * Which content of an entry is in force: the last correction by (clock, id) decides. Any order of `corrections` gives the same.
 * What a correction leaves out (`at_ms`, `on`) stays as it stood before it. `restored` brings back the last content before the withdrawal.
 *
 * @param first an entry that is no correction
 * @param corrections entries of kind `book.corrected` that name it; others and doubles are ignored
 */
export function standing(first: Entry, corrections: readonly Entry[]): Standing {
  const versions: Version[] = [{ said: first, state: "said", content: contentOf(first) }];
  let content = contentOf(first);
  let withdrawn = false;
  for (const said of inSayingOrder(first, corrections)) {
    const correction = said.data as unknown as Correction & { readonly v?: number };
    if ("withdrawn" in correction) withdrawn = true;
    else withdrawn = false;
    if ("data" in correction) content = corrected(content, first, correction);
    const state = withdrawn ? "withdrawn" : "data" in correction ? "corrected" : "restored";
    versions.push({ said, state, content });
  }
  return { first, inForce: withdrawn ? "withdrawn" : "yes", content, versions };
}

/** Corrections sorted under the first entries that they name; those that name a correction are listed apart. */
export function correctionsByFirst(entries: Iterable<Entry>): {
  readonly byFirst: ReadonlyMap<EntryId, readonly Entry[]>;
  /** Corrections that name another correction; what they say of it is never in force. */
  readonly ofCorrections: readonly Entry[];
} {
  const corrections: Entry[] = [];
  for (const entry of entries) if (isCorrection(entry)) corrections.push(entry);
  const ids = new Set(corrections.map((entry) => entry.id));
  const byFirst = new Map<EntryId, Entry[]>();
  const ofCorrections: Entry[] = [];
  for (const correction of corrections) {
    const named = new Set(correction.corrects ?? []);
    if ([...named].some((id) => ids.has(id))) ofCorrections.push(correction);
    for (const id of named) {
      if (ids.has(id)) continue;
      const list = byFirst.get(id);
      if (list) list.push(correction);
      else byFirst.set(id, [correction]);
    }
  }
  return { byFirst, ofCorrections };
}

/** The first entry with the content that is in force, as the fold sees it; undefined when it is withdrawn. */
export function entryInForce(stand: Standing): Entry | undefined {
  return stand.inForce === "withdrawn" ? undefined : { ...stand.first, ...stand.content };
}

const contentOf = ({ v, data, at_ms, atFrom, on }: Entry): Content => ({ v, data, at_ms, atFrom, on });

function corrected(
  before: Content,
  first: Entry,
  correction: {
    readonly data: Json;
    readonly v?: number;
    readonly at_ms?: number;
    readonly on?: readonly string[];
  },
): Content {
  return {
    v: correction.v ?? first.v,
    data: correction.data,
    at_ms: correction.at_ms ?? before.at_ms,
    // A time that somebody corrected by hand is typed: the clock of the device has no say in it any more.
    atFrom: correction.at_ms === undefined ? before.atFrom : "typed",
    on: correction.on ?? before.on,
  };
}

function inSayingOrder(first: Entry, corrections: readonly Entry[]): Entry[] {
  const byId = new Map<EntryId, Entry>();
  for (const entry of corrections)
    if (isCorrection(entry) && entry.corrects?.includes(first.id)) byId.set(entry.id, entry);
  return [...byId.values()].sort(compareClock);
}
