import type { EntryId } from "../../book/entry.ts";

/**
 * What the craft keeps of one plant. Apart stand what people saw, which changes with entries, and the numbers that change at every
 * midnight: a step writes one short list and no more.
 */
export interface GrowthSlice {
  readonly known: Known;
  readonly now: Running;
}

/** What was seen, cut, counted or written of the plant. */
export interface Known {
  /** Place in `peppers`: the clock it runs on. */
  readonly pepper_n: number;
  readonly clock: Clock;
  readonly leaves: Leaves;
  readonly nodes: Nodes;
  readonly problems: readonly GrowthProblem[];
}

/** In the order of `Growing`: warmth on the clock, warmth to wait, warmth in the book, nodes made, leaf area, ln of its growth. */
export type Running = readonly [
  sum_Cd: number,
  rest_Cd: number,
  book_Cd: number,
  made_n: number,
  leafArea_m2: number,
  grown_ln: number,
];

/** The same by name, at an instant. */
export interface Growing extends Known {
  readonly at_ms: number;
  /** Warmth since the clock was set. */
  readonly sum_Cd: number;
  /** Warmth that must pass before the clock starts: buds that break after a hard cut. */
  readonly rest_Cd: number;
  /** Warmth since it came into the book, for a sowing date that is written later. */
  readonly book_Cd: number;
  /** Nodes made since they were last known. */
  readonly made_n: number;
  readonly leafArea_m2: number;
  /** ln of the growth since the area was last known. */
  readonly grown_ln: number;
}

export function growingAt({ known, now }: GrowthSlice, at_ms: number): Growing {
  const [sum_Cd, rest_Cd, book_Cd, made_n, leafArea_m2, grown_ln] = now;
  return { ...known, at_ms, sum_Cd, rest_Cd, book_Cd, made_n, leafArea_m2, grown_ln };
}

export function kept(growing: Growing): GrowthSlice {
  const { pepper_n, clock, leaves, nodes, problems } = growing;
  return {
    known: { pepper_n, clock, leaves, nodes, problems },
    now: [
      growing.sum_Cd,
      growing.rest_Cd,
      growing.book_Cd,
      growing.made_n,
      growing.leafArea_m2,
      growing.grown_ln,
    ],
  };
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

/** The same plant with some parts changed. */
export const changed = (growing: Growing, parts: Partial<Growing>): Growing => ({ ...growing, ...parts });
