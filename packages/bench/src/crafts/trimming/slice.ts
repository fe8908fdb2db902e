import type { EntryId } from "../../book/entry.ts";
import type { Aimed, Bent, Planned, Sketched, Traced } from "./kinds.ts";

/** What the craft keeps of one plant: all of it comes from entries, nothing moves by itself at midnight. */
export interface TrimSlice {
  readonly sketch?: Sketched & { readonly at_ms: number };
  /** The structure as last traced, without what was cut since. */
  readonly trace?: Traced & { readonly at_ms: number; readonly entry: EntryId };
  /** Turns since the trace, clockwise from above. */
  readonly turned_deg: number;
  readonly aim?: Aimed;
  /** The kept plan, without the cuts that were made. */
  readonly plan?: Planned & { readonly at_ms: number };
  /** The last cut, and the share of lit leaf that it took with those of the same day. */
  readonly cut?: { readonly at_ms: number; readonly lit_frac: number };
  readonly bends: readonly Bend[];
  /** Roots were washed or cut, or the medium renewed. */
  readonly rootsAt_ms?: number;
  readonly watched_n: number;
  readonly grown_n: number;
  readonly problems: readonly EntryId[];
}

export interface Bend extends Bent {
  readonly at_ms: number;
  readonly lookedAt_ms: number;
  readonly bites: boolean;
}

/** Most plants: never sketched, never cut. One object for all, so that nothing is made for them. */
export const NOTHING: TrimSlice = { turned_deg: 0, bends: [], watched_n: 0, grown_n: 0, problems: [] };
