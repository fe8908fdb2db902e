/**
 * State of one pot as the filter believes it: seven means and their covariance (upper triangle, by rows), 35
 * numbers in a plain array so that it can be kept as JSON and copied at once.
 *
 * | index | what | unit |
 * |---|---|---|
 * | 0 depletion | water lost since just drained | g |
 * | 1 leaf | ln of what the leaves use beside the leaf model | - |
 * | 2 surface | ln of what the bare medium loses beside the surface model | - |
 * | 3 drained | weight of the pot just drained | g |
 * | 4 growth | mass gained per gram of water that the leaves use | g/g |
 * | 5 capacity | water between just drained and first lasting wilt | g |
 * | 6 eye | how much drier than usual a pot is when those who tend it call it dry | share |
 */
export type PotState = readonly number[];

export const DEPLETION = 0;
export const LEAF = 1;
export const SURFACE = 2;
export const DRAINED = 3;
export const GROWTH = 4;
export const CAPACITY = 5;
export const EYE = 6;
export const STATES_n = 7;
const STATE_LENGTH_n = 35;

const ROW_START: readonly number[] = [7, 14, 20, 25, 29, 32, 34];

/**
 * Where the covariance of two states stands in the array.
 *
 * @param row one state, 0 to 6
 * @param column the other state, 0 to 6
 * @returns index into the array, 7 to 34
 * @source our assumption (layout)
 * @example covarianceIndex(0, 5) // 12
 */
export function covarianceIndex(row: number, column: number): number {
  return row <= column
    ? (ROW_START[row] as number) + column - row
    : (ROW_START[column] as number) + row - column;
}

/** Standing of each state's variance in the array. */
export const VARIANCE: readonly number[] = ROW_START;

/** What is believed of one state before anything was seen. */
export interface Belief {
  readonly mean: number;
  readonly sd: number;
}

/**
 * The state before anything was seen: independent beliefs.
 *
 * @param beliefs mean and sd of depletion [g], ln leaf factor, ln surface factor, drained weight [g], growth share
 *   [g/g], capacity [g] and eye [share], in that order
 * @returns state of 35 numbers
 * @source our assumption
 */
export function potState(
  beliefs: readonly [Belief, Belief, Belief, Belief, Belief, Belief, Belief],
): PotState {
  const state = new Array<number>(STATE_LENGTH_n).fill(0);
  beliefs.forEach((belief, index) => {
    state[index] = belief.mean;
    state[VARIANCE[index] as number] = belief.sd ** 2;
  });
  tidy(state);
  return state;
}

/** Least and greatest variance of each state; the capacity and weights are in squared grams. */
const LEAST_VARIANCE: readonly number[] = [0.01, 1e-4, 1e-4, 0.01, 1e-8, 0.25, 1e-6];
const GREATEST_VARIANCE: readonly number[] = [1e10, 4, 4, 1e10, 0.01, 1e10, 0.25];
/** Depletion may pass the capacity a little: plants draw some water after lasting wilt. @source our assumption */
const DRIEST_frac = 1.2;
const LARGEST_ln = 4;
/** No person's idea of dry lies further off than this share of the capacity. @source our assumption */
const FURTHEST_EYE_frac = 0.4;
const HIGHEST_CORRELATION = 0.9999;
const HEAVIEST_g = 1e6;

/**
 * Keeps a state usable whatever was folded into it: finite, depletion within 0..1.2 of capacity, variances positive,
 * correlations below one. Works in place on a state that nobody else holds yet.
 *
 * @param state 35 numbers, changed in place
 * @source our assumption (numerical floors)
 */
export function tidy(state: number[]): void {
  state[CAPACITY] = clamp(state[CAPACITY] as number, 1, HEAVIEST_g);
  const driest_g = DRIEST_frac * (state[CAPACITY] as number);
  state[DEPLETION] = clamp(state[DEPLETION] as number, 0, driest_g);
  state[LEAF] = clamp(state[LEAF] as number, -LARGEST_ln, LARGEST_ln);
  state[SURFACE] = clamp(state[SURFACE] as number, -LARGEST_ln, LARGEST_ln);
  state[DRAINED] = clamp(state[DRAINED] as number, 0, HEAVIEST_g);
  state[GROWTH] = clamp(state[GROWTH] as number, -0.1, 0.1);
  state[EYE] = clamp(state[EYE] as number, -FURTHEST_EYE_frac, FURTHEST_EYE_frac);
  for (let row = 0; row < STATES_n; row++) {
    const at = VARIANCE[row] as number;
    state[at] = clamp(state[at] as number, LEAST_VARIANCE[row] as number, GREATEST_VARIANCE[row] as number);
  }
  for (let row = 0; row < STATES_n - 1; row++) {
    const rowVariance = state[VARIANCE[row] as number] as number;
    for (let column = row + 1; column < STATES_n; column++) {
      const at = (ROW_START[row] as number) + column - row;
      const covariance = state[at] as number;
      if (covariance === 0) continue;
      const most2 = rowVariance * (state[VARIANCE[column] as number] as number);
      // The square root is only taken where the clamp may bite: this runs at every step of every pot.
      if (!(covariance * covariance < HIGHEST_CORRELATION ** 2 * most2)) {
        const most = HIGHEST_CORRELATION * Math.sqrt(most2);
        state[at] = clamp(covariance, -most, most);
      }
    }
  }
}

function clamp(value: number, min: number, max: number): number {
  // Written so that NaN becomes the lower end instead of travelling on.
  return value >= min ? Math.min(value, max) : min;
}

/**
 * Mean of one state.
 *
 * @param state 35 numbers
 * @param index which state, 0 to 6
 * @returns its mean, in its own unit
 * @source our assumption (layout)
 */
export function meanOf(state: PotState, index: number): number {
  return state[index] as number;
}

/**
 * Standard deviation of one state.
 *
 * @param state 35 numbers
 * @param index which state, 0 to 6
 * @returns its sd, in its own unit
 * @source our assumption (layout)
 */
export function sdOf(state: PotState, index: number): number {
  return Math.sqrt(state[VARIANCE[index] as number] as number);
}

/**
 * Standard deviation of a weighted sum of states, as depletion less 0.55 of the capacity.
 *
 * @param state 35 numbers
 * @param weights one weight a state; those left out are 0
 * @returns sd of the sum
 * @source definition of the variance of a sum
 */
export function sdOfSum(state: PotState, weights: readonly number[]): number {
  let variance = 0;
  for (let row = 0; row < STATES_n; row++) {
    const rowWeight = weights[row] ?? 0;
    if (rowWeight === 0) continue;
    for (let column = 0; column < STATES_n; column++) {
      variance += rowWeight * (weights[column] ?? 0) * (state[covarianceIndex(row, column)] as number);
    }
  }
  return Math.sqrt(Math.max(0, variance));
}

/**
 * Adds to the doubt of one state, as after a move or a trim.
 *
 * @param state 35 numbers
 * @param index which state, 0 to 6
 * @param sd standard deviation added, in the state's unit
 * @param most_sd the doubt never grows past this sd by this call
 * @returns new state
 * @source our assumption
 */
export function withMoreDoubt(state: PotState, index: number, sd: number, most_sd = Infinity): PotState {
  const next = state.slice();
  const at = VARIANCE[index] as number;
  const before = next[at] as number;
  next[at] = Math.max(before, Math.min(before + sd ** 2, most_sd ** 2));
  tidy(next);
  return next;
}

/**
 * Shifts the mean of one state.
 *
 * @param state 35 numbers
 * @param index which state, 0 to 6
 * @param by shift in the state's unit
 * @returns new state
 * @source our assumption
 */
export function shifted(state: PotState, index: number, by: number): PotState {
  const next = state.slice();
  next[index] = (next[index] as number) + by;
  tidy(next);
  return next;
}

/**
 * Forgets what a state had in common with the others and sets it anew.
 *
 * @param state 35 numbers
 * @param index which state, 0 to 6
 * @param belief its new mean and sd
 * @returns new state
 * @source our assumption
 */
export function setAnew(state: PotState, index: number, belief: Belief): PotState {
  const next = state.slice();
  for (let other = 0; other < STATES_n; other++) next[covarianceIndex(index, other)] = 0;
  next[index] = belief.mean;
  next[VARIANCE[index] as number] = belief.sd ** 2;
  tidy(next);
  return next;
}
