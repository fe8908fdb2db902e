import { within } from "../errors/index.ts";
import { inverseMillsRatio, normalProbability } from "./normal.ts";

/** What a look at a quantity teaches about it. */
export type ProbitUpdate = {
  /** how likely this answer was before the look */
  readonly probability: number;
  readonly mean: number;
  readonly variance: number;
};

/**
 * Update a normal belief with a yes-or-no look.
 *
 * P(yes) = Φ((x − a)/s) for a quantity x ~ N(m, V). With σ = +1 for yes and −1 for no, d = √(s² + V), z = σ(m − a)/d and
 * λ = φ(z)/Φ(z): m' = m + σ V λ/d, V' = V − V² λ (z + λ)/d². Exact first two moments; no sampling.
 *
 * @param look mean and variance of the belief (variance 0 to 1e12), threshold a at which yes and no are even, spread s of the eye (1e-6 to 1e9), and the answer
 * @returns probability of the answer beforehand; mean and variance afterwards, in the units of the input
 * @throws QuantityError outside those ranges
 * @source our assumption; moments of a normal times a normal distribution function, closed form
 * @see checks/air-water.json 115, 116
 * @example probitUpdate({ mean: 100, variance: 400, threshold: 120, spread: 30, yes: true }).mean // 113.106
 */
export function probitUpdate(look: {
  readonly mean: number;
  readonly variance: number;
  readonly threshold: number;
  readonly spread: number;
  readonly yes: boolean;
}): ProbitUpdate {
  const { mean, variance, threshold, spread, yes } = look;
  within("mean", mean, -1e9, 1e9);
  within("variance", variance, 0, 1e12);
  within("threshold", threshold, -1e9, 1e9);
  within("spread", spread, 1e-6, 1e9);
  const sign = yes ? 1 : -1;
  const width = Math.sqrt(spread * spread + variance);
  const z = (sign * (mean - threshold)) / width;
  const ratio = inverseMillsRatio(z);
  return {
    probability: normalProbability(z),
    mean: mean + (sign * variance * ratio) / width,
    variance: Math.max(0, variance - (variance * variance * ratio * (z + ratio)) / (width * width)),
  };
}
