import { within } from "../errors/index.ts";
import { topmostOnly } from "./cuts.ts";
import { type Bench, mayPlan, planTerms, planValue, takenBy } from "./plan-score.ts";
import type { Grower } from "./preview.ts";
import { sproutsAfter } from "./preview.ts";
import { armsOf, type StemNode, type Tree } from "./tree.ts";
import { bestCuts } from "./tree-knapsack.ts";
import { grownTerms } from "./weeks-ahead.ts";

/** What a search may do and must: share of lit leaf at most, rows that stay, rows that go in every plan. */
export type SearchAsk = {
  readonly most_frac: number;
  readonly protect: readonly number[];
  readonly must: readonly number[];
  /** How many sets of cuts are tried at most. */
  readonly tries_n: number;
};

export type Plan = {
  /** Rows cut below, in order, none above another. */
  readonly cuts: readonly number[];
  readonly value: number;
  readonly taken_frac: number;
};

export type SearchState = {
  readonly tried_n: number;
  readonly about_n: number;
  /** The best so far, best first. */
  readonly found: readonly Plan[];
};

const WIDTH_n = 20;
const DEPTH_n = 6;
const KEPT_n = 120;
const BUDGET_n = 100;
/** What must go outweighs everything that a plan can gain. */
const MUST = 1000;

/**
 * The cuts that a plan may be made of.
 *
 * @source common practice, no source
 */
export function candidateCuts(
  bench: Bench,
  ask: Pick<SearchAsk, "protect" | "most_frac">,
): readonly number[] {
  const { tree } = bench;
  return tree.nodes.flatMap((_, row) => {
    if (row === 0 || !mayPlan(tree, row)) return [];
    const holds = ask.protect.some((kept) => kept >= row && kept < (tree.end[row] as number));
    return holds || takenBy(bench, [row]).lit_frac > ask.most_frac ? [] : [row];
  });
}

/**
 * The best plan as far as its gains add up: exact, within the share of lit leaf.
 *
 * Gains: stem outside the outline, broken rules of taper; costs: light, fruit and flowers
 *
 * @source dynamic programme over a tree in order, textbook; weights our assumption
 */
export function additivePlan(bench: Bench, candidates: readonly number[], ask: SearchAsk): readonly number[] {
  const { tree } = bench;
  const rows = tree.nodes.length;
  const allowed = new Array<boolean>(rows).fill(false);
  for (const row of [...candidates, ...ask.must]) allowed[row] = true;
  const length = bench.length_mm.reduce((sum, each) => sum + each, 0) || 1;
  const stems = Math.max(1, new Set(tree.axis).size - 1);
  const own = tree.nodes.map(
    (node, row) =>
      (0.6 * (bench.outside_mm[row] as number)) / length +
      (0.1 * (bench.breaksRule[row] as number)) / stems -
      (bench.litAll_cm2 > 0 ? (0.15 * (bench.lit_cm2[row] as number)) / bench.litAll_cm2 : 0) -
      (bench.fruitAll > 0 ? (0.05 * (node.fruit_g + node.flowers_n / 2)) / bench.fruitAll : 0),
  );
  const gain = tree.nodes.map((_, row) => {
    let sum = ask.must.includes(row) ? MUST : 0;
    for (let at = row; at < (tree.end[row] as number); at += 1) sum += own[at] as number;
    return sum;
  });
  const must_n = Math.ceil(BUDGET_n * takenBy(bench, ask.must).lit_frac);
  const cost_n = tree.nodes.map((_, row) =>
    row === 0 ? BUDGET_n * 2 : Math.ceil(BUDGET_n * takenBy(bench, [row]).lit_frac),
  );
  const budget_n = Math.max(must_n, Math.floor(BUDGET_n * ask.most_frac));
  return bestCuts({ end: tree.end, gain, cost_n, allowed, budget_n }).rows;
}

/** Each kept branch that had a leaf keeps one: a bare branch is given up by the plant. */
function leavesEachBranch(tree: Tree, cuts: readonly number[]): boolean {
  const stays = new Map<number, number>();
  let at = 0;
  for (let row = 0; row < tree.nodes.length; ) {
    if (cuts[at] === row) {
      at += 1;
      row = tree.end[row] as number;
      continue;
    }
    const axis = tree.axis[row] as number;
    const leaf = (tree.nodes[row] as StemNode).leaf_cm2 > 0 || armsOf(tree, row).length > 1 ? 1 : 0;
    stays.set(axis, (stays.get(axis) ?? 0) + leaf);
    row += 1;
  }
  for (const [axis, leaves_n] of stays) if (axis !== 0 && leaves_n === 0 && hadLeaf(tree, axis)) return false;
  return true;
}

const hadLeaf = (tree: Tree, axis: number): boolean =>
  tree.nodes.some((node, row) => tree.axis[row] === axis && node.leaf_cm2 > 0);

/** The same plan with one cut more, one less, or one moved a node up or down its stem. */
function neighbours(
  tree: Tree,
  cuts: readonly number[],
  candidates: readonly number[],
  may: ReadonlySet<number>,
): (readonly number[])[] {
  const next: (readonly number[])[] = [];
  for (const row of candidates) if (!cuts.includes(row)) next.push(topmostOnly(tree, [...cuts, row]));
  cuts.forEach((cut, at) => {
    const others = cuts.toSpliced(at, 1);
    next.push(others);
    for (const moved of [tree.parent[cut] as number, ...armsOf(tree, cut)])
      if (may.has(moved) && !others.includes(moved)) next.push(topmostOnly(tree, [...others, moved]));
  });
  return next;
}

/**
 * Search of plans, a step at a time so that it can be shown, stopped, or done while hands do other things.
 *
 * The exact additive plan and "nothing" start a beam of 20 that adds, drops and moves cuts up to six deep; the same plant and ask
 * give the same plans
 *
 * @param ask largest share of lit leaf, 0 to 0.95; rows that stay and that must go; tries, 10 to 1e6
 * @returns after every score of tries how far it is and the best so far; the last is the result
 * @throws QuantityError outside those ranges
 * @source beam search, textbook; exact part by dynamic programme
 */
export function* planSearch(bench: Bench, ask: SearchAsk): IterableIterator<SearchState> {
  within("most_frac", ask.most_frac, 0, 0.95);
  within("tries_n", ask.tries_n, 10, 1e6);
  const { tree } = bench;
  const candidates = candidateCuts(bench, ask);
  const may = new Set(candidates);
  const seen = new Set<string>();
  const found: Plan[] = [];
  let tried_n = 0;
  const most = Math.max(ask.most_frac, takenBy(bench, ask.must).lit_frac);
  const about_n = Math.min(ask.tries_n, 1 + WIDTH_n * DEPTH_n * Math.max(1, candidates.length));
  const judge = (rough: readonly number[]): Plan | undefined => {
    const cuts = topmostOnly(tree, [...rough, ...ask.must]);
    const key = cuts.join(",");
    if (seen.has(key)) return undefined;
    seen.add(key);
    const taken_frac = takenBy(bench, cuts).lit_frac;
    if (taken_frac > most + 1e-9 || !leavesEachBranch(tree, cuts)) return undefined;
    tried_n += 1;
    const plan = { cuts, value: planValue(planTerms(bench, cuts)), taken_frac };
    keepBest(found, plan);
    return plan;
  };
  let beam = [[], additivePlan(bench, candidates, ask)].flatMap((cuts) => judge(cuts) ?? []);
  yield { tried_n, about_n, found: [...found] };
  for (let depth = 0; depth < DEPTH_n && tried_n < ask.tries_n; depth += 1) {
    const next: Plan[] = [];
    for (const plan of beam) {
      for (const cuts of neighbours(tree, plan.cuts, candidates, may)) {
        if (tried_n >= ask.tries_n) break;
        const judged = judge(cuts);
        if (!judged) continue;
        next.push(judged);
        if (tried_n % WIDTH_n === 0) yield { tried_n, about_n, found: [...found] };
      }
    }
    if (next.length === 0) break;
    beam = next.toSorted(better).slice(0, WIDTH_n);
  }
  yield { tried_n, about_n: tried_n, found: [...found] };
}

const better = (a: Plan, b: Plan): number =>
  b.value - a.value || (a.cuts.join(",") < b.cuts.join(",") ? -1 : 1);

function keepBest(found: Plan[], plan: Plan): void {
  let at = found.length;
  while (at > 0 && better(plan, found[at - 1] as Plan) < 0) at -= 1;
  found.splice(at, 0, plan);
  // The best of each size of cut are kept, so that a light and a bold plan are there to choose from.
  if (found.length > KEPT_n) {
    const bands = new Map<number, number>();
    const drop = found.findLastIndex(({ taken_frac }) => {
      const band = Math.floor(taken_frac * 10);
      const all = bands.get(band) ?? found.filter((each) => Math.floor(each.taken_frac * 10) === band).length;
      bands.set(band, all);
      return all > 10;
    });
    found.splice(drop < 0 ? found.length - 1 : drop, 1);
  }
}

/** A plan after its weeks were played: its value in the draws against those of doing nothing, with the same chance. */
export type PlayedPlan = Plan & {
  readonly grown: readonly [number, number, number];
  readonly beatsNothing_frac: number;
};

const FIRST_DRAWS_n = 8;

/**
 * Play the best plans forward and halve their number while the draws double: chance is the same for all plans.
 *
 * @param plans 0 to 200, to be played beside "nothing"
 * @param left_n how many stay for the last draws, 1 to 50
 * @param draws_n draws of the last round, 8 to 1000
 * @returns plans that stayed, best first by the mean of their draws
 * @throws QuantityError outside those ranges
 * @source successive halving, textbook
 */
export function playedPlans(
  bench: Bench,
  plans: readonly Plan[],
  grower: Grower,
  ask: { readonly left_n: number; readonly draws_n: number },
): readonly PlayedPlan[] {
  within("plans_n", plans.length, 0, 200);
  within("left_n", ask.left_n, 1, 50);
  within("draws_n", ask.draws_n, 8, 1000);
  const valuer = (cuts: readonly number[]) => {
    const sprouts = sproutsAfter(bench, cuts);
    const now = planTerms(bench, cuts);
    const known: number[] = [];
    return (draws_n: number): readonly number[] => {
      for (let draw = known.length; draw < draws_n; draw += 1)
        known.push(planValue(grownTerms(bench, cuts, sprouts, now, grower, draw)));
      return known;
    };
  };
  const nothing = valuer([]);
  let racing = plans.map((plan) => ({ plan, values: valuer(plan.cuts), mean: plan.value }));
  for (let draws_n = FIRST_DRAWS_n; ; draws_n = Math.min(ask.draws_n, draws_n * 2)) {
    racing = racing
      .map((each) => ({ ...each, mean: mean(each.values(draws_n)) }))
      .toSorted((a, b) => b.mean - a.mean || better(a.plan, b.plan));
    if (draws_n >= ask.draws_n) break;
    racing = racing.slice(0, Math.max(ask.left_n, Math.ceil(racing.length / 2)));
  }
  const without = nothing(ask.draws_n);
  return racing.slice(0, ask.left_n).map(({ plan, values }) => {
    const drawn = values(ask.draws_n);
    const sorted = drawn.toSorted((a, b) => a - b);
    const at = (share: number) => sorted[Math.round(share * (sorted.length - 1))] as number;
    const wins = drawn.filter((value, draw) => value > (without[draw] as number)).length;
    return { ...plan, grown: [at(0.1), at(0.5), at(0.9)], beatsNothing_frac: wins / drawn.length };
  });
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, each) => sum + each, 0) / values.length;

/**
 * How much of what two plans take off is the same.
 *
 * Rows that both take over rows that either takes
 *
 * @source Jaccard index, textbook
 */
export function plansAlike_frac(tree: Tree, one: readonly number[], other: readonly number[]): number {
  const gone = (cuts: readonly number[]) =>
    new Set(
      cuts.flatMap((cut) => Array.from({ length: (tree.end[cut] as number) - cut }, (_, at) => cut + at)),
    );
  const a = gone(one);
  const b = gone(other);
  const both = [...a].filter((row) => b.has(row)).length;
  const either = a.size + b.size - both;
  return either === 0 ? 1 : both / either;
}
