import { within } from "../errors/index.ts";

/**
 * Conductivity at which half the yield is lost, by the straight line and by the smooth curve.
 *
 * line: 0.5/s + t; curve: 0.988 (0.5/s + t) − 0.252
 *
 * @param threshold_mS_cm where it begins to suffer [mS/cm], 0 to 20
 * @param slope_cm_per_mS yield lost for each mS/cm beyond, 0.01 to 1
 * @returns conductivities of the saturated paste [mS/cm]
 * @throws QuantityError outside those ranges
 * @source Steppuhn2005
 * @see checks/feed.json FEED-071
 * @example halfYieldSalt({ threshold_mS_cm: 1.5, slope_cm_per_mS: 0.14 }).line_mS_cm // 5.071
 */
export function halfYieldSalt({
  threshold_mS_cm,
  slope_cm_per_mS,
}: {
  readonly threshold_mS_cm: number;
  readonly slope_cm_per_mS: number;
}): { readonly line_mS_cm: number; readonly curve_mS_cm: number } {
  within("threshold_mS_cm", threshold_mS_cm, 0, 20);
  within("slope_cm_per_mS", slope_cm_per_mS, 0.01, 1);
  const line_mS_cm = 0.5 / slope_cm_per_mS + threshold_mS_cm;
  return { line_mS_cm, curve_mS_cm: 0.988 * line_mS_cm - 0.252 };
}

/**
 * What no plant takes up (sodium, chloride), after a number of equal waterings of a pot that mixes.
 *
 * dry down by the use, pour, the surplus runs out at the concentration of the mix
 *
 * @param feed_mg_L concentration poured [mg/L], 0 to 10 000
 * @param pour_mL each pour [mL], 1 to 100 000
 * @param use_mL water used between pours [mL], 0 to 100 000; less than it holds
 * @param holds_mL water when just drained [mL], 1 to 100 000
 * @param start_mg_L concentration when drained, before the first [mg/L], 0 to 100 000
 * @param waterings_n how often, 0 to 10 000
 * @returns concentration after the last pour, and where it would settle (nothing for a pot that never drains) [mg/L]
 * @throws QuantityError outside those ranges
 * @source our assumption, a mixed vessel; its steady state is c/LF
 * @see checks/feed.json FEED-081
 * @example mixedPotSalt({ feed_mg_L: 30, pour_mL: 125, use_mL: 100, holds_mL: 180, start_mg_L: 30, waterings_n: 10 }).after_mg_L // 117.3
 */
export function mixedPotSalt({
  feed_mg_L,
  pour_mL,
  use_mL,
  holds_mL,
  start_mg_L,
  waterings_n,
}: {
  readonly feed_mg_L: number;
  readonly pour_mL: number;
  readonly use_mL: number;
  readonly holds_mL: number;
  readonly start_mg_L: number;
  readonly waterings_n: number;
}): { readonly after_mg_L: number; readonly steady_mg_L: number | null } {
  within("feed_mg_L", feed_mg_L, 0, 10_000);
  within("pour_mL", pour_mL, 1, 100_000);
  within("holds_mL", holds_mL, 1, 100_000);
  within("use_mL", use_mL, 0, 100_000);
  if (use_mL > holds_mL) within("use_mL", use_mL, 0, holds_mL);
  within("start_mg_L", start_mg_L, 0, 100_000);
  within("waterings_n", waterings_n, 0, 10_000);
  let mass_ug = start_mg_L * holds_mL;
  let water_mL = holds_mL;
  for (let times_n = 0; times_n < waterings_n; times_n++) {
    water_mL -= use_mL;
    const all_mL = water_mL + pour_mL;
    const drained_mL = Math.max(0, all_mL - holds_mL);
    mass_ug = (mass_ug + feed_mg_L * pour_mL) * (1 - drained_mL / all_mL);
    water_mL = all_mL - drained_mL;
  }
  const leached_frac = (pour_mL - use_mL) / pour_mL;
  return {
    after_mg_L: mass_ug / water_mL,
    steady_mg_L: leached_frac > 0 ? feed_mg_L / leached_frac : null,
  };
}
