import { covarianceIndex, type PotState, STATES_n, tidy } from "./pot-filter-state.ts";

/** A weighted sum of states plus a constant, as weight = drained - depletion. */
export interface Seen {
  /** One weight a state; those left out are 0. */
  readonly weights: readonly number[];
  /** Indices of states whose doubt counts but which this observation must not move. */
  readonly considered?: readonly number[];
}

/** What a state expects of an observation. */
export interface Expected {
  readonly mean: number;
  /** Of the sum alone, without the observation's own noise. */
  readonly variance: number;
  /** Covariance of each state with the sum. */
  readonly gain: readonly number[];
}

/**
 * Mean and variance of a weighted sum of states.
 *
 * @param state 35 numbers
 * @param seen the sum
 * @returns what the state expects
 * @source definition of mean and variance of a sum
 */
export function expectedOf(state: PotState, seen: Seen): Expected {
  const gain = new Array<number>(STATES_n).fill(0);
  let mean = 0;
  for (let column = 0; column < STATES_n; column++) {
    const weight = seen.weights[column] ?? 0;
    if (weight === 0) continue;
    mean += weight * (state[column] as number);
    for (let row = 0; row < STATES_n; row++) {
      gain[row] = (gain[row] as number) + weight * (state[covarianceIndex(row, column)] as number);
    }
  }
  let variance = 0;
  for (let row = 0; row < STATES_n; row++) variance += (seen.weights[row] ?? 0) * (gain[row] as number);
  return { mean, variance: Math.max(0, variance), gain };
}

/**
 * Moves the whole state when one weighted sum of it has become known as a new mean and variance (exact for Gaussians,
 * and how the moments of a soft look are handed on to the other states).
 *
 * x += g (m' - m), P += g gᵀ (V' - V), with g = P h / V. A considered state keeps its mean and variance.
 *
 * @param state 35 numbers
 * @param seen the sum
 * @param expected from `expectedOf` on the same state
 * @param known new mean and variance of the sum
 * @returns new state
 * @source Kalman filter in moment form; considered states as in the Schmidt-Kalman filter
 */
export function conditioned(
  state: PotState,
  seen: Seen,
  expected: Expected,
  known: { readonly mean: number; readonly variance: number },
): PotState {
  if (!(expected.variance > 0)) return state;
  const next = state.slice();
  const shift = (known.mean - expected.mean) / expected.variance;
  const shrink = (known.variance - expected.variance) / expected.variance ** 2;
  const considered = seen.considered ?? [];
  const { gain } = expected;
  // The upper triangle lies by rows, so its places are simply counted: every look, pour and weight goes through here.
  let at = STATES_n;
  for (let row = 0; row < STATES_n; row++) {
    const rowGain = gain[row] as number;
    const rowStays = considered.includes(row);
    if (!rowStays) next[row] = (next[row] as number) + rowGain * shift;
    for (let column = row; column < STATES_n; column++, at++) {
      if (rowStays && considered.includes(column)) continue;
      next[at] = (next[at] as number) + rowGain * (gain[column] as number) * shrink;
    }
  }
  tidy(next);
  return next;
}

/** Result of a measurement: the state after it and how surprising it was. */
export interface Measured {
  readonly state: PotState;
  readonly innovation: number;
  /** Variance that was expected of the innovation, noise included. */
  readonly innovationVariance: number;
}

/**
 * One scalar measurement of a weighted sum of states (F4).
 *
 * @param state 35 numbers
 * @param seen the sum
 * @param value measured value, in the sum's unit
 * @param sd standard deviation of the measurement, above 0
 * @returns state after it, innovation and its expected variance
 * @source Kalman filter, scalar update
 */
export function measured(state: PotState, seen: Seen, value: number, sd: number): Measured {
  const expected = expectedOf(state, seen);
  const noise = Math.max(sd * sd, 1e-9);
  const innovation = value - expected.mean;
  const innovationVariance = expected.variance + noise;
  const share = expected.variance / innovationVariance;
  const known = { mean: expected.mean + share * innovation, variance: expected.variance * (1 - share) };
  return { state: conditioned(state, seen, expected, known), innovation, innovationVariance };
}
