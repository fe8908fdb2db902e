import {
  type Bench,
  type Grower,
  type Plan,
  planSearch,
  plansAlike_frac,
  planTerms,
  planValue,
  playedPlans,
  type SearchState,
  type Tree,
} from "@sillwood/science/shape";

/** A search that goes on where it stopped when it is asked with more tries. */
export interface Hunt {
  readonly state: SearchState;
  readonly isDone: boolean;
}

interface Running {
  readonly steps: Iterator<SearchState>;
  state: SearchState;
  isDone: boolean;
}

const MOST_TRIES_n = 7200;

/**
 * Searches under way, by the plant's bench of judgement: the same ask gives the same state whether it was run at once or in
 * parts, so that keeping them changes no answer.
 */
const running = new WeakMap<Bench, Map<string, Running>>();

export function huntPlans(bench: Bench, most_frac: number, tries_n: number): Hunt {
  const hunts = running.get(bench) ?? new Map<string, Running>();
  running.set(bench, hunts);
  const key = String(most_frac);
  let hunt = hunts.get(key);
  if (!hunt || hunt.state.tried_n > tries_n) {
    const steps = planSearch(bench, { most_frac, protect: [], must: [], tries_n: MOST_TRIES_n });
    hunt = { steps, state: steps.next().value as SearchState, isDone: false };
    hunts.set(key, hunt);
  }
  while (!hunt.isDone && hunt.state.tried_n < tries_n) {
    const next = hunt.steps.next();
    if (next.done) hunt.isDone = true;
    else hunt.state = next.value;
  }
  return { state: hunt.state, isDone: hunt.isDone };
}

export type Chosen = {
  readonly key: "nothing" | "light" | "middle" | "bold";
  readonly cuts: readonly number[];
  readonly taken_frac: number;
  readonly beatsNothing_frac: number;
};

/** Plans this much alike are one plan. @source shape-trim sheet section 11 */
const ALIKE_frac = 0.5;
const EACH_n = 6;
const DRAWS_n = { first: 16, last: 64 } as const;

/** Three plans that differ: a light touch, the middle within what a trim may take, a bold one. "Nothing" stands beside them. */
export function chosenPlans(bench: Bench, hunt: Hunt, warn_frac: number, grower: Grower): readonly Chosen[] {
  const { found } = hunt.state;
  const cutting = found.filter(({ cuts }) => cuts.length > 0);
  const bands = {
    middle: middleOf(cutting, warn_frac),
    light: cutting.filter(({ taken_frac }) => taken_frac <= 0.5 * warn_frac),
    bold: cutting.filter(({ taken_frac }) => taken_frac > warn_frac),
  };
  const chosen: Chosen[] = [];
  for (const key of ["middle", "light", "bold"] as const) {
    const apart = bands[key].filter(({ cuts }) =>
      chosen.every((other) => plansAlike_frac(bench.tree, cuts, other.cuts) < ALIKE_frac),
    );
    const played = playedPlans(bench, apart.slice(0, EACH_n), grower, {
      left_n: 1,
      draws_n: hunt.isDone ? DRAWS_n.last : DRAWS_n.first,
    })[0];
    if (played)
      chosen.push({
        key,
        cuts: played.cuts,
        taken_frac: played.taken_frac,
        beatsNothing_frac: played.beatsNothing_frac,
      });
  }
  const order = ["light", "middle", "bold"];
  return [
    { key: "nothing", cuts: [], taken_frac: 0, beatsNothing_frac: 0 },
    ...chosen.toSorted((a, b) => order.indexOf(a.key) - order.indexOf(b.key)),
  ];
}

/** How often a plan of the grower's own comes out better than doing nothing. */
export function playedOwn(bench: Bench, cuts: readonly number[], taken_frac: number, grower: Grower): number {
  const plan: Plan = { cuts, value: planValue(planTerms(bench, cuts)), taken_frac };
  return playedPlans(bench, [plan], grower, { left_n: 1, draws_n: DRAWS_n.last })[0]?.beatsNothing_frac ?? 0;
}

export const rowOf = (tree: Tree, id: string): number => tree.ids.indexOf(id);

/** Plans between a light touch and the limit; of a small plant none may lie there, then the best that there is. */
function middleOf(cutting: readonly Plan[], warn_frac: number): readonly Plan[] {
  const within = cutting.filter(({ taken_frac }) => taken_frac <= warn_frac);
  const middle = within.filter(({ taken_frac }) => taken_frac > 0.35 * warn_frac);
  return middle.length > 0 ? middle : within.length > 0 ? within : cutting;
}
