import type { EntryId } from "../../book/entry.ts";

/** What the craft keeps of one plant: small, plain and immutable, since it is checkpointed. */
export interface GrowthSlice {
  readonly at_ms: number;
  /** Place in `peppers`: the clock it runs on. */
  readonly pepper_n: number;
  readonly clock: Clock;
  readonly leaves: Leaves;
  readonly nodes: Nodes;
  /** Warmth since the clock was set. */
  readonly sum_Cd: number;
  /** Warmth that must pass before the clock starts: buds that break after a hard cut. */
  readonly rest_Cd: number;
  /** Warmth since it came into the book, for a sowing date that is written later. */
  readonly book_Cd: number;
  readonly made_n: number;
  readonly leafArea_m2: number;
  /** ln of the growth since the area was last known. */
  readonly grown_ln: number;
  readonly problems: readonly GrowthProblem[];
}

/** From where the clock counts. It changes with what people see and cut, not with time. */
export interface Clock {
  readonly how: "guess" | "sown" | "seen" | "cut";
  readonly at_ms: number;
  /** Code at the start, and the codes between which it may have been. */
  readonly bbch: number;
  readonly bbchLow: number;
  readonly bbchHigh: number;
  /** Doubt of the sum that stood on the clock when it was set, or of when it starts. */
  readonly sd_Cd: number;
  /** Sum at which fruit begins to slow the nodes. */
  readonly fruiting_Cd: number;
  readonly sownOn: string | undefined;
}

/** When and how the leaf area was last known. */
export interface Leaves {
  readonly from: "usual" | "sown" | "cut" | "counted";
  readonly at_ms: number;
  readonly sd_ln: number;
  /** Mean area of a leaf then, where it was measured. */
  readonly leaf_cm2: number;
  readonly leaves_n: number;
  /** By kind and pot: what the plant would be taken to have, and the most that it gets. */
  readonly usual_m2: number;
  readonly most_m2: number;
}

export interface Nodes {
  readonly from: "unknown" | "sown" | "counted";
  readonly at_ms: number;
  readonly nodes_n: number;
  readonly sd_n: number;
}

export interface GrowthProblem {
  readonly entry: EntryId;
  readonly at_ms: number;
  readonly what: "cannot be read";
}

/** A slice with some parts changed, field by field so that all slices have one shape. */
export const changed = (slice: GrowthSlice, parts: Partial<GrowthSlice>): GrowthSlice =>
  Object.assign(
    {
      at_ms: slice.at_ms,
      pepper_n: slice.pepper_n,
      clock: slice.clock,
      leaves: slice.leaves,
      nodes: slice.nodes,
      sum_Cd: slice.sum_Cd,
      rest_Cd: slice.rest_Cd,
      book_Cd: slice.book_Cd,
      made_n: slice.made_n,
      leafArea_m2: slice.leafArea_m2,
      grown_ln: slice.grown_ln,
      problems: slice.problems,
    } satisfies GrowthSlice,
    parts,
  );
