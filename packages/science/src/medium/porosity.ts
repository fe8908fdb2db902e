import type { ScreeningNote } from "../air/index.ts";
import { within } from "../errors/index.ts";

/**
 * Total porosity of a drained medium: its air and its water together.
 *
 * TP = AS + CC
 *
 * @param parts air and water after draining, 0 to 2 (printed tables err; see screenPorosity)
 * @returns share of the volume
 * @throws QuantityError outside those ranges
 * @source our assumption; definition
 * @see checks/medium-repot.json 001 to 018
 * @example totalPorosity_frac({ air_frac: 0.28, water_frac: 0.57 }) // 0.85
 */
export function totalPorosity_frac(parts: {
  readonly air_frac: number;
  readonly water_frac: number;
}): number {
  within("air_frac", parts.air_frac, 0, 2);
  within("water_frac", parts.water_frac, 0, 2);
  return parts.air_frac + parts.water_frac;
}

/**
 * Look over a record of porosity: parts that miss their total, or sums that no medium has, are refused.
 *
 * Refused: |air + water − total| above 0.03; air + water above 0.985; total below 0.25; dry density above 2 g mL⁻¹
 *
 * @param record air and water after draining, total porosity and dry density [g mL⁻¹], any value
 * @returns notes, none when all is usual
 * @source our assumption
 * @see checks/medium-repot.json 010, 104
 * @example screenPorosity({ air_frac: 0.2, water_frac: 0.85, porosity_frac: 0.86 })[0].level // "refuse"
 */
export function screenPorosity(record: {
  readonly air_frac: number;
  readonly water_frac: number;
  readonly porosity_frac: number;
  readonly bulkDensity_g_mL?: number;
}): readonly ScreeningNote[] {
  const { air_frac, water_frac, porosity_frac, bulkDensity_g_mL } = record;
  const notes: ScreeningNote[] = [];
  const refuse = (quantity: string, what: string, likelyCause: string): void => {
    notes.push({ level: "refuse", quantity, what, likelyCause });
  };
  const sum = air_frac + water_frac;
  if (!(Math.abs(sum - porosity_frac) <= 0.03 + 1e-9))
    refuse("porosity_frac", "air and water miss the total by more than 3 points", "a misprint");
  if (!(sum <= 0.985)) refuse("water_frac", "air and water are above 98.5 %", "percent by weight");
  if (!(porosity_frac >= 0.25)) refuse("porosity_frac", "below 25 %", "a share of the pores");
  if (bulkDensity_g_mL !== undefined && !(bulkDensity_g_mL <= 2))
    refuse("bulkDensity_g_mL", "above 2 g/mL", "weighed wet, or another unit");
  return notes;
}

/**
 * A quick estimate of porosity from dry and drained weights of a medium without closed pores.
 *
 * PS = 0.9672 − 0.00038 VW; AV = 0.9672 + 0.00062 VW − DD. Not with perlite or foam: it then reads too high.
 *
 * @param weights dry mass of a litre [g L⁻¹], 20 to 900; drained mass of a millilitre [g mL⁻¹], 0.1 to 1.6, so that air is not negative
 * @returns shares of pores, air and water
 * @throws QuantityError outside those ranges
 * @source ActaHort294
 * @see checks/medium-repot.json 048 to 051
 * @example quickPorosity({ dryMass_g_L: 100, drainedDensity_g_mL: 0.75 }).porosity_frac // 0.9292
 */
export function quickPorosity(weights: {
  readonly dryMass_g_L: number;
  readonly drainedDensity_g_mL: number;
}): { readonly porosity_frac: number; readonly air_frac: number; readonly water_frac: number } {
  const { dryMass_g_L, drainedDensity_g_mL } = weights;
  within("dryMass_g_L", dryMass_g_L, 20, 900);
  within("drainedDensity_g_mL", drainedDensity_g_mL, 0.1, 1.6);
  const porosity_frac = 0.9672 - 0.00038 * dryMass_g_L;
  const air_frac = 0.9672 + 0.00062 * dryMass_g_L - drainedDensity_g_mL;
  within("drainedDensity_g_mL", drainedDensity_g_mL, 0.1, Math.min(1.6, 0.9672 + 0.00062 * dryMass_g_L));
  return { porosity_frac, air_frac, water_frac: porosity_frac - air_frac };
}

/**
 * Volume of pots that a bag fills.
 *
 * Bag × reference share, or bag / density in the pot over the declared one: medium packs when it is filled in and watered.
 *
 * @param bag litres declared, 0.1 to 5000; share that ends up in pots, 0.4 to 1.1, 0.8 unless given
 * @returns volume of pots [L]
 * @throws QuantityError outside those ranges
 * @source Verhagen2017
 * @see checks/medium-repot.json 052, 053
 * @example potsFromBag_L({ bag_L: 100, packed_frac: 0.8 }) // 80
 */
export function potsFromBag_L(bag: { readonly bag_L: number; readonly packed_frac?: number }): number {
  within("bag_L", bag.bag_L, 0.1, 5000);
  within("packed_frac", bag.packed_frac ?? 0.8, 0.4, 1.1);
  return bag.bag_L * (bag.packed_frac ?? 0.8);
}

/**
 * Water of a drained pot that its plant can draw, from how much of the pores holds water and how much of that is available.
 *
 * share of the pores = filled × available share
 *
 * @param pores share of the pores that holds water, 0 to 1; share of that water which is available, 0 to 1
 * @returns share of the pores; of the volume when multiplied by the porosity
 * @throws QuantityError outside those ranges
 * @source UMassExtension
 * @see checks/medium-repot.json 047
 * @example availableOfPores_frac({ poresFilled_frac: 0.65, availableOfWater_frac: 0.7 }) // 0.455
 */
export function availableOfPores_frac(pores: {
  readonly poresFilled_frac: number;
  readonly availableOfWater_frac: number;
}): number {
  within("poresFilled_frac", pores.poresFilled_frac, 0, 1);
  within("availableOfWater_frac", pores.availableOfWater_frac, 0, 1);
  return pores.poresFilled_frac * pores.availableOfWater_frac;
}
