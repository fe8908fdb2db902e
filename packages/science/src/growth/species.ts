import { valuesOf } from "../assumption.ts";
import { type GrowthSettings, growthAssumptions } from "./assumptions.ts";
import { degreeDays_Cd } from "./degree-days.ts";
import { degreeDaysHourly_Cd, type ThermalClock } from "./thermal-rate.ts";

/** The five domesticated species, as groups of like growth. */
export const speciesGroups = ["annuum", "chinense", "frutescens", "baccatum", "pubescens"] as const;
export type SpeciesGroup = (typeof speciesGroups)[number];

const keysOf = {
  annuum: { base: "baseAnnuum_C", optimum: "optimumAnnuum_C" },
  chinense: { base: "baseChinense_C", optimum: "optimumChinense_C" },
  frutescens: { base: "baseFrutescens_C", optimum: "optimumFrutescens_C" },
  baccatum: { base: "baseBaccatum_C", optimum: "optimumBaccatum_C" },
  pubescens: { base: "basePubescens_C", optimum: "optimumPubescens_C" },
} as const;

/**
 * Clock of development of a species group: the temperatures between which its thermal time runs.
 *
 * @param plant species group; any of the field's temperature assumptions, set for a cultivar
 * @returns base, lower and upper optimum, maximum [°C]
 * @throws QuantityError when a set value lies outside the range of its assumption
 * @source our assumption between published values that disagree widely; maximum DSSAT48
 * @example developmentClock({ species: "chinense" }).base_C // 13
 */
export function developmentClock(plant: { readonly species: SpeciesGroup } & GrowthSettings): ThermalClock {
  const set = valuesOf(growthAssumptions, plant);
  const { base, optimum } = keysOf[plant.species];
  return {
    base_C: set[base],
    optimumLow_C: set[optimum],
    optimumHigh_C: set[optimum] + set.plateau_C,
    max_C: set.ceiling_C,
  };
}

/**
 * Thermal time of a day of a species group, from logged temperatures where there are some, else from the lowest and highest.
 *
 * Logged: hourly trapezoid. Else single sine with horizontal cutoff at the lower optimum. Sums of the two differ where nights
 * fall below the base or days pass the upper optimum, so the method is handed over with the sum.
 *
 * @param day species group; lowest and highest air temperature [°C], -40 to 60, lowest not above highest; logged temperatures [reading][°C], -40 to 60, evenly over the day, if any; any of the field's temperature assumptions
 * @returns thermal time [°C d], method, and the thresholds [°C] that made it
 * @throws QuantityError outside those ranges
 * @source DSSAT48 for the trapezoid, Zalom1983 for the sine
 * @example thermalTimeOfDay({ species: "annuum", airMin_C: 18, airMax_C: 26 }).thermalTime_Cd // 12
 */
export function thermalTimeOfDay(
  day: {
    readonly species: SpeciesGroup;
    readonly airMin_C: number;
    readonly airMax_C: number;
    readonly air_C?: readonly number[];
  } & GrowthSettings,
): {
  readonly thermalTime_Cd: number;
  readonly method: "hourly trapezoid" | "single sine";
  readonly lower_C: number;
  readonly upper_C: number;
  readonly cutoff: "horizontal";
} {
  const clock = developmentClock(day);
  const { airMin_C, airMax_C, air_C } = day;
  const made = { lower_C: clock.base_C, upper_C: clock.optimumLow_C, cutoff: "horizontal" } as const;
  // Also the check of the two ends, which a log does not spare.
  const bySine = degreeDays_Cd({ airMin_C, airMax_C, ...made });
  if (air_C === undefined) return { thermalTime_Cd: bySine, method: "single sine", ...made };
  const length_h = 24 / Math.max(1, air_C.length);
  return {
    thermalTime_Cd: degreeDaysHourly_Cd({ air_C, length_h, ...clock }),
    method: "hourly trapezoid",
    ...made,
  };
}
