import { within } from "../errors/index.ts";

/** A reading beside the model: where it was taken and measured over modelled light. */
export type MapReading = { readonly x_m: number; readonly y_m: number; readonly ratio: number };

/** Readings blur over this distance [m], and say nothing beyond the other two: sheet of the field, our assumption. */
const blur_m = 0.15;
const reach_m = 0.5;
const end_m = 1;
/** A map needs as many readings; with fewer, rings of the model are shown. */
export const leastMapReadings_n = 4;
const leastError_frac = 0.1;

/** ln of the ratio at a place from readings [x, y, ln ratio], but for one of them. */
function lnRatioAt(readings: readonly MapReading[], x_m: number, y_m: number, without = -1): number {
  let [sum, weights, nearest_m] = [0, 0, Number.POSITIVE_INFINITY];
  readings.forEach((reading, i) => {
    if (i === without) return;
    const square = (reading.x_m - x_m) ** 2 + (reading.y_m - y_m) ** 2;
    const weight = 1 / (square + blur_m * blur_m);
    sum += weight * Math.log(reading.ratio);
    weights += weight;
    nearest_m = Math.min(nearest_m, Math.sqrt(square));
  });
  if (weights === 0) return 0;
  const hold = Math.max(0, Math.min(1, (end_m - nearest_m) / (end_m - reach_m)));
  return (hold * sum) / weights;
}

function checked(readings: readonly MapReading[]): readonly MapReading[] {
  within("readings_n", readings.length, 0, 1000);
  for (const { x_m, y_m, ratio } of readings) {
    within("x_m", x_m, -100, 100);
    within("y_m", y_m, -100, 100);
    within("ratio", ratio, 0.01, 100);
  }
  return readings;
}

/**
 * How much brighter a place is than the model says, from readings around it (inverse-distance weights).
 *
 * q = exp(Σ w ln q_j / Σ w), w = 1/(r² + (0.15 m)²); pulled to 1 from 0.5 m beyond the nearest reading, reached at 1 m
 *
 * @param readings places [m], -100 to 100, and ratios measured over modelled, 0.01 to 100
 * @param spot the place asked for [m]
 * @returns ratio, 1 where there is nothing to say
 * @throws QuantityError outside those ranges
 * @source Shepard1968; lengths our assumption
 */
export function mapRatio(
  readings: readonly MapReading[],
  spot: { readonly x_m: number; readonly y_m: number },
): number {
  within("x_m", spot.x_m, -100, 100);
  within("y_m", spot.y_m, -100, 100);
  return Math.exp(lnRatioAt(checked(readings), spot.x_m, spot.y_m));
}

/**
 * How far the map of a bench can be trusted: each reading foretold from all others.
 *
 * Root mean square of ln q less what the others say, never below 10 %; a map needs four readings, with fewer show rings
 *
 * @param readings places [m], -100 to 100, and ratios measured over modelled, 0.01 to 100
 * @returns whether it is a map or only rings; relative error, one standard deviation
 * @throws QuantityError outside those ranges
 * @source Shepard1968; floor and number our assumption
 */
export function mapError(readings: readonly MapReading[]): {
  readonly state: "map" | "rings";
  readonly error_frac: number;
} {
  checked(readings);
  if (readings.length < 2) return { state: "rings", error_frac: 0.3 };
  const squares = readings.map(
    (reading, i) => (Math.log(reading.ratio) - lnRatioAt(readings, reading.x_m, reading.y_m, i)) ** 2,
  );
  const error_frac = Math.sqrt(squares.reduce((sum, square) => sum + square, 0) / squares.length);
  return {
    state: readings.length >= leastMapReadings_n ? "map" : "rings",
    error_frac: Math.max(leastError_frac, error_frac),
  };
}
