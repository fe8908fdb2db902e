import type { Entry, PlantId } from "../book/entry.ts";
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
    readonly recent: readonly Entry[];
  }[];
  /** Texts of series parts by content hash. */
  readonly files: readonly (readonly [file: string, text: string])[];
  readonly entries_n: number;
}

/** Raised whenever the same entries would fold to another state: old snapshots are dropped then. */
export const FOLD_VERSION = 1;

/** Pages look back over the last events of a plant (what was written last, done twice); older ones stay in the store. */
const RECENT_n = 6;

export const recentOf = (events: readonly PlantEvent[]): readonly Entry[] =>
  events.slice(-RECENT_n).map(({ entry }) => settled(entry));

/** An acting entry stands at its corrected time: kept as typed, so that clock reports do not shift it twice. */
export const settled = (entry: Entry): Entry => ({ ...entry, atFrom: "typed" });
