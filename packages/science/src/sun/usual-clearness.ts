import { within } from "../errors/index.ts";

/** Bands of monthly clearness (global radiation over that above the air), from memory: show them, and ask for better. */
export const usualClearnessBands = {
  "dull temperate": {
    winterLow_frac: 0.3,
    winterHigh_frac: 0.4,
    summerLow_frac: 0.45,
    summerHigh_frac: 0.55,
  },
  "dry sunny": { winterLow_frac: 0.6, winterHigh_frac: 0.7, summerLow_frac: 0.6, summerHigh_frac: 0.7 },
} as const;

/**
 * Clearness to expect in a month when nothing better is known, with its band.
 *
 * Between the bands of winter and summer by the cosine of the season, mirrored across the equator.
 *
 * @param month climate; latitude [°], -90 to 90; day of the year in mid-month, 1 to 366
 * @returns low, middle and high of the monthly mean, shares
 * @throws QuantityError outside those ranges
 * @source our assumption; bands from memory
 * @example usualClearness({ climate: "dull temperate", latitude_deg: 50, dayOfYear_d: 172 }).middle_frac // 0.5
 */
export function usualClearness(month: {
  readonly climate: keyof typeof usualClearnessBands;
  readonly latitude_deg: number;
  readonly dayOfYear_d: number;
}): { readonly low_frac: number; readonly middle_frac: number; readonly high_frac: number } {
  within("latitude_deg", month.latitude_deg, -90, 90);
  within("dayOfYear_d", month.dayOfYear_d, 1, 366);
  const band = usualClearnessBands[month.climate];
  const north = (1 - Math.cos((2 * Math.PI * (month.dayOfYear_d + 10.5)) / 365.25)) / 2;
  const summer = month.latitude_deg >= 0 ? north : 1 - north;
  const low_frac = band.winterLow_frac + summer * (band.summerLow_frac - band.winterLow_frac);
  const high_frac = band.winterHigh_frac + summer * (band.summerHigh_frac - band.winterHigh_frac);
  return { low_frac, middle_frac: (low_frac + high_frac) / 2, high_frac };
}

const dullest_frac = 0.05;

/** Mean of the exponential density exp(γ k) between two ends. */
function meanOf_frac(gamma: number, low: number, high: number): number {
  if (Math.abs(gamma) < 1e-6) return (low + high) / 2;
  // Written from the upper or lower end so that no power overflows.
  const span = high - low;
  const edge = Math.exp(-Math.abs(gamma) * span);
  const fromEnd = 1 / Math.abs(gamma) - (span * edge) / (1 - edge);
  return gamma > 0 ? high - fromEnd : low + fromEnd;
}

/**
 * Clearness of the single days of a month whose mean is known: equally likely days, from dull to bright.
 *
 * Exponential between 0.05 and a greatest clearness 0.6313 + 0.267 K − 11.9 (K − 0.75)⁸, its steepness solved from the mean
 * (Bendt, Collares-Pereira and Rabl; greatest clearness Hollands and Huget). Window light needs days: their mean has no day like it.
 *
 * @param month mean clearness of the month, 0.2 to 0.75; number of days, 1 to 1000
 * @returns clearness of each day [day], rising; their mean is the month's
 * @throws QuantityError outside those ranges
 * @source Bendt1981, from memory
 * @example clearnessOfDays_frac({ clearness_frac: 0.4, days_n: 3 })[0] // 0.1700
 */
export function clearnessOfDays_frac(month: {
  readonly clearness_frac: number;
  readonly days_n: number;
}): readonly number[] {
  const { clearness_frac, days_n } = month;
  within("clearness_frac", clearness_frac, 0.2, 0.75);
  within("days_n", days_n, 1, 1000);
  const high = Math.max(
    0.6313 + 0.267 * clearness_frac - 11.9 * (clearness_frac - 0.75) ** 8,
    clearness_frac + 0.02,
  );
  let [flattest, steepest] = [-400, 400];
  for (let round = 0; round < 60; round += 1) {
    const middle = (flattest + steepest) / 2;
    if (meanOf_frac(middle, dullest_frac, high) < clearness_frac) flattest = middle;
    else steepest = middle;
  }
  const gamma = (flattest + steepest) / 2;
  const span = high - dullest_frac;
  const atLevel = (level: number): number =>
    Math.abs(gamma) < 1e-6
      ? dullest_frac + level * span
      : high + Math.log(level + (1 - level) * Math.exp(-gamma * span)) / gamma;
  // The mean of each slice, not its middle, keeps the mean of the month with few days, too.
  return Array.from({ length: Math.floor(days_n) }, (_, day) => {
    const [from, to] = [day / Math.floor(days_n), (day + 1) / Math.floor(days_n)].map(atLevel) as [
      number,
      number,
    ];
    return meanOf_frac(gamma, from, to);
  });
}
