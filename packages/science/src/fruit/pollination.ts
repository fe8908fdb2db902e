import { valuesOf } from "../assumption.ts";
import { within } from "../errors/index.ts";
import { type FruitSettings, fruitAssumptions } from "./assumptions.ts";

/** Cardinal temperatures of pollen tubes, mean of seven genotypes of five species. ReddyKakani2007. */
const TUBE = { base_C: 12.2, optimum_C: 31.2, max_C: 40.4 } as const;
/** Temperature at which set is as good as it gets: no more is asked of pollen than there. Our assumption. */
const GOOD_C = 27;

/**
 * Pollen germination or tube growth at a temperature, as a share of the best: two straight lines.
 *
 * (T − Tmin)/(Topt − Tmin) to the optimum, (Tmax − T)/(Tmax − Topt) beyond, 0 outside
 *
 * @param pollen temperature [°C], -40 to 60; temperatures of none [°C], -10 to 40, of the best, above it, to 50, and of none again, above that, to 60; those of tube growth unless given
 * @returns share, 0 to 1
 * @throws QuantityError outside those ranges
 * @source ReddyKakani2007
 * @see checks/growth-fruit.json 154-158
 * @example pollenRate_frac({ air_C: 22.95, base_C: 15.2, optimum_C: 30.7, max_C: 41.8 }) // 0.5
 */
export function pollenRate_frac(pollen: {
  readonly air_C: number;
  readonly base_C?: number;
  readonly optimum_C?: number;
  readonly max_C?: number;
}): number {
  const { air_C, base_C = TUBE.base_C, optimum_C = TUBE.optimum_C, max_C = TUBE.max_C } = pollen;
  within("air_C", air_C, -40, 60);
  within("base_C", base_C, -10, 40);
  within("optimum_C", optimum_C, -5, 50);
  within("max_C", max_C, 0, 60);
  within("optimum_C", optimum_C, base_C + 0.1, 50);
  within("max_C", max_C, optimum_C + 0.1, 60);
  if (air_C <= base_C || air_C >= max_C) return 0;
  return air_C <= optimum_C ? (air_C - base_C) / (optimum_C - base_C) : (max_C - air_C) / (max_C - optimum_C);
}

/** How pollen was moved: not at all, by wind and insects outdoors, or by hand. */
export const pollenMovers = ["still air", "open air", "by hand"] as const;
export type PollenMover = (typeof pollenMovers)[number];

/**
 * Chance of set by how pollen was moved, against the best.
 *
 * 1 outdoors; indoors the share of still air, and of the rest so much as visits give: 1 − 0.5^visits × 0.2, at most all
 *
 * @param flower how pollen was moved; visits by hand while the flower was open, 0 to 50, 2 unless given; any of the field's assumptions
 * @returns share, 0 to 1
 * @throws QuantityError outside that range
 * @source RedHot; gain of a second visit common practice
 * @see checks/growth-fruit.json 152
 * @example pollinated_frac({ moved: "still air" }) // 0.3
 */
export function pollinated_frac(
  flower: { readonly moved: PollenMover; readonly visits_n?: number } & FruitSettings,
): number {
  const { moved, visits_n = 2 } = flower;
  within("visits_n", visits_n, 0, 50);
  const { stillAirSet_frac } = valuesOf(fruitAssumptions, flower);
  if (moved === "open air") return 1;
  if (moved === "still air" || visits_n === 0) return stillAirSet_frac;
  const reached = 1 - ONE_VISIT_MISSES_frac * 0.5 ** (visits_n - 1);
  return stillAirSet_frac + (1 - stillAirSet_frac) * reached;
}

/** Share of what a flower could gain that a single visit misses. Our assumption; two or three visits are common practice. */
const ONE_VISIT_MISSES_frac = 0.2;

/**
 * Set with pollen moved in one way over set with it moved in another, as trials print it.
 *
 * @param trial set, or seed set, in each of the two ways [same unit], 0 to 100 and 0.01 to 100
 * @returns ratio
 * @throws QuantityError outside those ranges
 * @source RedHot and RoldanSerrano2006 for the values; the definition
 * @see checks/growth-fruit.json 152-153
 * @example setRatio({ set: 26, setOther: 87 }) // 0.30
 */
export function setRatio(trial: { readonly set: number; readonly setOther: number }): number {
  within("set", trial.set, 0, 100);
  within("setOther", trial.setOther, 0.01, 100);
  return trial.set / trial.setOther;
}

/**
 * Chance of set by the temperatures around a flower, against the best: the least of warmth for pollen, heat and cold nights.
 *
 * @param flower mean from 09:00 to 17:00 on its first two days [°C], -40 to 60; highest of those days [°C], -40 to 60, no heat unless given; coldest night [°C], -40 to 60, mild unless given; any of the field's assumptions
 * @returns share, 0 to 1
 * @throws QuantityError outside those ranges
 * @source ReddyKakani2007 for pollen, EricksonMarkhart2002 for heat, Pressman for nights; how hard each hits our assumption
 * @example warmthSet_frac({ airDay_C: 27, airNight_C: 18 }) // 1
 */
export function warmthSet_frac(
  flower: {
    readonly airDay_C: number;
    readonly airMax_C?: number;
    readonly airNight_C?: number;
  } & FruitSettings,
): number {
  const { airDay_C, airMax_C = 25, airNight_C = 18 } = flower;
  within("airDay_C", airDay_C, -40, 60);
  within("airMax_C", airMax_C, -40, 60);
  within("airNight_C", airNight_C, -40, 60);
  const set = valuesOf(fruitAssumptions, flower);
  const pollen = Math.min(1, pollenRate_frac({ air_C: airDay_C }) / pollenRate_frac({ air_C: GOOD_C }));
  const heat = airMax_C >= set.hot_C ? set.heatSet_frac : 1;
  // From the mild to the worst over four degrees: no night turns at one point.
  const short_C = Math.min(1, Math.max(0, (set.coldNight_C + 2 - airNight_C) / 4));
  const cold = 1 - short_C * (1 - set.coldNightSet_frac);
  return Math.min(pollen, heat, cold);
}
