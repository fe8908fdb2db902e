import { within } from "../errors/index.ts";

/** Mean and covariance of a pot's depletion [g], ln of its use factor, and drained weight [g], in that order. */
export type PotBelief = {
  readonly mean: readonly number[];
  readonly covariance: readonly (readonly number[])[];
};

const at = (list: readonly number[] | undefined, i: number): number => list?.[i] ?? NaN;

/**
 * One step of a pot drying: what it used, and how much less sure we are.
 *
 * use = e^ℓ · X · Ks · Δ; D += use − rain; c += drift Δ; P ← F P Fᵀ + diag[(σd use)²/Δs, qℓ² Δ, qc² Δ] with ∂D/∂ℓ = use and
 * Δs = min(Δ, 1 d). Dividing by the step makes two half days add up to one day's error: the error belongs to the day.
 *
 * @param step belief about [depletion, ln use factor, drained weight]; driver X [g d⁻¹ at factor 1], 0 to 1e5; length [d], 0.001 to 31; stress coefficient, 0 to 1; rain into the pot [g], 0 to 1e5; relative error of a day's use, 0 to 2; random walks per √d of ln use factor (0 to 2) and drained weight [g] (0 to 100); drift of the drained weight [g d⁻¹], -50 to 50
 * @returns belief after the step and the use [g]
 * @throws QuantityError outside those ranges or when the belief does not have three quantities
 * @source our assumption; extended Kalman prediction
 * @see checks/air-water.json 113, 114
 * @example depletionStep({ belief: { mean: [40, 2.99573227, 850], covariance: [[16, 0, 0], [0, 0.04, 0], [0, 0, 9]] }, driver_g_d: 1.2, length_d: 1 }).use_g // 24
 */
export function depletionStep(step: {
  readonly belief: PotBelief;
  readonly driver_g_d: number;
  readonly length_d: number;
  readonly stressCoefficient?: number;
  readonly rain_g?: number;
  readonly dayError_frac?: number;
  readonly lnUseWalk_sqrtd?: number;
  readonly drainedWalk_g_sqrtd?: number;
  readonly drainedDrift_g_d?: number;
}): { readonly belief: PotBelief; readonly use_g: number } {
  const { belief, driver_g_d, length_d, stressCoefficient = 1, rain_g = 0 } = step;
  const {
    dayError_frac = 0.25,
    lnUseWalk_sqrtd = 0.06,
    drainedWalk_g_sqrtd = 0.7,
    drainedDrift_g_d = 0,
  } = step;
  within("states_n", belief.mean.length, 3, 3);
  within("covarianceRows_n", belief.covariance.length, 3, 3);
  within("lnUse", at(belief.mean, 1), -15, 15);
  within("driver_g_d", driver_g_d, 0, 1e5);
  within("length_d", length_d, 0.001, 31);
  within("stressCoefficient", stressCoefficient, 0, 1);
  within("rain_g", rain_g, 0, 1e5);
  within("dayError_frac", dayError_frac, 0, 2);
  within("lnUseWalk_sqrtd", lnUseWalk_sqrtd, 0, 2);
  within("drainedWalk_g_sqrtd", drainedWalk_g_sqrtd, 0, 100);
  within("drainedDrift_g_d", drainedDrift_g_d, -50, 50);
  const [depletion, lnUse, drained] = [at(belief.mean, 0), at(belief.mean, 1), at(belief.mean, 2)];
  const use_g = Math.exp(lnUse) * driver_g_d * stressCoefficient * length_d;
  const p = (row: number, column: number): number => at(belief.covariance[row], column);
  const noise_g2 = (dayError_frac * use_g) ** 2 / Math.min(length_d, 1);
  const depletionLn = p(0, 1) + use_g * p(1, 1);
  const depletionDrained = p(0, 2) + use_g * p(1, 2);
  return {
    use_g,
    belief: {
      mean: [depletion + use_g - rain_g, lnUse, drained + drainedDrift_g_d * length_d],
      covariance: [
        [p(0, 0) + 2 * use_g * p(0, 1) + use_g * use_g * p(1, 1) + noise_g2, depletionLn, depletionDrained],
        [depletionLn, p(1, 1) + lnUseWalk_sqrtd ** 2 * length_d, p(1, 2)],
        [depletionDrained, p(1, 2), p(2, 2) + drainedWalk_g_sqrtd ** 2 * length_d],
      ],
    },
  };
}
