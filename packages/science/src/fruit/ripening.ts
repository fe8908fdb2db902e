import { valuesOf } from "../assumption.ts";
import { within } from "../errors/index.ts";
import { thermalRate_Cd_per_d } from "../growth/thermal-rate.ts";
import { type FruitSettings, fruitAssumptions } from "./assumptions.ts";

const Z90 = 1.2815515655446004;
/** No fruit that was written down was faster, none slower is still ripening. The model sheet's list of bad input. */
export const RIPE_LEAST_d = 25;
export const RIPE_MOST_d = 150;

/**
 * Days until a fruit is ripe at a steady temperature, or that it will not ripen there.
 *
 * (θ − warmth so far)/rate(T); the rest of the sum has its spread: at the start that of the whole, towards the end that of the whole
 * times the root of what is left. Below base + margin nothing is promised.
 *
 * @param fruit air temperature [°C], -40 to 60; thermal time from flower to ripe on its clock [°C d], 50 to 5000; of it behind [°C d], 0 to 10000, 0 unless given; spread of the sum, 0.01 to 1, 0.12 unless given; the four temperatures of the clock; any of the field's assumptions
 * @returns whether it can ripen; days and their 80 % range, null where it cannot; the coolest air in which it can [°C]
 * @throws QuantityError outside those ranges
 * @source our assumption; sums and spread as in the field growth
 * @example ripening({ air_C: 22, toRipe_Cd: 690, base_C: 10, optimumLow_C: 28, optimumHigh_C: 35, max_C: 55 }).days_d // 57.5
 */
export function ripening(
  fruit: {
    readonly air_C: number;
    readonly toRipe_Cd: number;
    readonly behind_Cd?: number;
    readonly spread_frac?: number;
    readonly base_C: number;
    readonly optimumLow_C: number;
    readonly optimumHigh_C: number;
    readonly max_C: number;
  } & FruitSettings,
): {
  readonly ripens: boolean;
  readonly days_d: number | null;
  readonly low_d: number | null;
  readonly high_d: number | null;
  readonly floor_C: number;
} {
  const { air_C, toRipe_Cd, behind_Cd = 0, spread_frac = 0.12 } = fruit;
  within("toRipe_Cd", toRipe_Cd, 50, 5000);
  within("behind_Cd", behind_Cd, 0, 10_000);
  within("spread_frac", spread_frac, 0.01, 1);
  const floor_C = fruit.base_C + valuesOf(fruitAssumptions, fruit).floorMargin_C;
  const rate = thermalRate_Cd_per_d(fruit);
  const left_Cd = Math.max(0, toRipe_Cd - behind_Cd);
  if (left_Cd === 0) return { ripens: true, days_d: 0, low_d: 0, high_d: 0, floor_C };
  if (air_C < floor_C || rate <= 0)
    return { ripens: false, days_d: null, low_d: null, high_d: null, floor_C };
  const sd_Cd = spread_frac * toRipe_Cd * Math.sqrt(left_Cd / toRipe_Cd);
  const at = (z: number): number => Math.max(0, left_Cd + z * sd_Cd) / rate;
  return { ripens: true, days_d: left_Cd / rate, low_d: at(-Z90), high_d: at(Z90), floor_C };
}

/** Fruits of one's own that count as much as the default. Our assumption. */
const WORTH_OF_DEFAULT_n = 4;

/**
 * Thermal sum from flower to ripe from the grower's own fruits, drawn towards the default.
 *
 * In logarithms: mean of the fruits with weight n/(n + 4), the default with the rest. Fruits of one plant agree, so plants count,
 * not fruits, where they are fewer. The spread is drawn towards the default in the same way.
 *
 * @param fruits sums of own fruits [fruit][°C d], 50 to 5000, 1 to 10000 of them; default [°C d], 50 to 5000; its spread, 0.01 to 1; plants that they hung on, 1 to 10000, as many as fruits unless given
 * @returns sum to use [°C d]; spread of the next fruit as a share of it; mean of the fruits alone [°C d]; weight of the fruits
 * @throws QuantityError outside those ranges
 * @source our assumption; shrinkage
 * @example refitRipening({ own_Cd: [600, 600, 600, 600], default_Cd: 690, spread_frac: 0.12 }).toRipe_Cd // 643.4
 */
export function refitRipening(fruits: {
  readonly own_Cd: readonly number[];
  readonly default_Cd: number;
  readonly spread_frac: number;
  readonly plants_n?: number;
}): {
  readonly toRipe_Cd: number;
  readonly spread_frac: number;
  readonly own_Cd: number;
  readonly weight_frac: number;
} {
  const { own_Cd, default_Cd, spread_frac } = fruits;
  within("own_n", own_Cd.length, 1, 10_000);
  for (const each of own_Cd) within("own_Cd", each, 50, 5000);
  within("default_Cd", default_Cd, 50, 5000);
  within("spread_frac", spread_frac, 0.01, 1);
  const { plants_n = own_Cd.length } = fruits;
  within("plants_n", plants_n, 1, 10_000);
  const count = Math.min(own_Cd.length, plants_n);
  const weight_frac = count / (count + WORTH_OF_DEFAULT_n);
  const logs = own_Cd.map((each) => Math.log(each));
  const mean = logs.reduce((sum, each) => sum + each, 0) / logs.length;
  const scatter = logs.reduce((sum, each) => sum + (each - mean) ** 2, 0);
  const spread = Math.sqrt(
    (WORTH_OF_DEFAULT_n * spread_frac ** 2 + scatter) / (WORTH_OF_DEFAULT_n + logs.length - 1),
  );
  const toRipe_Cd = Math.exp(weight_frac * mean + (1 - weight_frac) * Math.log(default_Cd));
  // What is not known of the mean is part of what is not known of the next fruit.
  return {
    toRipe_Cd,
    spread_frac: spread * Math.sqrt(1 + 1 / (count + WORTH_OF_DEFAULT_n)),
    own_Cd: Math.exp(mean),
    weight_frac,
  };
}

/** What a fruit's colour says, from set to soft. */
export const colourStages = [
  "set",
  "half size",
  "full green",
  "breaker",
  "turning",
  "colouring",
  "ripe",
  "over-ripe",
] as const;
export type ColourStage = (typeof colourStages)[number];

/**
 * Share of the warmth from flower to ripe that lies behind a fruit of such a colour, its middle.
 *
 * @param fruit stage of its colour; any of the field's assumptions
 * @returns share; 1 and more when ripe
 * @throws QuantityError when a set value lies outside the range of its assumption
 * @source our assumption; stages common practice
 * @example wayOfColour_frac({ colour: "breaker" }) // 0.78
 */
export function wayOfColour_frac(fruit: { readonly colour: ColourStage } & FruitSettings): number {
  const { breaker_frac } = valuesOf(fruitAssumptions, fruit);
  const rest = 1 - breaker_frac;
  return {
    set: 0.17,
    "half size": 0.38,
    "full green": Math.min(breaker_frac, 0.65),
    breaker: breaker_frac,
    turning: breaker_frac + 0.3 * rest,
    colouring: breaker_frac + 0.65 * rest,
    ripe: 1,
    "over-ripe": 1.15,
  }[fruit.colour];
}

/**
 * Days for a fruit picked early to finish its colour off the plant. Green fruit does not: it has no climacteric.
 *
 * @param fruit share coloured when picked, 0 to 1; temperature of the room [°C], 0 to 40; any of the field's assumptions
 * @returns days [d]; null for fruit picked under a tenth coloured, or kept where nothing finishes
 * @throws QuantityError outside those ranges
 * @source Molinari at 20 °C; other temperatures our assumption
 * @example finishOff_d({ coloured_frac: 0.3, air_C: 20 }) // 5
 */
export function finishOff_d(
  fruit: { readonly coloured_frac: number; readonly air_C: number } & Pick<FruitSettings, "finishOff_d">,
): number | null {
  const { coloured_frac, air_C } = fruit;
  within("coloured_frac", coloured_frac, 0, 1);
  within("air_C", air_C, 0, 40);
  if (coloured_frac < 0.1 || air_C <= 12) return null;
  const full = valuesOf(fruitAssumptions, fruit).finishOff_d;
  return (full * ((1 - coloured_frac) / 0.7) * 8) / Math.min(16, air_C - 12);
}
