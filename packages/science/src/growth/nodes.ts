import { valuesOf } from "../assumption.ts";
import { normalQuantile } from "../chance/normal.ts";
import { within } from "../errors/index.ts";
import { type GrowthSettings, growthAssumptions } from "./assumptions.ts";
import type { SpeciesGroup } from "./species.ts";
import { type ThermalClock, thermalRate_Cd_per_d } from "./thermal-rate.ts";

/** Cardinal temperatures of leaf appearance of the bell pepper model. DSSAT48. */
const leafClock: ThermalClock = { base_C: 5.5, optimumLow_C: 21, optimumHigh_C: 28, max_C: 55 };
const score80 = normalQuantile(0.9);

type Growing = { readonly species: SpeciesGroup; readonly fruiting: boolean } & GrowthSettings;

/** The clock of the nodes and the thermal time between two of them on that very clock. */
export type NodeClock = ThermalClock & { readonly plastochron_Cd: number };

/**
 * Plastochron of a species group, with the clock that it belongs to: neither means anything without the other.
 *
 * annuum: 0.35 leaves in a thermal day of the model, which is one per 44.3 °C d above 5.5 °C counted up to 21 °C; fruit slows
 * it by a third. chinense: 43.6 °C d above 16.8 °C, in fruit 64.4 above 16.7; its optimum is the general one. Of the other
 * species nothing was found: they are taken as annuum.
 *
 * @param plant species group; whether it bears fruit; any of the field's leaf assumptions
 * @returns base, lower and upper optimum, maximum [°C] and plastochron [°C d]
 * @throws QuantityError when a set value lies outside the range of its assumption
 * @source BiquinhoPlastochron for chinense, DSSAT48 for annuum; other species our assumption
 * @see checks/growth-fruit.json 051, 052
 * @example nodeClock({ species: "annuum", fruiting: false }).plastochron_Cd // 44.29
 */
export function nodeClock(plant: Growing): NodeClock {
  const set = valuesOf(growthAssumptions, plant);
  if (plant.species === "chinense") {
    const optimum_C = set.optimumChinense_C;
    return {
      base_C: plant.fruiting ? 16.7 : 16.8,
      optimumLow_C: optimum_C,
      optimumHigh_C: optimum_C + set.plateau_C,
      max_C: set.ceiling_C,
      plastochron_Cd: plant.fruiting ? set.plastochronFruiting_Cd : set.plastochron_Cd,
    };
  }
  const leaves_per_d = set.leafRate_per_d * (plant.fruiting ? 1 - set.fruitingSlows_frac : 1);
  return { ...leafClock, plastochron_Cd: (leafClock.optimumLow_C - leafClock.base_C) / leaves_per_d };
}

/**
 * Nodes that a shoot makes in a day at a constant temperature.
 *
 * @param plant species group; whether it bears fruit; temperature [°C], -40 to 60; any of the field's leaf assumptions
 * @returns rate [d⁻¹], 0 or more
 * @throws QuantityError outside those ranges
 * @source BiquinhoPlastochron for chinense, DSSAT48 for annuum; other species our assumption
 * @example nodeRate_per_d({ species: "chinense", fruiting: false, air_C: 25 }) // 0.188
 */
export function nodeRate_per_d(plant: Growing & { readonly air_C: number }): number {
  const { plastochron_Cd, ...clock } = nodeClock(plant);
  return thermalRate_Cd_per_d({ air_C: plant.air_C, ...clock }) / plastochron_Cd;
}

/**
 * Nodes that a shoot has made in a thermal time on the clock of its nodes.
 *
 * @param plant species group; whether it bears fruit; thermal time [°C d], 0 to 20000, on the clock of nodeClock; any of the field's leaf assumptions
 * @returns nodes, and their 80 % range
 * @throws QuantityError outside those ranges
 * @source BiquinhoPlastochron for chinense, DSSAT48 for annuum; spread our assumption
 * @example nodesMade({ species: "chinense", fruiting: false, thermalTime_Cd: 436 }).nodes_n // 10
 */
export function nodesMade(plant: Growing & { readonly thermalTime_Cd: number }): {
  readonly nodes_n: number;
  readonly low_n: number;
  readonly high_n: number;
} {
  within("thermalTime_Cd", plant.thermalTime_Cd, 0, 20_000);
  const nodes_n = plant.thermalTime_Cd / nodeClock(plant).plastochron_Cd;
  const share = valuesOf(growthAssumptions, plant).nodeSpread_frac;
  const factor = Math.exp(score80 * Math.sqrt(Math.log(1 + share * share)));
  return { nodes_n, low_n: nodes_n / factor, high_n: nodes_n * factor };
}
