import type { Happening } from "../craft.ts";
import {
  AIMED,
  type Aimed,
  BENT,
  type Bent,
  BITTEN,
  type Bitten,
  CUT,
  type CutMade,
  FREED,
  type Freed,
  PLANNED,
  PLUCKED,
  type Planned,
  type Plucked,
  SKETCHED,
  type Sketched,
  SPROUTED,
  type Sprouted,
  TRACED,
  type Traced,
} from "./kinds.ts";
import type { TrimSlice } from "./slice.ts";
import type { TraceNode } from "./trace-fields.ts";

const PROBLEMS_n = 5;
const DAY_ms = 86_400_000;

/** What one entry does to the slice. Total: what makes no sense becomes a problem of the slice. */
export function trimFold(slice: TrimSlice, happening: Happening): TrimSlice {
  let next = slice;
  for (const effect of happening.effects) {
    if (effect.effect === "roots" || effect.effect === "medium renewed")
      next = { ...next, rootsAt_ms: happening.at_ms };
    else if (effect.effect === "turned" && next.trace && Number.isFinite(effect.clockwise_deg))
      next = { ...next, turned_deg: (((next.turned_deg + effect.clockwise_deg) % 360) + 360) % 360 };
  }
  return happening.own ? own(next, happening) : next;
}

/** Data that passed no gate (an older book, a foreign hand) must not stop the fold. */
function own(slice: TrimSlice, happening: Happening): TrimSlice {
  const data = happening.own?.data;
  if (typeof data !== "object" || data === null || Array.isArray(data)) return withProblem(slice, happening);
  const fold = FOLDS[happening.own?.kind ?? ""];
  if (!fold) return slice;
  try {
    return fold(slice, data as never, happening);
  } catch {
    return withProblem(slice, happening);
  }
}

const withProblem = (slice: TrimSlice, { entry }: Happening): TrimSlice => ({
  ...slice,
  problems: [...slice.problems.slice(1 - PROBLEMS_n), entry],
});

type Fold = (slice: TrimSlice, data: never, happening: Happening) => TrimSlice;

const FOLDS: Readonly<Record<string, Fold>> = {
  [SKETCHED]: (slice, data: Sketched, { at_ms }) => ({ ...slice, sketch: { ...data, at_ms } }),
  [TRACED]: (slice, data: Traced, { at_ms, entry }) => {
    const { plan: _old, ...rest } = slice;
    return { ...rest, trace: { ...data, nodes: [...data.nodes], at_ms, entry }, turned_deg: 0 };
  },
  [AIMED]: (slice, data: Aimed) => ({ ...slice, aim: data }),
  [PLANNED]: (slice, data: Planned, { at_ms }) => ({
    ...slice,
    plan: { ...data, cuts: [...data.cuts], at_ms },
  }),
  [CUT]: (slice, data: CutMade, { at_ms }) => cut(slice, data, at_ms),
  [PLUCKED]: (slice, data: Plucked) =>
    slice.trace && data.nodes
      ? { ...slice, trace: { ...slice.trace, nodes: bare(slice.trace.nodes, data.nodes) } }
      : slice,
  [BENT]: (slice, data: Bent, { at_ms }) => ({
    ...slice,
    bends: [
      ...slice.bends.filter(({ node }) => node !== data.node),
      { ...data, at_ms, lookedAt_ms: at_ms, bites: false },
    ],
  }),
  [FREED]: (slice, data: Freed) => ({
    ...slice,
    bends: slice.bends.filter(({ node }) => node !== data.node),
  }),
  [BITTEN]: (slice, data: Bitten, { at_ms }) => ({
    ...slice,
    bends: slice.bends.map((bend) =>
      bend.node === data.node ? { ...bend, lookedAt_ms: at_ms, bites: data.bites } : bend,
    ),
  }),
  [SPROUTED]: (slice, data: Sprouted) => ({
    ...slice,
    watched_n: slice.watched_n + data.watched_n,
    grown_n: slice.grown_n + data.grown_n,
  }),
};

function cut(slice: TrimSlice, data: CutMade, at_ms: number): TrimSlice {
  const same = slice.cut && at_ms - slice.cut.at_ms < DAY_ms ? slice.cut.lit_frac : 0;
  // What the second cut of a day takes is a share of what the first left.
  const lit_frac = 1 - (1 - same) * (1 - data.lit_frac);
  const gone = data.gone === undefined ? undefined : goneWith(slice.trace?.nodes ?? [], data.gone);
  const next: TrimSlice = { ...slice, cut: { at_ms, lit_frac } };
  if (!gone) return next;
  const cuts = slice.plan?.cuts.filter((planned) => !gone.has(planned.gone)) ?? [];
  const { plan, ...rest } = next;
  return {
    ...rest,
    ...(next.trace
      ? { trace: { ...next.trace, nodes: next.trace.nodes.filter((node) => !gone.has(node.id)) } }
      : {}),
    ...(plan && cuts.length > 0 ? { plan: { ...plan, cuts } } : {}),
    bends: slice.bends.filter(({ node }) => !gone.has(node)),
  };
}

/** A node and all that hangs on it. */
function goneWith(nodes: readonly TraceNode[], first: string): ReadonlySet<string> {
  const gone = new Set([first]);
  for (let grew = true; grew; ) {
    grew = false;
    for (const node of nodes)
      if (node.below !== undefined && gone.has(node.below) && !gone.has(node.id)) {
        gone.add(node.id);
        grew = true;
      }
  }
  return gone;
}

const bare = (nodes: readonly TraceNode[], plucked: readonly string[]): TraceNode[] =>
  nodes.map((node) => (plucked.includes(node.id) ? { ...node, leaves_n: 0 } : node));
