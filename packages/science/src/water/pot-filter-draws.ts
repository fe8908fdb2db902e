import { type Generator, normalQuantile } from "../chance/index.ts";
import {
  CAPACITY,
  covarianceIndex,
  DEPLETION,
  LEAF,
  type PotState,
  STATES_n,
  SURFACE,
} from "./pot-filter-state.ts";

const SCORES_n = 4096;
/** Equally likely scores of the standard normal distribution. */
export const SCORES: Float64Array = Float64Array.from({ length: SCORES_n }, (_, i) =>
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
  return SCORES[Math.floor(chance.uniform() * SCORES_n)] as number;
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

/** What a draw needs apart from its days: a score a state, one for its threshold, one for the error of its first day. */
const DIMENSIONS_n = STATES_n + 2;

/** The root above one of x^(d+1) = x + 1, by which the steps of an even sequence in d dimensions shrink. */
const EVEN_ROOT = (() => {
  let root = 1;
  for (let i = 0; i < 60; i++) root = (1 + root) ** (1 / (DIMENSIONS_n + 1));
  return root;
})();
const STEPS: Float64Array = Float64Array.from({ length: DIMENSIONS_n }, (_, k) => EVEN_ROOT ** -(k + 1));

/**
 * Scores for one draw after another, which cover what is possible more evenly than independent ones do: half as many draws
 * give quantiles at least as steady.
 *
 * An additive sequence: each coordinate goes on by its own irrational step.
 *
 * @param from where it starts, from `evenPlaces`; the same start gives the same scores
 * @returns a function that overwrites nine numbers with the scores of the next draw
 * @source Roberts M (2018), the R sequence, from memory; rotation by chance: Cranley R, Patterson TNL (1976), from memory
 */
export function evenScores(from: Float64Array): (into: Float64Array) => void {
  const places = from.slice();
  return (into) => {
    for (let k = 0; k < DIMENSIONS_n; k++) {
      const next = (places[k] as number) + (STEPS[k] as number);
      const place = next < 1 ? next : next - 1;
      places[k] = place;
      into[k] = SCORES[Math.floor(place * SCORES_n)] as number;
    }
  };
}

/** A start of the sequence. @param chance seeded generator @returns nine numbers, 0 to 1 @source Cranley and Patterson, as above */
export const evenPlaces = (chance: Generator): Float64Array =>
  Float64Array.from(STEPS, () => chance.uniform());

/** Number of scores that `evenScores` writes; the first seven are the states', then threshold and first day. */
export const EVEN_SCORES_n = DIMENSIONS_n;
export const THRESHOLD_SCORE = STATES_n;
export const FIRST_DAY_SCORE = STATES_n + 1;

/** What a drying pot asks of a draw: weight, growth and eye say nothing of when it is dry. */
const DRAWN: readonly number[] = [DEPLETION, LEAF, SURFACE, CAPACITY];

/**
 * One draw of depletion, factors and capacity.
 *
 * @param state 35 numbers
 * @param lower from `spreadOf`
 * @param scores standard normal, one a state
 * @param into seven numbers, of which those four are overwritten
 * @source definition of a normal vector
 */
export function drawState(
  state: PotState,
  lower: Float64Array,
  scores: Float64Array,
  into: Float64Array,
): void {
  for (let i = 0; i < DRAWN.length; i++) {
    const row = DRAWN[i] as number;
    let value = state[row] as number;
    for (let column = 0; column <= row; column++) {
      value += (lower[row * STATES_n + column] as number) * (scores[column] as number);
    }
    into[row] = value;
  }
}
