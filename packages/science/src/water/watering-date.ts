import { normalProbability, normalQuantile } from "../chance/index.ts";
import { within } from "../errors/index.ts";

/** What the date depends on: the water left above the mark, and how fast it goes. */
export type WateringOutlook = {
  readonly remaining_g: number;
  readonly use_g_d: number;
  readonly sdLnUse: number;
  readonly sdLnDriver?: number;
  readonly effectiveDays_d?: number;
};

function logSpread(outlook: WateringOutlook): number {
  const { remaining_g, use_g_d, sdLnUse, sdLnDriver = 0, effectiveDays_d = 1 } = outlook;
  within("remaining_g", remaining_g, 0.001, 1e6);
  within("use_g_d", use_g_d, 0.001, 1e5);
  within("sdLnUse", sdLnUse, 0, 3);
  within("sdLnDriver", sdLnDriver, 0, 3);
  within("effectiveDays_d", effectiveDays_d, 0.1, 1000);
  return Math.sqrt(sdLnUse ** 2 + sdLnDriver ** 2 / effectiveDays_d);
}

/**
 * When a pot will have dried to its mark, with a steady driver and a known start.
 *
 * ln T ~ N(ln(remaining/use), s_ℓ² + s_X²/n). Between waterings the depletion never falls, so the chance of having passed
 * the mark is the chance of being beyond it: no first-passage correction.
 *
 * @param outlook water left above the mark [g], 0.001 to 1e6; median use [g d⁻¹], 0.001 to 1e5; standard deviation of ln use, 0 to 3; of ln driver, 0 to 3, 0 unless given; effective independent days of the driver, 0.1 to 1000, 1 unless given
 * @returns median and the days that are passed with chance 0.1, 0.2 and 0.9 [d]
 * @throws QuantityError outside those ranges
 * @source our assumption; lognormal in closed form
 * @see checks/air-water.json 117
 * @example wateringDate({ remaining_g: 60, use_g_d: 20, sdLnUse: 0.2 }).median_d // 3
 */
export function wateringDate(outlook: WateringOutlook): {
  readonly median_d: number;
  readonly q10_d: number;
  readonly q20_d: number;
  readonly q90_d: number;
} {
  const spread = logSpread(outlook);
  const median_d = outlook.remaining_g / outlook.use_g_d;
  const at = (probability: number): number => median_d * Math.exp(spread * normalQuantile(probability));
  return { median_d, q10_d: at(0.1), q20_d: at(0.2), q90_d: at(0.9) };
}

/**
 * Chance that a pot will have dried to its mark within so many days.
 *
 * Φ((ln days − ln(remaining/use)) / s)
 *
 * @param outlook as for the date; days from now [d], 0.001 to 1000
 * @returns probability, 0 to 1; grows with the days
 * @throws QuantityError outside those ranges
 * @source our assumption; lognormal in closed form
 * @see checks/air-water.json 117
 * @example dryWithin({ remaining_g: 60, use_g_d: 20, sdLnUse: 0.2, within_d: 2 }) // 0.0213
 */
export function dryWithin(outlook: WateringOutlook & { readonly within_d: number }): number {
  within("within_d", outlook.within_d, 0.001, 1000);
  const spread = logSpread(outlook);
  const gap = Math.log((outlook.within_d * outlook.use_g_d) / outlook.remaining_g);
  if (spread < 1e-12) return gap >= 0 ? 1 : 0;
  return normalProbability(gap / spread);
}

/**
 * How sure of dryness one may become before checking: the quantile at which to look.
 *
 * q = cost early / (cost early + cost late): 0.2 when a wilt costs four waterings too early, 0.5 in winter rest
 *
 * @param costs of watering too early and too late, in one measure, 0 to 1e6, not both 0
 * @returns quantile, 0 to 1
 * @throws QuantityError outside those ranges
 * @source our assumption; the newsvendor quantile
 * @see checks/air-water.json 119
 * @example checkQuantile({ costEarly: 1, costLate: 4 }) // 0.2
 */
export function checkQuantile(costs: { readonly costEarly: number; readonly costLate: number }): number {
  within("costEarly", costs.costEarly, 0, 1e6);
  within("costLate", costs.costLate, 0, 1e6);
  within("costSum", costs.costEarly + costs.costLate, 1e-9, 2e6);
  return costs.costEarly / (costs.costEarly + costs.costLate);
}

/**
 * The visit at which to water: the last one before the chance of dryness by the following visit exceeds the quantile.
 *
 * @param plan chance of dryness by each visit, in order [visit], 0 to 1, not falling; quantile, 0 to 1
 * @returns index from 0 of the visit, or -1 when it can wait beyond the last but one
 * @throws QuantityError outside those ranges
 * @source our assumption
 * @example visitToWater_n({ dryBy: [0.01, 0.1, 0.3, 0.8], quantile: 0.2 }) // 1
 */
export function visitToWater_n(plan: {
  readonly dryBy: readonly number[];
  readonly quantile: number;
}): number {
  const { dryBy, quantile } = plan;
  within("quantile", quantile, 0, 1);
  within("visits_n", dryBy.length, 1, 1000);
  let before = 0;
  for (const chance of dryBy) {
    within("dryBy", chance, 0, 1);
    within("dryBy", chance, before, 1);
    before = chance;
  }
  const tooLate = dryBy.findIndex((chance) => chance > quantile);
  // When the very next visit is already past the quantile, that visit is the best there is.
  return tooLate < 0 ? -1 : Math.max(0, tooLate - 1);
}
