import type { Entry, EntryId, PlantId } from "../book/entry.ts";
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
  /** Texts of series parts by content hash. */
  readonly files: readonly (readonly [file: string, text: string])[];
  readonly entries_n: number;
}

/** Raised whenever the same entries would fold to another state: old snapshots are dropped then. */
export const FOLD_VERSION = 4;

/** Pages look back over the last events of a plant (what was written last, done twice); older ones stay in the store. */
const RECENT_n = 6;

export const recentOf = (events: readonly PlantEvent[]): readonly Entry[] =>
  events.slice(-RECENT_n).map(({ entry }) => entry);

/** An acting entry stands at its corrected time: kept as typed, so that clock reports do not shift it twice. */
export const settled = (entry: Entry): Entry => ({ ...entry, atFrom: "typed" });
