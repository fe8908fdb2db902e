import { valuesOf } from "../assumption.ts";
import { within } from "../errors/index.ts";
import { type FruitSettings, fruitAssumptions } from "./assumptions.ts";

type Bearing = {
  readonly source_g_d: number;
  readonly dryMassFull_g: number;
  readonly toRipe_d: number;
};

function refuseOtherBearing({ source_g_d, dryMassFull_g, toRipe_d }: Bearing): void {
  within("source_g_d", source_g_d, 0, 1000);
  within("dryMassFull_g", dryMassFull_g, 0.001, 100);
  within("toRipe_d", toRipe_d, 5, 300);
}

/** Quantiles of the standard normal distribution: nine in ten, seven in ten. */
const Z90 = 1.2815515655446004;
const Z70 = 0.5244005127080407;

/**
 * How many fruits a crown can carry to full size while the plant still grows, with its range.
 *
 * N = h S D/W, times what harvests of this plant have shown. The spreads of light use, light caught, share of fruit, fruit mass
 * and time add in squares; a harvest replaces those of light use and of the share by its own.
 *
 * @param bearing source [g d⁻¹], 0 to 1000; full dry mass of a fruit [g], 0.001 to 100; days from flower to ripe [d], 5 to 300; what harvests have shown over what was reckoned, 0.05 to 20, 1 unless given; spread of that, one sd as a share, 0.02 to 1, as assumed unless given; any of the field's assumptions
 * @returns fruits; the 80 % range; the number that seven in ten such crowns can carry, for fruit to be shown
 * @throws QuantityError outside those ranges
 * @source our assumption; fruit share SWATPlus
 * @see checks/growth-fruit.json 147-150
 * @example fruitsToKeep({ source_g_d: 0.1407, dryMassFull_g: 0.36, toRipe_d: 45 }).fruits_n // 10.55
 */
export function fruitsToKeep(
  bearing: Bearing & { readonly learned?: number; readonly learnedSpread_frac?: number } & FruitSettings,
): {
  readonly fruits_n: number;
  readonly low_n: number;
  readonly high_n: number;
  readonly show_n: number;
  readonly spread_frac: number;
} {
  refuseOtherBearing(bearing);
  const { source_g_d, dryMassFull_g, toRipe_d, learned = 1, learnedSpread_frac } = bearing;
  within("learned", learned, 0.05, 20);
  if (learnedSpread_frac !== undefined) within("learnedSpread_frac", learnedSpread_frac, 0.02, 1);
  const set = valuesOf(fruitAssumptions, bearing);
  const fruits_n = (learned * set.fruitShare_frac * source_g_d * toRipe_d) / dryMassFull_g;
  const budget = learnedSpread_frac ?? Math.hypot(set.lightUseSpread_frac, set.fruitShareSpread_frac);
  const spread_frac = Math.hypot(
    budget,
    set.lightCaughtSpread_frac,
    set.fruitMassSpread_frac,
    set.ripeTimeSpread_frac,
  );
  const sd = Math.sqrt(Math.log(1 + spread_frac ** 2));
  return {
    fruits_n,
    low_n: fruits_n * Math.exp(-Z90 * sd),
    high_n: fruits_n * Math.exp(Z90 * sd),
    show_n: fruits_n * Math.exp(-Z70 * sd),
    spread_frac,
  };
}

/**
 * How many fruits a plant left alone would carry at once.
 *
 * N = (1/θ − v) S D/W, v the share that leaves, stems and roots ask for
 *
 * @param bearing as for the number to keep
 * @returns fruits
 * @throws QuantityError outside those ranges
 * @source our assumption, derived from Wubs2009
 * @example naturalLoad_n({ source_g_d: 0.1407, dryMassFull_g: 0.36, toRipe_d: 45 }) // 28.1
 */
export function naturalLoad_n(bearing: Bearing & FruitSettings): number {
  refuseOtherBearing(bearing);
  const { setThreshold, vegetativeShare_frac } = valuesOf(fruitAssumptions, bearing);
  const share = Math.max(0, 1 / setThreshold - vegetativeShare_frac);
  return (share * bearing.source_g_d * bearing.toRipe_d) / bearing.dryMassFull_g;
}

/**
 * Size to which so many fruits come, and the ripe mass that they make together.
 *
 * size = S/(N W/D + V), at most 1: what a full load leaves for each
 *
 * @param bearing as for the number to keep; fruits kept, 0 to 100000; any of the field's assumptions
 * @returns size of each as a share of the full, 0 to 1; dry mass of all [g]
 * @throws QuantityError outside those ranges
 * @source our assumption, derived from Wubs2009
 * @example sizeOfLoad({ source_g_d: 0.1407, dryMassFull_g: 0.36, toRipe_d: 45, fruits_n: 21 }).size_frac // 0.627
 */
export function sizeOfLoad(bearing: Bearing & { readonly fruits_n: number } & FruitSettings): {
  readonly size_frac: number;
  readonly dryMass_g: number;
} {
  refuseOtherBearing(bearing);
  const { source_g_d, dryMassFull_g, toRipe_d, fruits_n } = bearing;
  within("fruits_n", fruits_n, 0, 100_000);
  const { vegetativeShare_frac } = valuesOf(fruitAssumptions, bearing);
  const demand_g_d = (fruits_n * dryMassFull_g) / toRipe_d + vegetativeShare_frac * source_g_d;
  const size_frac = demand_g_d > 0 ? Math.min(1, source_g_d / demand_g_d) : 1;
  return { size_frac, dryMass_g: fruits_n * size_frac * dryMassFull_g };
}

/**
 * What harvests of a plant show of its budget, drawn towards the reckoned one.
 *
 * ln(shown) = ln(picked over reckoned) × n/(n + 4), n the fruits that were weighed; the spread falls with them
 *
 * @param harvest dry or fresh mass picked over the mass reckoned for it, 0.05 to 20; fruits weighed, 1 to 10000; any of the field's assumptions
 * @returns factor on the budget; its spread, one sd as a share
 * @throws QuantityError outside those ranges
 * @source our assumption
 * @example learnedBudget({ pickedOverReckoned: 1.5, weighed_n: 4 }).learned // 1.225
 */
export function learnedBudget(
  harvest: { readonly pickedOverReckoned: number; readonly weighed_n: number } & FruitSettings,
): { readonly learned: number; readonly learnedSpread_frac: number } {
  const { pickedOverReckoned, weighed_n } = harvest;
  within("pickedOverReckoned", pickedOverReckoned, 0.05, 20);
  within("weighed_n", weighed_n, 1, 10_000);
  const set = valuesOf(fruitAssumptions, harvest);
  const weight = weighed_n / (weighed_n + WORTH_OF_RECKONED_n);
  const before = Math.hypot(set.lightUseSpread_frac, set.fruitShareSpread_frac);
  return {
    learned: Math.exp(weight * Math.log(pickedOverReckoned)),
    learnedSpread_frac: Math.max(LEAST_SPREAD_frac, before * Math.sqrt(1 - weight)),
  };
}

/** Fruits that count as much as what was reckoned; and what no harvest tells. Our assumption. */
const WORTH_OF_RECKONED_n = 4;
const LEAST_SPREAD_frac = 0.08;

/** One branch, as far as fruit is shared out over it. */
export type BranchForFruit = {
  /** share of the plant's lit leaf area on it */
  readonly leaf_frac: number;
  /** fruits that it would bear without sagging or breaking */
  readonly bears_n: number;
  /** fruits that are on it */
  readonly has_n: number;
};

/**
 * How many fruits stay on which branch: the plant's number shared out by leaf, held to what each branch bears and has.
 *
 * Fruit by fruit to the branch whose share is furthest from filled; what a weak branch can't take goes to the next.
 *
 * @param total_n fruits to keep on the plant, 0 to 100000; what is not whole is cut off
 * @param branches share of leaf, 0 to 1; fruits it bears, 0 or more; fruits on it, 0 or more; 1 to 100 of them
 * @returns fruits to keep, one number a branch
 * @throws QuantityError outside those ranges
 * @source our assumption; the divisor method of apportionment
 */
export function keepByBranch(total_n: number, branches: readonly BranchForFruit[]): readonly number[] {
  within("total_n", total_n, 0, 100_000);
  within("branches_n", branches.length, 1, 100);
  for (const { leaf_frac, bears_n, has_n } of branches) {
    within("leaf_frac", leaf_frac, 0, 1);
    within("bears_n", bears_n, 0, 100_000);
    within("has_n", has_n, 0, 100_000);
  }
  const keep = branches.map(() => 0);
  for (let left = Math.floor(total_n); left > 0; left -= 1) {
    let next = -1;
    let most = 0;
    branches.forEach(({ leaf_frac, bears_n, has_n }, branch) => {
      const kept = keep[branch] as number;
      if (kept + 1 > Math.min(Math.floor(bears_n), has_n)) return;
      const claim = leaf_frac / (2 * kept + 1);
      if (claim > most) {
        most = claim;
        next = branch;
      }
    });
    if (next < 0) break;
    keep[next] = (keep[next] as number) + 1;
  }
  return keep;
}
