import { within } from "../errors/index.ts";

/**
 * How long a pot stays short of air after a full watering.
 *
 * t = max(0, (0.20 − AS) V / ET)
 *
 * @param pot air after draining, 0 to 0.9; volume of the medium [mL], 10 to 1e6; use [g d⁻¹], 0.1 to 1e5; air wanted, 0.05 to 0.4, 0.2 unless given
 * @returns hours; below 24 is fine, above 48 wants a change
 * @throws QuantityError outside those ranges
 * @source Verhagen2013 for the air wanted; the bands are our assumption
 * @example airless_h({ air_frac: 0.057, medium_mL: 600, use_g_d: 80 }) // 25.74
 */
export function airless_h(pot: {
  readonly air_frac: number;
  readonly medium_mL: number;
  readonly use_g_d: number;
  readonly airWanted_frac?: number;
}): number {
  const { air_frac, medium_mL, use_g_d, airWanted_frac = 0.2 } = pot;
  within("air_frac", air_frac, 0, 0.9);
  within("medium_mL", medium_mL, 10, 1e6);
  within("use_g_d", use_g_d, 0.1, 1e5);
  within("airWanted_frac", airWanted_frac, 0.05, 0.4);
  return (24 * Math.max(0, airWanted_frac - air_frac) * medium_mL) / use_g_d;
}

/**
 * What so many airless hours mean.
 *
 * below 24: fine; to 48: watch; above: change something (coarser, deeper, stand on edge, smaller dose, wick)
 *
 * @param airless_h hours short of air after a watering, 0 to 10000
 * @returns fine, watch or change
 * @throws QuantityError outside that range
 * @source our assumption; bands after GuhKuk1996
 * @example airlessBand(30) // "watch"
 */
export function airlessBand(airless_h: number): "fine" | "watch" | "change" {
  within("airless_h", airless_h, 0, 10_000);
  return airless_h < 24 ? "fine" : airless_h <= 48 ? "watch" : "change";
}

/**
 * How easily oxygen spreads through a medium beside open air, to rank media by.
 *
 * Ds/D0 = ε^(10/3) / TP²
 *
 * @param medium air now, 0 to 0.95; total porosity, 0.25 to 0.99, not below the air
 * @returns ratio, 0 to 1; rises with air
 * @throws QuantityError outside those ranges
 * @source MillingtonQuirk1961
 * @see checks/medium-repot.json 107
 * @example oxygenSpread({ air_frac: 0.2, porosity_frac: 0.8 }) // 0.00731
 */
export function oxygenSpread(medium: { readonly air_frac: number; readonly porosity_frac: number }): number {
  within("air_frac", medium.air_frac, 0, 0.95);
  within("porosity_frac", medium.porosity_frac, 0.25, 0.99);
  within("air_frac", medium.air_frac, 0, Math.min(0.95, medium.porosity_frac));
  return medium.air_frac ** (10 / 3) / medium.porosity_frac ** 2;
}

/**
 * Each of a run of readings as a share of the first.
 *
 * xi / x0
 *
 * @param readings readings, 0 to 1e9, the first above 0
 * @returns shares, the first 1
 * @throws QuantityError outside those ranges
 * @source our assumption; definition
 * @see checks/medium-repot.json 094, 095
 * @example sharesOfFirst([145, 78, 18])[1] // 0.538
 */
export function sharesOfFirst(readings: readonly number[]): readonly number[] {
  within("readings_n", readings.length, 1, 1000);
  for (const reading of readings) within("readings", reading, 0, 1e9);
  const first = readings[0] as number;
  within("readings", first, 1e-9, 1e9);
  return readings.map((reading) => reading / first);
}

/**
 * Yield that peppers lost after standing in water at 25 °C.
 *
 * 25 to 30 % after 12 to 48 h, without a trend between; nothing is published outside
 *
 * @param waterlogged_h hours under water, 12 to 48
 * @returns ends of the range, as shares
 * @throws QuantityError outside that range
 * @source GuhKuk1996
 * @see checks/medium-repot.json 096
 * @example waterloggingLoss(24).low_frac // 0.25
 */
export function waterloggingLoss(waterlogged_h: number): {
  readonly low_frac: number;
  readonly high_frac: number;
} {
  within("waterlogged_h", waterlogged_h, 12, 48);
  return { low_frac: 0.25, high_frac: 0.3 };
}
