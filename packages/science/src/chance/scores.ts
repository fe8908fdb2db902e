import { within } from "../errors/index.ts";
import { normalDensity, normalProbability } from "./normal.ts";

/**
 * Continuous ranked probability score of a normal forecast: 0 is perfect; for a bare point it is the absolute error.
 *
 * CRPS = σ (z (2Φ(z) − 1) + 2φ(z) − 1/√π), z = (y − μ)/σ
 *
 * @param forecast mean, standard deviation (0 to 1e9), and what came true, in one unit
 * @returns score in that unit
 * @throws QuantityError outside those ranges
 * @source GneitingRaftery2007
 * @see checks/air-water.json 118
 * @example crpsOfNormal({ mean: 3, sd: 0.6, observed: 4 }) // 0.685
 */
export function crpsOfNormal(forecast: {
  readonly mean: number;
  readonly sd: number;
  readonly observed: number;
}): number {
  const { mean, sd, observed } = forecast;
  within("mean", mean, -1e9, 1e9);
  within("sd", sd, 0, 1e9);
  within("observed", observed, -1e9, 1e9);
  if (sd < 1e-12) return Math.abs(observed - mean);
  // Beyond a million standard deviations the score is the distance, and the density has long vanished.
  const z = Math.max(-1e6, Math.min(1e6, (observed - mean) / sd));
  if (Math.abs(z) === 1e6) return Math.abs(observed - mean) - sd / Math.sqrt(Math.PI);
  return sd * (z * (2 * normalProbability(z) - 1) + 2 * normalDensity(z) - 1 / Math.sqrt(Math.PI));
}

function orderedSample(sample: readonly number[]): Float64Array {
  within("sample_n", sample.length, 1, 1e7);
  for (const value of sample) within("sampleValue", value, -1e12, 1e12);
  return Float64Array.from(sample).sort();
}

/**
 * Continuous ranked probability score of an ensemble of equally likely values.
 *
 * CRPS = mean |x_i − y| − ½ mean |x_i − x_j|, over all pairs
 *
 * @param forecast sample (at least one value) and what came true, in one unit
 * @returns score in that unit; the absolute error for a single value
 * @throws QuantityError for an empty sample or values that are not finite
 * @source GneitingRaftery2007
 * @example crpsOfSample({ sample: [1, 3], observed: 2 }) // 0.5
 */
export function crpsOfSample(forecast: {
  readonly sample: readonly number[];
  readonly observed: number;
}): number {
  within("observed", forecast.observed, -1e12, 1e12);
  const ordered = orderedSample(forecast.sample);
  const count = ordered.length;
  let distance = 0;
  let spread = 0;
  for (let i = 0; i < count; i += 1) {
    const value = ordered[i] ?? NaN;
    distance += Math.abs(value - forecast.observed);
    // In order, x_i stands above i others and below the rest: the sum over pairs in one pass.
    spread += (2 * i + 1 - count) * value;
  }
  return distance / count - spread / (count * count);
}

/**
 * The same score when the event was cut short: it is only known that nothing had happened by the moment of cutting.
 *
 * Forecast and outcome are both read only up to the cut, which keeps the score proper: values beyond it count as the cut.
 *
 * @param forecast sample (at least one value), what came true or the moment of cutting if later, and the moment of cutting
 * @returns score in the unit of the sample
 * @throws QuantityError for an empty sample or values that are not finite
 * @source GneitingRaftery2007, threshold-weighted form (from memory)
 * @example crpsOfSampleCut({ sample: [1, 9], observed: 5, cut: 5 }) // 1
 */
export function crpsOfSampleCut(forecast: {
  readonly sample: readonly number[];
  readonly observed: number;
  readonly cut: number;
}): number {
  const { sample, observed, cut } = forecast;
  within("observed", observed, -1e12, 1e12);
  within("cut", cut, -1e12, 1e12);
  for (const value of sample) within("sampleValue", value, -1e12, 1e12);
  return crpsOfSample({
    sample: sample.map((value) => Math.min(value, cut)),
    observed: Math.min(observed, cut),
  });
}

/**
 * Where what came true stands in an ensemble; over many forecasts these must be spread evenly from 0 to 1.
 *
 * @param forecast sample (at least one value), what came true, and a uniform draw that parts ties (0 to 1, 0.5 unless given)
 * @returns probability integral transform, 0 to 1
 * @throws QuantityError for an empty sample or values that are not finite
 * @source GneitingRaftery2007
 * @example probabilityTransform({ sample: [1, 2, 3, 4], observed: 2.5 }) // 0.5
 */
export function probabilityTransform(forecast: {
  readonly sample: readonly number[];
  readonly observed: number;
  readonly tie?: number;
}): number {
  const { sample, observed, tie = 0.5 } = forecast;
  within("observed", observed, -1e12, 1e12);
  within("tie", tie, 0, 1);
  const ordered = orderedSample(sample);
  let below = 0;
  let equal = 0;
  for (const value of ordered) {
    if (value < observed) below += 1;
    else if (value === observed) equal += 1;
  }
  return (below + tie * equal) / ordered.length;
}

/**
 * Pinball loss of a forecast quantile: what it costs to be on the wrong side.
 *
 * q (y − x) when y ≥ x, else (1 − q) (x − y)
 *
 * @param forecast forecast quantile and what came true, in one unit; probability of the quantile, 0 to 1
 * @returns loss in that unit, 0 or more
 * @throws QuantityError outside those ranges
 * @source GneitingRaftery2007
 * @example pinballLoss({ forecast: 3, observed: 5, probability: 0.2 }) // 0.4
 */
export function pinballLoss(forecast: {
  readonly forecast: number;
  readonly observed: number;
  readonly probability: number;
}): number {
  within("forecast", forecast.forecast, -1e12, 1e12);
  within("observed", forecast.observed, -1e12, 1e12);
  within("probability", forecast.probability, 0, 1);
  const miss = forecast.observed - forecast.forecast;
  return miss >= 0 ? forecast.probability * miss : (forecast.probability - 1) * miss;
}

/**
 * Share of forecasts whose range held what came true.
 *
 * @param forecasts low and high ends and what came true, one each per forecast, ends included
 * @returns share, 0 to 1
 * @throws QuantityError when the lists are empty or differ in length
 * @source GneitingRaftery2007
 * @example coverage_frac({ low: [1, 1], high: [2, 2], observed: [1.5, 3] }) // 0.5
 */
export function coverage_frac(forecasts: {
  readonly low: readonly number[];
  readonly high: readonly number[];
  readonly observed: readonly number[];
}): number {
  const { low, high, observed } = forecasts;
  within("forecasts_n", observed.length, 1, 1e8);
  within("lows_n", low.length, observed.length, observed.length);
  within("highs_n", high.length, observed.length, observed.length);
  let held = 0;
  observed.forEach((value, i) => {
    within("observed", value, -1e12, 1e12);
    if (value >= (low[i] ?? NaN) && value <= (high[i] ?? NaN)) held += 1;
  });
  return held / observed.length;
}
