import { within } from "../errors/index.ts";

/** A belief about several quantities at once: means, and covariances row by row. */
export type Belief = {
  readonly mean: readonly number[];
  /** [row][column], symmetric */
  readonly covariance: readonly (readonly number[])[];
};

export type LinearUpdate = {
  readonly belief: Belief;
  readonly innovation: number;
  readonly innovationVariance: number;
  readonly gain: readonly number[];
  /** |innovation| in standard deviations */
  readonly surprise: number;
  /** false when the reading is too surprising to believe: the belief is then returned unchanged */
  readonly accepted: boolean;
};

const entry = (list: readonly number[] | undefined, i: number): number => list?.[i] ?? NaN;

function checkBelief(belief: Belief): number {
  const size = belief.mean.length;
  within("states_n", size, 1, 64);
  within("covarianceRows_n", belief.covariance.length, size, size);
  for (let row = 0; row < size; row += 1) {
    within("mean", entry(belief.mean, row), -1e12, 1e12);
    const line = belief.covariance[row] ?? [];
    within("covarianceColumns_n", line.length, size, size);
    for (const value of line) within("covariance", value, -1e15, 1e15);
    within("variance", entry(line, row), 0, 1e15);
  }
  return size;
}

/**
 * Update a normal belief with one reading that is a weighted sum of its quantities (Kalman's update for a scalar).
 *
 * y = H x + ε; S = H P Hᵀ + σ²; K = P Hᵀ / S; x' = x + K (y − H x); P' = (I − K H) P (I − K H)ᵀ + K σ² Kᵀ, which stays
 * symmetric and positive. A reading further off than the gate is held back, not averaged in: it is asked about.
 *
 * @param reading belief; weights H, one per quantity; value; variance of the reading (1e-12 to 1e12); gate in standard deviations (1 to 1e6, 4 unless given)
 * @returns belief afterwards, innovation, its variance, gain, surprise, and whether it was accepted
 * @throws QuantityError outside those ranges or when sizes differ
 * @source Kalman1960
 * @see checks/air-water.json 114
 * @example linearUpdate({ belief: { mean: [0], covariance: [[4]] }, weights: [1], value: 3, variance: 4 }).belief.mean[0] // 1.5
 */
export function linearUpdate(reading: {
  readonly belief: Belief;
  readonly weights: readonly number[];
  readonly value: number;
  readonly variance: number;
  readonly gate?: number;
}): LinearUpdate {
  const { belief, weights, value, variance, gate = 4 } = reading;
  const size = checkBelief(belief);
  within("weights_n", weights.length, size, size);
  for (const weight of weights) within("weight", weight, -1e9, 1e9);
  within("value", value, -1e12, 1e12);
  within("variance", variance, 1e-12, 1e12);
  within("gate", gate, 1, 1e6);
  const { mean, covariance } = belief;
  const seen = mean.map((_, row) =>
    weights.reduce((sum, weight, column) => sum + entry(covariance[row], column) * weight, 0),
  );
  const innovation = value - mean.reduce((sum, state, i) => sum + state * entry(weights, i), 0);
  const innovationVariance = weights.reduce((sum, weight, i) => sum + weight * entry(seen, i), variance);
  const gain = seen.map((each) => each / innovationVariance);
  const surprise = Math.abs(innovation) / Math.sqrt(innovationVariance);
  if (surprise > gate) {
    return { belief, innovation, innovationVariance, gain, surprise, accepted: false };
  }
  const kept = mean.map((_, row) =>
    weights.map((weight, column) => (row === column ? 1 : 0) - entry(gain, row) * weight),
  );
  const half = kept.map((line) =>
    mean.map((_, column) => line.reduce((sum, each, k) => sum + each * entry(covariance[k], column), 0)),
  );
  const after = half.map((line, row) =>
    kept.map(
      (other, column) =>
        line.reduce((sum, each, k) => sum + each * entry(other, k), 0) +
        entry(gain, row) * variance * entry(gain, column),
    ),
  );
  const moved = mean.map((state, i) => state + entry(gain, i) * innovation);
  return {
    belief: { mean: moved, covariance: after },
    innovation,
    innovationVariance,
    gain,
    surprise,
    accepted: true,
  };
}

/**
 * Carry what was learned about one quantity of a belief to the others.
 *
 * With g = P_i / P_ii: x += g (m' − m), P += g gᵀ (V' − V). Exact when the others depend linearly on the one.
 *
 * @param learned belief; which quantity (index from 0); its mean and variance afterwards
 * @returns belief afterwards
 * @throws QuantityError when the index is no quantity of the belief or its variance is 0
 * @source our assumption; conditional moments of the normal distribution
 * @example carryToOthers({ belief: { mean: [0, 0], covariance: [[4, 2], [2, 3]] }, index_n: 0, learnedMean: 2, learnedVariance: 1 }).mean[1] // 1
 */
export function carryToOthers(learned: {
  readonly belief: Belief;
  readonly index_n: number;
  readonly learnedMean: number;
  readonly learnedVariance: number;
}): Belief {
  const { belief, index_n, learnedMean, learnedVariance } = learned;
  const size = checkBelief(belief);
  within("index_n", index_n, 0, size - 1);
  within("learnedMean", learnedMean, -1e12, 1e12);
  within("learnedVariance", learnedVariance, 0, 1e15);
  const before = entry(belief.covariance[index_n], index_n);
  within("varianceBefore", before, 1e-15, 1e15);
  const gain = belief.covariance.map((line) => entry(line, index_n) / before);
  const step = learnedMean - entry(belief.mean, index_n);
  return {
    mean: belief.mean.map((state, i) => state + entry(gain, i) * step),
    covariance: belief.covariance.map((line, row) =>
      line.map(
        (value, column) => value + entry(gain, row) * entry(gain, column) * (learnedVariance - before),
      ),
    ),
  };
}
