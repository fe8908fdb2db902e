import { within } from "../errors/index.ts";

export type NormalPart = { readonly weight: number; readonly mean: number; readonly variance: number };

/**
 * The one normal distribution with the mean and variance of a mixture.
 *
 * m = Σ w m_i; V = Σ w (V_i + (m_i − m)²), weights scaled to sum to 1
 *
 * @param parts weights (0 or more, at least one above 0), means and variances (0 or more), in one unit
 * @returns mean and variance of the mixture
 * @throws QuantityError for a negative weight or variance, or when all weights are 0
 * @source our assumption; moments of a mixture, closed form
 * @example momentMatch([{ weight: 1, mean: 0, variance: 1 }, { weight: 1, mean: 4, variance: 1 }]).variance // 5
 */
export function momentMatch(parts: readonly NormalPart[]): {
  readonly mean: number;
  readonly variance: number;
} {
  within("parts_n", parts.length, 1, 1e6);
  let total = 0;
  let mean = 0;
  for (const part of parts) {
    within("weight", part.weight, 0, 1e12);
    within("mean", part.mean, -1e12, 1e12);
    within("variance", part.variance, 0, 1e15);
    total += part.weight;
    mean += part.weight * part.mean;
  }
  within("weightSum", total, 1e-300, 1e18);
  mean /= total;
  let variance = 0;
  for (const part of parts) variance += part.weight * (part.variance + (part.mean - mean) ** 2);
  return { mean, variance: variance / total };
}
