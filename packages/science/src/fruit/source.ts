import { valuesOf } from "../assumption.ts";
import { within } from "../errors/index.ts";
import { thermalRate_frac } from "../growth/thermal-rate.ts";
import { type FruitSettings, fruitAssumptions } from "./assumptions.ts";

/** By day, canopy photosynthesis: none at 5 and 48 °C, full from 27 to 34 °C. DSSAT48, PRGRO048.SPE. */
const BY_DAY = { base_C: 5, optimumLow_C: 27, optimumHigh_C: 34, max_C: 48 } as const;
/** A colder night than this brings the next day's photosynthesis down, to nothing at 0 °C. DSSAT48, PRGRO048.SPE. */
const NIGHT_FULL_C = 5;

/**
 * Dry mass made of light, from the unit of crop tables.
 *
 * kg/ha per MJ/m² is a tenth of a gram per MJ
 *
 * @param biomassEnergy as tables of crops print it [kg ha⁻¹ per MJ m⁻²], 1 to 100
 * @returns dry mass per energy of caught light [g MJ⁻¹]
 * @throws QuantityError outside that range
 * @source SWATPlus; the definition
 * @see checks/growth-fruit.json 151
 * @example lightUse_g_MJ(30) // 3
 */
export function lightUse_g_MJ(biomassEnergy: number): number {
  within("biomassEnergy", biomassEnergy, 1, 100);
  return biomassEnergy / 10;
}

/**
 * How leaves and ground meet in a crown, seen from above.
 *
 * crown area = π/4 width²; LAI = leaf area / crown area; caught = 1 − exp(−k LAI)
 *
 * @param crown width of the crown [m], 0.01 to 3; one-sided leaf area [m²], 0 to 20; extinction, 0.3 to 1, 0.6 when left out
 * @returns ground covered [m²], leaf area over it, share of the light caught
 * @throws QuantityError outside those ranges
 * @source DSSAT48 for the extinction; SWATPlus has 0.65
 * @see checks/growth-fruit.json 147-150
 * @example crownCatch({ crownWidth_m: 0.2, leafArea_m2: 0.06 }).caught_frac // 0.682
 */
export function crownCatch(crown: {
  readonly crownWidth_m: number;
  readonly leafArea_m2: number;
  readonly extinction?: number;
}): { readonly crownArea_m2: number; readonly lai: number; readonly caught_frac: number } {
  const { crownWidth_m, leafArea_m2, extinction = 0.6 } = crown;
  within("crownWidth_m", crownWidth_m, 0.01, 3);
  within("leafArea_m2", leafArea_m2, 0, 20);
  within("extinction", extinction, 0.3, 1);
  const crownArea_m2 = (Math.PI / 4) * crownWidth_m ** 2;
  const lai = leafArea_m2 / crownArea_m2;
  return { crownArea_m2, lai, caught_frac: 1 - Math.exp(-extinction * lai) };
}

/**
 * How much of its growth a plant makes at such a day's temperatures.
 *
 * trapezoid 5/27/34/48 °C by day, times min(1, night/5 °C)
 *
 * @param air temperature by day [°C], -40 to 60; coldest of the night [°C], -40 to 60, mild unless given
 * @returns share, 0 to 1
 * @throws QuantityError outside those ranges
 * @source DSSAT48
 * @example growthWarmth_frac({ airDay_C: 16, airNight_C: 12 }) // 0.5
 */
export function growthWarmth_frac(air: { readonly airDay_C: number; readonly airNight_C?: number }): number {
  const { airDay_C, airNight_C = 15 } = air;
  within("airDay_C", airDay_C, -40, 60);
  within("airNight_C", airNight_C, -40, 60);
  const night = Math.min(1, Math.max(0, airNight_C / NIGHT_FULL_C));
  return night * thermalRate_frac({ air_C: airDay_C, ...BY_DAY });
}

/**
 * Dry mass that a crown makes in a day: the source.
 *
 * S = ε c (light caught) g_T
 *
 * @param crown light that the leaves catch [mol d⁻¹], 0 to 500; how much of its growth the temperature allows, 0 to 1, all unless given; any of the field's assumptions
 * @returns dry mass [g d⁻¹], 0 or more
 * @throws QuantityError outside those ranges
 * @source SWATPlus for the law; ε our assumption
 * @see checks/growth-fruit.json 147-150
 * @example source_g_d({ lightCaught_mol_d: 0.257 }) // 0.141
 */
export function source_g_d(
  crown: { readonly lightCaught_mol_d: number; readonly warmth_frac?: number } & FruitSettings,
): number {
  const { lightCaught_mol_d, warmth_frac = 1 } = crown;
  within("lightCaught_mol_d", lightCaught_mol_d, 0, 500);
  within("warmth_frac", warmth_frac, 0, 1);
  const set = valuesOf(fruitAssumptions, crown);
  return set.lightUse_g_MJ * set.photonEnergy_MJ_mol * lightCaught_mol_d * warmth_frac;
}
