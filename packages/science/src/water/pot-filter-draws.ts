import { type Generator, normalQuantile } from "../chance/index.ts";
import { covarianceIndex, type PotState, STATES_n } from "./pot-filter-state.ts";

const SCORES_n = 4096;
/** Equally likely scores of the standard normal distribution. */
const TABLE: Float64Array = Float64Array.from({ length: SCORES_n }, (_, i) =>
  normalQuantile((i + 0.5) / SCORES_n),
);

/**
 * A normal score out of 4096 equally likely ones: a forecast needs some ten thousand of them, and its quantiles do not
 * see the difference.
 *
 * @param chance seeded generator
 * @returns a score
 * @source definition of a quantile
 */
export function normalScore(chance: Generator): number {
  return TABLE[Math.floor(chance.uniform() * SCORES_n)] as number;
}

/**
 * Lower triangle L with L Lᵀ = covariance of a pot's state; a direction without spread becomes a zero column, so that
 * rounding never stops a forecast.
 *
 * @param state 35 numbers
 * @returns 49 numbers, by rows
 * @source Cholesky factorisation
 */
export function spreadOf(state: PotState): Float64Array {
  const lower = new Float64Array(STATES_n * STATES_n);
  for (let row = 0; row < STATES_n; row++) {
    for (let column = 0; column <= row; column++) {
      let sum = state[covarianceIndex(row, column)] as number;
      for (let k = 0; k < column; k++) {
        sum -= (lower[row * STATES_n + k] as number) * (lower[column * STATES_n + k] as number);
      }
      if (row === column) {
        lower[row * STATES_n + row] = sum > 1e-12 ? Math.sqrt(sum) : 0;
      } else {
        const pivot = lower[column * STATES_n + column] as number;
        lower[row * STATES_n + column] = pivot > 0 ? sum / pivot : 0;
      }
    }
  }
  return lower;
}

/**
 * One draw of the state.
 *
 * @param state 35 numbers
 * @param lower from `spreadOf`
 * @param chance seeded generator
 * @param into seven numbers, overwritten
 * @source definition of a normal vector
 */
export function drawState(state: PotState, lower: Float64Array, chance: Generator, into: Float64Array): void {
  const scores = SCORES;
  for (let row = 0; row < STATES_n; row++) scores[row] = normalScore(chance);
  for (let row = 0; row < STATES_n; row++) {
    let value = state[row] as number;
    for (let column = 0; column <= row; column++) {
      value += (lower[row * STATES_n + column] as number) * (scores[column] as number);
    }
    into[row] = value;
  }
}

/** Scratch for `drawState`, overwritten at each call. */
const SCORES = new Float64Array(STATES_n);
