import { CORRECTED, entryInForce, type Standing, standing } from "../book/correct.ts";
import type { Entry, EntryId } from "../book/entry.ts";
import { entryHash } from "../book/hash.ts";
import type { AnyEntryKind, KindRegistry } from "../book/kinds.ts";
import { checkData } from "../book/kinds.ts";
import {
  type CorrectedTime,
  compareClock,
  compareOrder,
  correctedTime,
  type DeviceClock,
} from "../book/order.ts";
import { type EntryRef, redactionOf, refKey } from "../book/redact.ts";

/** Why an entry that is in the book does not act. */
export type Idle = "withdrawn" | "newer" | "request" | "broken" | "redacted";

/** A first entry with what was said about it since, and how it stands now. */
export interface Record {
  /** As it was first said. */
  readonly first: Entry;
  readonly standing: Standing;
  readonly kind: AnyEntryKind | undefined;
  /** The entry as it acts: corrected content, lifted shape, corrected time. Undefined while it does not act. */
  readonly acting?: Entry;
  readonly idle?: Idle;
}

/**
 * Turns the set of entries into records, whatever order they came in. Corrections, twins under one id and clock reports are
 * settled here, so that the folds see one plain entry each.
 */
export interface RecordBook {
  /** Takes entries; returns the first entries whose record changed (also by a clock report) with what it was before. */
  add(entries: readonly Entry[]): ReadonlyMap<EntryId, Record | undefined>;
  get(id: EntryId): Record | undefined;
  all(): Iterable<Record>;
  /** Those that do not act: few, and asked for by every page of a plant. */
  idle(): readonly Record[];
  readonly size: number;
  /** Entries that came under one id with different content. */
  readonly twins: ReadonlySet<EntryId>;
}

export const DEVICE_CLOCK = "device.clock";

export function recordBook(kinds: KindRegistry): RecordBook {
  const corrections = new Map<EntryId, Entry[]>();
  const correctionIds = new Map<EntryId, Entry>();
  const reports = new Map<EntryId, Entry>();
  const twins = new Set<EntryId>();
  const records = new Map<EntryId, Record>();
  const idle = new Map<EntryId, Record>();
  /** Entries whose body a redaction dropped. A book that is read anew does not hold them; one that is open must not either. */
  const gone = new Set<string>();
  /** What stands in their place for whoever laid them somewhere; no list of records holds it. */
  const dropped = new Map<EntryId, Record>();
  let timeOf: CorrectedTime = correctedTime([]);

  /** Of two contents under one id the smaller hash counts, on every replica alike. */
  function chosen(before: Entry | undefined, next: Entry): Entry | undefined {
    if (!before) return next;
    const [a, b] = [entryHash(before), entryHash(next)];
    if (a === b) return undefined;
    twins.add(next.id);
    return b < a ? next : undefined;
  }

  const isGone = (entry: Entry) =>
    gone.size > 0 && gone.has(refKey({ id: entry.id, hash: entryHash(entry) }));

  function settle(first: Entry): void {
    const { id } = first;
    if (isGone(first)) {
      const bare = { ...first, data: {} };
      const record: Record = { first: bare, standing: standing(bare, []), kind: undefined, idle: "redacted" };
      records.delete(id);
      idle.delete(id);
      dropped.set(id, record);
      return;
    }
    const record = recordOf(first, (corrections.size > 0 && corrections.get(id)) || [], kinds, timeOf);
    records.set(id, record);
    if (!record.acting) idle.set(id, record);
    else if (idle.size > 0) idle.delete(id);
  }

  /** A correction that was made unreadable no longer says anything of the entries that it named. */
  function dropCorrection(
    target: EntryRef,
    mark: (id: EntryId, earlier: Record | undefined) => void,
    corrected: Set<EntryId>,
  ): void {
    const said = correctionIds.get(target.id);
    if (!said || entryHash(said) !== target.hash) return;
    correctionIds.delete(target.id);
    for (const id of said.corrects ?? []) {
      corrections.set(
        id,
        (corrections.get(id) ?? []).filter((other) => other.id !== target.id),
      );
      mark(id, records.get(id));
      corrected.add(id);
    }
  }

  return {
    add(entries) {
      const changed = new Map<EntryId, Record | undefined>();
      const corrected = new Set<EntryId>();
      let clocksMoved = false;
      // What a record was before this call, not what it was between two of its entries.
      const mark = (id: EntryId, earlier: Record | undefined) => {
        if (earlier === undefined || !changed.has(id)) changed.set(id, earlier);
      };
      for (const entry of entries) {
        const target = redactionOf(entry);
        if (target) {
          gone.add(refKey(target));
          mark(target.id, records.get(target.id));
          if (records.has(target.id)) corrected.add(target.id);
          dropCorrection(target, mark, corrected);
        }
        if (entry.kind === CORRECTED) {
          if (isGone(entry)) continue;
          const kept = chosen(correctionIds.get(entry.id), entry);
          if (!kept) continue;
          correctionIds.set(entry.id, kept);
          for (const id of kept.corrects ?? []) {
            const others = (corrections.get(id) ?? []).filter((other) => other.id !== kept.id);
            corrections.set(id, [...others, kept].sort(compareClock));
            mark(id, records.get(id));
            corrected.add(id);
          }
          continue;
        }
        const earlier = records.get(entry.id);
        const kept = chosen(earlier?.first, entry);
        if (!kept) continue;
        mark(entry.id, earlier);
        settle(kept);
        if (entry.kind === DEVICE_CLOCK) {
          reports.set(entry.id, kept);
          clocksMoved = true;
        }
      }
      if (clocksMoved) {
        const data = [...reports.values()].map((report) => ({
          clock: report.clock,
          id: report.id,
          data: report.data as unknown as DeviceClock,
        }));
        const timeBefore = timeOf;
        timeOf = correctedTime(data);
        // A report is about one device and a span of its clock: what it does not move stays where it lies.
        for (const [id, record] of records) {
          if (timeOf(record.first) === timeBefore(record.first)) continue;
          mark(id, record);
          corrected.add(id);
        }
      }
      for (const id of corrected) {
        const first = records.get(id)?.first;
        if (first) settle(first);
      }
      return changed;
    },
    get: (id) => records.get(id) ?? dropped.get(id),
    all: () => records.values(),
    idle: () => [...idle.values()],
    get size() {
      return records.size;
    },
    twins,
  };
}

function recordOf(
  first: Entry,
  corrections: readonly Entry[],
  kinds: KindRegistry,
  timeOf: CorrectedTime,
): Record {
  const kind = kinds.find(first.kind);
  if (corrections.length === 0 && kind?.v === first.v) {
    const at_ms = timeOf(first);
    return new PlainRecord(first, kind, at_ms === first.at_ms ? first : { ...first, at_ms });
  }
  const stand = standing(first, corrections);
  if (!kind || stand.content.v > kind.v) return { first, standing: stand, kind, idle: "newer" };
  const inForce = entryInForce(stand);
  if (!inForce) return { first, standing: stand, kind, idle: "withdrawn" };
  const data = inForce.v < kind.v ? (kind.upcast?.(inForce.v, inForce.data) ?? inForce.data) : inForce.data;
  // A first entry passed the gate with its data; what a correction holds is checked here, where its kind is known.
  if (stand.versions.length > 1 && checkData(kind, data).length > 0)
    return { first, standing: stand, kind, idle: "broken" };
  return { first, standing: stand, kind, acting: { ...inForce, data, at_ms: timeOf(inForce) } };
}

/**
 * An entry that nobody corrected, in today's shape: nearly all of a book. Its history is written out only for who asks, so that
 * a million entries are held once and not three times.
 */
class PlainRecord implements Record {
  readonly first: Entry;
  readonly kind: AnyEntryKind;
  readonly acting: Entry;

  constructor(first: Entry, kind: AnyEntryKind, acting: Entry) {
    this.first = first;
    this.kind = kind;
    this.acting = acting;
  }

  get standing(): Standing {
    return standing(this.first, []);
  }
}

/** Sorts records into the one order of the book. */
export const inBookOrder = (a: Entry, b: Entry): number => compareOrder(a, b);
