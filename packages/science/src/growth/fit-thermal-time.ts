import { sampleQuantile } from "../chance/sample.ts";
import { within } from "../errors/index.ts";

type Batches = {
  /** mean temperature of each batch over the phase */
  readonly air_C: readonly number[];
  /** how long the phase took */
  readonly days_d: readonly number[];
};
type Usual = { readonly base_C: number; readonly thermalTime_Cd: number };

/** The batches' weight against the default: four of them count as much as it does. @source our assumption */
const worthOfDefault_n = 4;
/** Longer sums than this are those of a line that does not rise. @source our assumption */
const greatest_Cd = 100_000;

/** Development per day against temperature, by least squares. */
type RateLine = { readonly slope_per_Cd: number; readonly intercept_per_d: number };

function lineThrough(air_C: readonly number[], days_d: readonly number[]): RateLine {
  const count = air_C.length;
  const meanAir = air_C.reduce((sum, each) => sum + each, 0) / count;
  const meanRate = days_d.reduce((sum, each) => sum + 1 / each, 0) / count;
  let products = 0;
  let squares = 0;
  air_C.forEach((each, batch) => {
    products += (each - meanAir) * (1 / (days_d[batch] as number) - meanRate);
    squares += (each - meanAir) ** 2;
  });
  const slope_per_Cd = squares > 0 ? products / squares : 0;
  return { slope_per_Cd, intercept_per_d: meanRate - slope_per_Cd * meanAir };
}

/** Where the warmer batches took no less time, no base temperature follows from them. */
const givesBase = ({ slope_per_Cd }: RateLine): boolean => slope_per_Cd > 1 / greatest_Cd;

const read = ({ slope_per_Cd, intercept_per_d }: RateLine): Usual => ({
  base_C: -intercept_per_d / slope_per_Cd,
  thermalTime_Cd: 1 / slope_per_Cd,
});

/** Weighted mean of the two lines, so that base and sum stay a pair. */
function shrunk(line: RateLine, usual: Usual, batches_n: number): Usual {
  const weight = batches_n / (batches_n + worthOfDefault_n);
  const slope = 1 / usual.thermalTime_Cd;
  return read({
    slope_per_Cd: weight * line.slope_per_Cd + (1 - weight) * slope,
    intercept_per_d: weight * line.intercept_per_d - (1 - weight) * usual.base_C * slope,
  });
}

function refuseOtherBatches({ air_C, days_d, base_C, thermalTime_Cd }: Batches & Usual): void {
  within("batches_n", air_C.length, 4, 10_000);
  within("durations_n", days_d.length, air_C.length, air_C.length);
  for (const each of air_C) within("air_C", each, -10, 50);
  for (const each of days_d) within("days_d", each, 0.5, 1000);
  within("airRange_C", Math.max(...air_C) - Math.min(...air_C), 4, 60);
  within("base_C", base_C, -10, 30);
  within("thermalTime_Cd", thermalTime_Cd, 10, 5000);
}

/**
 * Base temperature and thermal sum of a phase from the grower's own batches.
 *
 * 1/days against mean temperature by least squares: Tb = −intercept/slope, sum = 1/slope. The line is then drawn towards that of
 * the default with weight n/(n + 4) for the batches, so that the two stay a pair. A high fitted base often belongs to a curved
 * response seen over warm batches only.
 *
 * @param batches mean temperatures [batch][°C], -10 to 50, spanning 4 °C or more, and durations [batch][d], 0.5 to 1000, 4 batches or more; base [°C], -10 to 30, and sum [°C d], 10 to 5000, of the default
 * @returns base [°C] and sum [°C d] to use, and as fitted without the default
 * @throws QuantityError outside those ranges, and for a fitted sum that is negative or endless: warmer batches took no less time
 * @source our assumption; linear regression of rate on temperature
 * @example fitThermalTime({ air_C: [16, 18, 20, 24], days_d: [50, 37.5, 30, 21.428571], base_C: 10, thermalTime_Cd: 300 }).fittedBase_C // 10.0
 */
export function fitThermalTime(batches: Batches & Usual): {
  readonly base_C: number;
  readonly thermalTime_Cd: number;
  readonly fittedBase_C: number;
  readonly fittedThermalTime_Cd: number;
} {
  refuseOtherBatches(batches);
  const line = lineThrough(batches.air_C, batches.days_d);
  const alone = read(line);
  if (!givesBase(line)) within("fittedThermalTime_Cd", alone.thermalTime_Cd, 0, greatest_Cd);
  return {
    ...shrunk(line, batches, batches.air_C.length),
    fittedBase_C: alone.base_C,
    fittedThermalTime_Cd: alone.thermalTime_Cd,
  };
}

/**
 * Range of a base temperature and thermal sum fitted to batches: the batches are drawn again and again.
 *
 * Draws in which warmer batches took no less time give no base; they are counted and left out.
 *
 * @param batches as for the fit; number of redraws, 20 to 100000; probability of each end, 0.005 to 0.4; uniform chance
 * @returns ends of base [°C] and sum [°C d], drawn towards the default as the fit is; share of draws that gave a base
 * @throws QuantityError outside those ranges, and when fewer than half of the draws gave a base
 * @source our assumption; bootstrap over batches
 */
export function fitThermalTimeRange(
  batches: Batches &
    Usual & { readonly redraws_n: number; readonly tail: number; readonly uniform: () => number },
): {
  readonly baseLow_C: number;
  readonly baseHigh_C: number;
  readonly thermalTimeLow_Cd: number;
  readonly thermalTimeHigh_Cd: number;
  readonly useful_frac: number;
} {
  const { air_C, days_d, redraws_n, tail, uniform } = batches;
  refuseOtherBatches(batches);
  within("redraws_n", redraws_n, 20, 100_000);
  within("tail", tail, 0.005, 0.4);
  const found: Usual[] = [];
  for (let redraw = 0; redraw < redraws_n; redraw += 1) {
    const picks = air_C.map(() => Math.floor(uniform() * air_C.length));
    const line = lineThrough(
      picks.map((pick) => air_C[pick] as number),
      picks.map((pick) => days_d[pick] as number),
    );
    if (givesBase(line)) found.push(shrunk(line, batches, air_C.length));
  }
  if (found.length < redraws_n / 2)
    throw new RangeError("most draws of the batches give no base temperature");
  const end = (of: keyof Usual, probability: number): number =>
    sampleQuantile({ sample: found.map((each) => each[of]), probability });
  return {
    baseLow_C: end("base_C", tail),
    baseHigh_C: end("base_C", 1 - tail),
    thermalTimeLow_Cd: end("thermalTime_Cd", tail),
    thermalTimeHigh_Cd: end("thermalTime_Cd", 1 - tail),
    useful_frac: found.length / redraws_n,
  };
}
