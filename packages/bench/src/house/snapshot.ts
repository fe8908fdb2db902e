import type { Entry, EntryId, PlantId } from "../book/entry.ts";
import { PACE_WALKS_n } from "../round/kinds.ts";
import type { PlantEvent, PlantState } from "./plant-run.ts";

/**
 * The folded book as plain data: a cache that a start reads in place of all entries. It may be dropped at any time; it is good
 * only for the engine version and the digest under which it was kept.
 */
export interface Snapshot {
  /** Acting entries about anything but plants, corrected. */
  readonly house: readonly Entry[];
  readonly plants: readonly {
    readonly plant: PlantId;
    readonly state: PlantState;
    readonly brought: boolean;
    /** Ids of its latest events, in book order. */
    readonly recent: readonly EntryId[];
  }[];
  /** The latest events of all plants, each once: a walk of a bench is recent to many. */
  readonly recent: readonly Entry[];
  /** The latest timed walks of each person, without the plants they passed: they tell how fast people are. */
  readonly walks: readonly Entry[];
  /** Texts of series parts by content hash. */
  readonly files: readonly (readonly [file: string, text: string])[];
  readonly entries_n: number;
}

/** Raised whenever the same entries would fold to another state: old snapshots are dropped then. */
export const FOLD_VERSION = 9;

/** Pages look back over the last events of a plant (what was written last) and its last days (done twice, asked for). */
const RECENT_n = 6;
const RECENT_ms = 4 * 86_400_000;

export function recentOf(events: readonly PlantEvent[]): readonly Entry[] {
  const from_ms = (events.at(-1)?.entry.at_ms ?? 0) - RECENT_ms;
  let first_n = Math.max(0, events.length - RECENT_n);
  while (first_n > 0 && (events[first_n - 1]?.entry.at_ms ?? 0) > from_ms) first_n--;
  return events.slice(first_n).map(({ entry }) => entry);
}

/** As many of each person as a pace is learned from. */
export function latestWalks(inOrder: readonly Entry[]): readonly Entry[] {
  const left_n = new Map<string, number>();
  const latest: Entry[] = [];
  for (const walk of [...inOrder].reverse()) {
    const left = left_n.get(walk.by) ?? PACE_WALKS_n;
    if (left > 0) latest.push({ ...settled(walk), on: [] });
    left_n.set(walk.by, left - 1);
  }
  return latest.reverse();
}

/** An acting entry stands at its corrected time: kept as typed, so that clock reports do not shift it twice. */
export const settled = (entry: Entry): Entry => ({ ...entry, atFrom: "typed" });
