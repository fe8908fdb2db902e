import { valuesOf } from "../assumption.ts";
import { normalQuantile } from "../chance/normal.ts";
import { within } from "../errors/index.ts";
import { type GrowthSettings, growthAssumptions } from "./assumptions.ts";
import { nodeClock } from "./nodes.ts";
import type { SpeciesGroup } from "./species.ts";
import { thermalPaceOf } from "./thermal-rate.ts";

/** Temperature at which the relative growth from memory is meant. */
const usual_C = 25;
const score80 = normalQuantile(0.9);
const cm2_per_m2 = 10_000;

/**
 * Relative growth of leaf area between two measurements.
 *
 * RGR = ln(A2 / A1) / days; negative where leaves were lost
 *
 * @param plant leaf area at the start and at the end [m²], 0.00001 to 20; time between [d], 0.5 to 1000
 * @returns relative growth [d⁻¹]
 * @throws QuantityError outside those ranges
 * @source our assumption; the definition
 * @example relativeGrowth_per_d({ leafAreaStart_m2: 0.01, leafAreaEnd_m2: 0.02, days_d: 7 }) // 0.0990
 */
export function relativeGrowth_per_d(plant: {
  readonly leafAreaStart_m2: number;
  readonly leafAreaEnd_m2: number;
  readonly days_d: number;
}): number {
  within("leafAreaStart_m2", plant.leafAreaStart_m2, 0.00001, 20);
  within("leafAreaEnd_m2", plant.leafAreaEnd_m2, 0.00001, 20);
  within("days_d", plant.days_d, 0.5, 1000);
  return Math.log(plant.leafAreaEnd_m2 / plant.leafAreaStart_m2) / plant.days_d;
}

/**
 * Relative growth of leaf area of a young plant that is short of nothing but light and warmth.
 *
 * RGR = RGRmax · DLI / (DLI + DLI½) · min(1, node rate at T over that at 25 °C). For the exponential stage only; a crown that
 * shades itself grows by its size limit.
 *
 * @param plant species group; daily light [mol m⁻² d⁻¹], 0 to 65; mean temperature of the day [°C], -40 to 60; any of the field's leaf assumptions
 * @returns relative growth [d⁻¹], 0 or more; rises with light
 * @throws QuantityError outside those ranges
 * @source our assumption, set to growth from memory: 0.03 to 0.08 on a winter sill, 0.10 to 0.18 at 10 to 15 mol
 * @example expectedRelativeGrowth_per_d({ species: "annuum", dli_mol_m2_d: 12, air_C: 24 }) // 0.1355
 */
export function expectedRelativeGrowth_per_d(
  plant: {
    readonly species: SpeciesGroup;
    readonly dli_mol_m2_d: number;
    readonly air_C: number;
  } & GrowthSettings,
): number {
  const { dli_mol_m2_d, air_C } = plant;
  within("dli_mol_m2_d", dli_mol_m2_d, 0, 65);
  within("air_C", air_C, -40, 60);
  return relativeGrowthOf(plant)(dli_mol_m2_d, air_C);
}

/**
 * The same for callers that ask for many days: what belongs to the plant is worked out once.
 *
 * What is handed over does not check its light (0 to 65 mol m⁻² d⁻¹) and temperature (-40 to 60 °C).
 *
 * @param plant species group; any of the field's leaf assumptions
 * @returns relative growth [d⁻¹] of a daily light [mol m⁻² d⁻¹] and a mean temperature [°C]
 * @throws QuantityError when a set value lies outside the range of its assumption
 * @source our assumption, set to growth from memory: 0.03 to 0.08 on a winter sill, 0.10 to 0.18 at 10 to 15 mol
 */
export function relativeGrowthOf(
  plant: { readonly species: SpeciesGroup } & GrowthSettings,
): (dli_mol_m2_d: number, air_C: number) => number {
  const set = valuesOf(growthAssumptions, plant);
  const { plastochron_Cd: _between, ...clock } = nodeClock({ ...plant, fruiting: false });
  const pace = thermalPaceOf(clock);
  const usual = pace(usual_C);
  return (dli_mol_m2_d, air_C) =>
    ((set.growthMax_per_d * dli_mol_m2_d) / (dli_mol_m2_d + set.growthHalfLight_mol_m2_d)) *
    Math.min(1, pace(air_C) / usual);
}

/**
 * Leaf area after a time of growth that slows as the plant fills its place.
 *
 * dA/dt = r A (1 − A / Amax), solved: A(t) = Amax / (1 + (Amax/A0 − 1) exp(−r t)). A plant above its limit stays as it is.
 *
 * @param plant leaf area [m²], 0 to 20; greatest leaf area of such a plant in its pot [m²], 0.00001 to 20; relative growth [d⁻¹], 0 to 1; time [d], 0 to 1000
 * @returns leaf area [m²], never less than at the start
 * @throws QuantityError outside those ranges
 * @source our assumption; logistic growth
 * @example leafAreaAfter_m2({ leafArea_m2: 0.01, leafAreaMax_m2: 0.1, relativeGrowth_per_d: 0.1, days_d: 7 }) // 0.01828
 */
export function leafAreaAfter_m2(plant: {
  readonly leafArea_m2: number;
  readonly leafAreaMax_m2: number;
  readonly relativeGrowth_per_d: number;
  readonly days_d: number;
}): number {
  const { leafArea_m2, leafAreaMax_m2, days_d } = plant;
  within("leafArea_m2", leafArea_m2, 0, 20);
  within("leafAreaMax_m2", leafAreaMax_m2, 0.00001, 20);
  within("relativeGrowth_per_d", plant.relativeGrowth_per_d, 0, 1);
  within("days_d", days_d, 0, 1000);
  if (leafArea_m2 === 0 || leafArea_m2 >= leafAreaMax_m2) return leafArea_m2;
  const room = leafAreaMax_m2 / leafArea_m2 - 1;
  return leafAreaMax_m2 / (1 + room * Math.exp(-plant.relativeGrowth_per_d * days_d));
}

/**
 * Leaf area to be expected after days at one daily light and temperature, with its range.
 *
 * The expected relative growth, and those of a plant that is slower or faster than nine in ten, run towards the limit.
 *
 * @param plant species group; daily light [mol m⁻² d⁻¹], 0 to 65; mean temperature [°C], -40 to 60; greatest leaf area of such a plant in its pot [m²], 0.00001 to 20; time [d], 0 to 1000; leaf area at the start [m²], 0 to 20, that of open cotyledons unless given; any of the field's leaf assumptions
 * @returns leaf area and its 80 % range [m²]
 * @throws QuantityError outside those ranges
 * @source our assumption; logistic growth at a relative growth from memory
 * @example expectedLeafArea({ species: "annuum", dli_mol_m2_d: 12, air_C: 24, leafAreaMax_m2: 0.1, days_d: 28 }).leafArea_m2 // 0.0082
 */
export function expectedLeafArea(
  plant: {
    readonly species: SpeciesGroup;
    readonly dli_mol_m2_d: number;
    readonly air_C: number;
    readonly leafAreaMax_m2: number;
    readonly days_d: number;
    readonly leafArea_m2?: number;
  } & GrowthSettings,
): { readonly leafArea_m2: number; readonly low_m2: number; readonly high_m2: number } {
  const set = valuesOf(growthAssumptions, plant);
  const { leafAreaMax_m2, days_d, leafArea_m2 = set.cotyledonArea_cm2 / cm2_per_m2 } = plant;
  const growth = expectedRelativeGrowth_per_d(plant);
  const factor = Math.exp(score80 * Math.sqrt(Math.log(1 + set.growthSpread_frac ** 2)));
  const at = (relativeGrowth_per_d: number): number =>
    leafAreaAfter_m2({
      leafArea_m2,
      leafAreaMax_m2,
      relativeGrowth_per_d: Math.min(1, relativeGrowth_per_d),
      days_d,
    });
  return { leafArea_m2: at(growth), low_m2: at(growth / factor), high_m2: at(growth * factor) };
}
