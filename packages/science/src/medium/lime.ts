import { within } from "../errors/index.ts";

/** One pound in a cubic yard, exactly from the definitions of both. */
const KG_PER_POUND = 0.45359237;
const CUBIC_METRES_PER_YARD = 0.9144 ** 3;

/**
 * A rate in pounds for each cubic yard as kilograms for each cubic metre.
 *
 * × 0.5933
 *
 * @param poundsPerYard pounds for each cubic yard, 0 to 1000
 * @returns the rate [kg m⁻³], which is as many grams for a litre
 * @throws QuantityError outside that range
 * @source our assumption; definition of the units
 * @see checks/medium-repot.json 105
 * @example metricRate_kg_m3(10) // 5.93
 */
export function metricRate_kg_m3(poundsPerYard: number): number {
  within("poundsPerYard", poundsPerYard, 0, 1000);
  return (poundsPerYard * KG_PER_POUND) / CUBIC_METRES_PER_YARD;
}

/**
 * A starter charge of nitrogen in a medium, and how long it lasts when nothing is washed out.
 *
 * mg N per litre = rate × share × 1000; days = what the pot holds / uptake
 *
 * @param charge rate of fertiliser [kg m⁻³], 0 to 20; its share of nitrogen, 0 to 0.5; volume of the medium [mL], 10 to 1e6; uptake [mg d⁻¹], 0.01 to 1000
 * @returns nitrogen [mg L⁻¹] of medium, in the pot [mg], and days
 * @throws QuantityError outside those ranges
 * @source UMassExtension for the practice; balance of mass
 * @see checks/medium-repot.json 106
 * @example starterCharge({ rate_kg_m3: 0.5933, nitrogen_frac: 0.155, medium_mL: 400, uptake_mg_d: 4 }).lasts_d // 9.2
 */
export function starterCharge(charge: {
  readonly rate_kg_m3: number;
  readonly nitrogen_frac: number;
  readonly medium_mL: number;
  readonly uptake_mg_d: number;
}): { readonly nitrogen_mg_L: number; readonly nitrogen_mg: number; readonly lasts_d: number } {
  within("rate_kg_m3", charge.rate_kg_m3, 0, 20);
  within("nitrogen_frac", charge.nitrogen_frac, 0, 0.5);
  within("medium_mL", charge.medium_mL, 10, 1e6);
  within("uptake_mg_d", charge.uptake_mg_d, 0.01, 1000);
  const nitrogen_mg_L = charge.rate_kg_m3 * charge.nitrogen_frac * 1000;
  const nitrogen_mg = (nitrogen_mg_L * charge.medium_mL) / 1000;
  return { nitrogen_mg_L, nitrogen_mg, lasts_d: nitrogen_mg / charge.uptake_mg_d };
}
