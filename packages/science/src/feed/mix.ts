import { within } from "../errors/index.ts";
import { conductivityAt_mS_cm, isAllowed, misfitAt, passedLimits, TIE } from "./mix-measure.ts";
import { type CompiledMix, compiledMix, type MixProblem } from "./mix-problem.ts";
import { leastOverBox } from "./mix-relax.ts";
import { mayHoldOne, rowsOf, searchChoice } from "./mix-search.ts";
import { bestOfTies, type Tied } from "./mix-ties.ts";
import { type Amounts, sumAmounts } from "./species.ts";

/** A mix in tool steps. */
export type Mix = {
  /** products used, in the order of their ids */
  readonly doses: readonly { readonly id: string; readonly steps_n: number; readonly dose: number }[];
  /** weighted squares of what lies outside the ranges, each over the square of its aim */
  readonly misfit: number;
  readonly conductivity_mS_cm: number;
  /** in the mix, water included */
  readonly amounts_mg_L: Amounts;
};

/** The best mix for each number of products, from none on. */
export type MixTable = {
  /** the mix to make, by the rule on misfit and number of products */
  readonly chosen: Mix;
  /** best with at most so many products, 0 first; the same mix again where one more does not help */
  readonly byProducts: readonly Mix[];
};
export type MixRefusal = {
  /** limits that the water breaks before anything is in it, which no product undoes */
  readonly broken: readonly string[];
};

/** One more product must gain this much, unless the misfit is small enough as it is. @source our assumption */
const WORTH_ONE_MORE = 0.02;
const GOOD_ENOUGH = 0.05;

function* choices(products_n: number, of_n: number, from_n = 0): Generator<number[]> {
  if (of_n === 0) {
    yield [];
    return;
  }
  for (let first_n = from_n; first_n <= products_n - of_n; first_n++)
    for (const rest of choices(products_n, of_n - 1, first_n + 1)) yield [first_n, ...rest];
}

const meet = (mix: CompiledMix, chosen: readonly number[]): boolean =>
  chosen.every((one) =>
    chosen.every((other) => !mix.products[one]?.notWith?.includes(mix.products[other]?.id ?? "")),
  );

/** Best of exactly so many products when it beats what fewer reach. */
function bestOf(mix: CompiledMix, products_n: number, toBeat: number): Tied | undefined {
  const usable = mix.products
    .map((_, index_n) => index_n)
    .filter((index_n) => (mix.most[index_n] as number) > 0);
  const open = [...choices(usable.length, products_n)]
    .map((places) => places.map((place_n) => usable[place_n] as number))
    .filter((chosen) => meet(mix, chosen))
    .flatMap((chosen) => {
      const low = chosen.map((index_n) => mix.least[index_n] as number);
      const high = chosen.map((index_n) => mix.most[index_n] as number);
      if (low.some((least, place_n) => least > (high[place_n] as number))) return [];
      if (!mayHoldOne(mix, chosen, low, high)) return [];
      const rows = rowsOf(mix, chosen);
      const at = Float64Array.from(low, (least, place_n) => (least + (high[place_n] as number)) / 2);
      return [{ chosen, rows, bound: leastOverBox(rows, low, high, at) }];
    })
    .toSorted((one, other) => one.bound - other.bound);
  let best = toBeat;
  for (const { chosen, rows, bound } of open) {
    if (bound >= best - 1e-11) break;
    best = searchChoice(mix, chosen, rows, best)?.misfit ?? best;
  }
  if (best >= toBeat - TIE) return undefined;
  let tied: Tied | undefined;
  for (const { chosen, rows, bound } of open)
    if (bound <= best + 2 * TIE) tied = bestOfTies(mix, chosen, rows, best, tied);
  return tied;
}

function mixOf(problem: MixProblem, mix: CompiledMix, steps: ArrayLike<number>): Mix {
  const doses = mix.products.flatMap(({ id, step }, index_n) => {
    const steps_n = steps[index_n] as number;
    return steps_n > 0 ? [{ id, steps_n, dose: steps_n * step }] : [];
  });
  const dose = new Map(doses.map((each) => [each.id, each.dose]));
  return {
    doses,
    misfit: misfitAt(mix, steps),
    conductivity_mS_cm: conductivityAt_mS_cm(mix, steps),
    amounts_mg_L: sumAmounts([
      [problem.water_mg_L, 1],
      ...mix.products.map(
        ({ id, contents_mg }) => [contents_mg, (dose.get(id) ?? 0) / problem.volume_L] as const,
      ),
    ]),
  };
}

/**
 * The mix of whole tool steps that comes nearest to what is wanted, exact: least misfit, then fewest products, then lowest
 * conductivity, then fewest steps in the order of ids.
 *
 * misfit = Σ w ((c − edge)/aim)² over what lies outside its range; limits are never passed; misfits within 1e-9 are equal
 *
 * @param problem products with their tools, water, volume, aims and limits; `products_n` at most 8, 4 when left out
 * @returns the best for each number of products and the one to make; or the limits that the water breaks by itself
 * @throws QuantityError for numbers outside their ranges; RangeError for an id given twice
 * @source our assumption: branch and bound over tool steps, bounded by the tangent of the convex relaxation
 * @see checks/feed.json FEED-090
 */
export function bestMix(problem: MixProblem): MixTable | MixRefusal {
  const products_n = problem.products_n ?? 4;
  within("products_n", products_n, 0, 8);
  const mix = compiledMix(problem);
  const none = new Int32Array(mix.products.length);
  const waterKeeps = isAllowed(mix, none);
  const byProducts: (Mix | undefined)[] = [waterKeeps ? mixOf(problem, mix, none) : undefined];
  for (let count_n = 1; count_n <= Math.min(products_n, mix.products.length); count_n++) {
    const before = byProducts[count_n - 1];
    const toBeat = before?.misfit ?? Number.MAX_VALUE;
    // A misfit of nothing cannot be undercut, and ties go to fewer products.
    const better = toBeat <= TIE ? undefined : bestOf(mix, count_n, toBeat);
    byProducts.push(better ? mixOf(problem, mix, better.steps) : before);
  }
  const made = byProducts.filter((each) => each !== undefined);
  const first = made[0];
  if (!first) return { broken: [...new Set([...passedLimits(mix, none), ...overConducting(mix, none)])] };
  let chosen = made[1] ?? first;
  for (let count_n = 1; count_n + 1 < made.length; count_n++) {
    const here = made[count_n] as Mix;
    const more = made[count_n + 1] as Mix;
    chosen = here;
    if (here.misfit <= GOOD_ENOUGH || here.misfit - more.misfit < WORTH_ONE_MORE) break;
    chosen = more;
  }
  return { chosen, byProducts: made };
}

const overConducting = (mix: CompiledMix, steps: ArrayLike<number>): readonly string[] =>
  mix.conductivity && conductivityAt_mS_cm(mix, steps) > mix.conductivity.most_mS_cm ? ["conductivity"] : [];

/**
 * Whether a mix could be made at all.
 *
 * @source our assumption, the definition
 */
export const isMade = (result: MixTable | MixRefusal): result is MixTable => "chosen" in result;
