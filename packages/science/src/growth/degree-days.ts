import { within } from "../errors/index.ts";
import { betweenThresholds_Cd, type Cutoff } from "./day-excess.ts";

export const degreeDayMethods = [
  "average, mean clipped",
  "average, ends clipped",
  "three branches",
  "single triangle",
  "double triangle",
  "single sine",
  "double sine",
] as const;
export const cutoffs = ["horizontal", "intermediate", "vertical"] as const satisfies readonly Cutoff[];

export type DegreeDayMethod = (typeof degreeDayMethods)[number];

type Thresholds = {
  readonly lower_C: number;
  readonly upper_C?: number;
  readonly method?: DegreeDayMethod;
  readonly cutoff?: Cutoff;
};

const clip = (air_C: number, lower_C: number, upper_C: number): number =>
  Math.min(upper_C, Math.max(lower_C, air_C));

/** The weather service's rule of three branches for days that cross the base. */
function threeBranches(airMin_C: number, airMax_C: number, base_C: number): number {
  const mean_C = (airMin_C + airMax_C) / 2;
  if (airMax_C <= base_C) return 0;
  if (airMin_C >= base_C) return mean_C - base_C;
  if (mean_C < base_C) return (airMax_C - base_C) / 4;
  return (airMax_C - base_C) / 2 - (base_C - airMin_C) / 4;
}

function refuseOtherThresholds({ lower_C, upper_C, method = "single sine", cutoff }: Thresholds): void {
  within("lower_C", lower_C, -10, 40);
  if (upper_C !== undefined) {
    within("upper_C", upper_C, -10, 60);
    within("upper_C", upper_C, lower_C, 60);
  }
  const shaped = /triangle|sine/.test(method);
  if (!shaped && cutoff !== undefined && cutoff !== "horizontal") {
    throw new RangeError(`cutoff is ${cutoff}; method ${method} knows a horizontal cutoff only`);
  }
  if (method === "three branches" && upper_C !== undefined) {
    throw new RangeError("upper is given; method three branches knows no upper threshold");
  }
}

/**
 * Degree-days of one day from its lowest and highest temperature.
 *
 * Average: max(0, min(mean, upper) − lower), or both ends clipped to [lower, upper] before the mean is taken. Triangle and
 * sine: mean excess above the lower threshold less that above the upper (horizontal cutoff), twice that (intermediate), or
 * all time above the upper left out (vertical). Double: mean of this day's rise and the fall to the next day's lowest.
 * A sum is valid only with the method, thresholds and cutoff that made it; Fahrenheit sums are 1.8 times as large.
 *
 * @param day lowest and highest air temperature [°C], -40 to 60, lowest not above highest; next day's lowest for the double methods; thresholds [°C], lower -10 to 40, upper from lower to 60, none unless given; method, single sine unless given; cutoff, horizontal unless given
 * @returns degree-days [°C d], 0 or more
 * @throws QuantityError outside those ranges, and for a double method without the next day's lowest; RangeError where a method knows no such threshold
 * @source Zalom1983; McMasterWilhelm1997 for the averages, MetEireann for the three branches
 * @see checks/growth-fruit.json 001-043
 * @example degreeDays_Cd({ airMin_C: 7, airMax_C: 14, lower_C: 12, upper_C: 33 }) // 0.468
 */
export function degreeDays_Cd(
  day: { readonly airMin_C: number; readonly airMax_C: number; readonly airMinNext_C?: number } & Thresholds,
): number {
  const { airMin_C, airMax_C, airMinNext_C, lower_C, upper_C } = day;
  const { method = "single sine", cutoff = "horizontal" } = day;
  within("airMin_C", airMin_C, -40, 60);
  within("airMax_C", airMax_C, -40, 60);
  within("airMax_C", airMax_C, airMin_C, 60);
  if (airMinNext_C !== undefined) within("airMinNext_C", airMinNext_C, -40, 60);
  refuseOtherThresholds(day);
  if (method === "average, mean clipped") {
    return Math.max(0, Math.min((airMin_C + airMax_C) / 2, upper_C ?? Infinity) - lower_C);
  }
  if (method === "average, ends clipped") {
    const clipped = (air_C: number): number => clip(air_C, lower_C, upper_C ?? Infinity);
    return (clipped(airMin_C) + clipped(airMax_C)) / 2 - lower_C;
  }
  if (method === "three branches") return threeBranches(airMin_C, airMax_C, lower_C);
  const shape = /sine/.test(method) ? "sine" : "triangle";
  const from = (lowest_C: number): number => {
    // A front may bring a night warmer than the day before it: the fall is then a rise.
    const half = { lowest_C: Math.min(lowest_C, airMax_C), highest_C: Math.max(lowest_C, airMax_C) };
    return betweenThresholds_Cd(shape, half, lower_C, upper_C, cutoff);
  };
  if (/single/.test(method)) return from(airMin_C);
  within("airMinNext_C", airMinNext_C as number, -40, 60);
  return (from(airMin_C) + from(airMinNext_C as number)) / 2;
}

/**
 * Degree-days summed over consecutive days.
 *
 * The double methods fall to the next day's lowest temperature; the last day, which has none, falls to its own.
 *
 * @param days lowest and highest air temperatures [day][°C], -40 to 60, as many of each, 1 to 100000; thresholds, method and cutoff as for one day
 * @returns degree-days [°C d], 0 or more
 * @throws QuantityError outside those ranges; RangeError where a method knows no such threshold
 * @source Zalom1983
 * @see checks/growth-fruit.json 031, 112
 * @example degreeDaysSum_Cd({ airMin_C: [7, 12], airMax_C: [14, 20], lower_C: 12 }) // 4.468
 */
export function degreeDaysSum_Cd(
  days: { readonly airMin_C: readonly number[]; readonly airMax_C: readonly number[] } & Thresholds,
): number {
  const { airMin_C, airMax_C, ...thresholds } = days;
  within("days_n", airMin_C.length, 1, 100_000);
  within("highest_n", airMax_C.length, airMin_C.length, airMin_C.length);
  return airMin_C.reduce((sum, lowest_C, day) => {
    const highest_C = airMax_C[day] as number;
    const next_C = airMin_C[day + 1] ?? lowest_C;
    return (
      sum + degreeDays_Cd({ ...thresholds, airMin_C: lowest_C, airMax_C: highest_C, airMinNext_C: next_C })
    );
  }, 0);
}
