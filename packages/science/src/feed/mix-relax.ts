/**
 * Convex rows over a box: each row may lie between two edges for nothing, and counts the weighted square of what is beyond.
 * Limits are rows with a heavy weight: their penalty is nothing where they hold, so that the least of the sum is never above
 * the least of what is allowed.
 */
export type BoxRows = {
  readonly variables_n: number;
  readonly rows_n: number;
  /** row by row */
  readonly lines: Float64Array;
  readonly base: Float64Array;
  readonly low: Float64Array;
  readonly high: Float64Array;
  readonly weight: Float64Array;
};

const gradient = new Float64Array(64);
const hessian = new Float64Array(64 * 64);
const direction = new Float64Array(64);
const trial = new Float64Array(64);
const factor = new Float64Array(64 * 64);
const solved = new Float64Array(64);

function valueAt(rows: BoxRows, at: Float64Array): number {
  const { variables_n: n, rows_n } = rows;
  let sum = 0;
  for (let row_n = 0; row_n < rows_n; row_n++) {
    let value = rows.base[row_n] as number;
    for (let index_n = 0; index_n < n; index_n++)
      value += (rows.lines[row_n * n + index_n] as number) * (at[index_n] as number);
    const high = rows.high[row_n] as number;
    const low = rows.low[row_n] as number;
    const miss = value > high ? value - high : value < low ? value - low : 0;
    sum += (rows.weight[row_n] as number) * miss * miss;
  }
  return sum;
}

function valueWithSlopes(rows: BoxRows, at: Float64Array): number {
  const { variables_n: n, rows_n } = rows;
  gradient.fill(0, 0, n);
  hessian.fill(0, 0, n * n);
  let sum = 0;
  for (let row_n = 0; row_n < rows_n; row_n++) {
    const from = row_n * n;
    let value = rows.base[row_n] as number;
    for (let index_n = 0; index_n < n; index_n++)
      value += (rows.lines[from + index_n] as number) * (at[index_n] as number);
    const high = rows.high[row_n] as number;
    const low = rows.low[row_n] as number;
    const miss = value > high ? value - high : value < low ? value - low : 0;
    if (miss === 0) continue;
    const weight = rows.weight[row_n] as number;
    sum += weight * miss * miss;
    for (let one = 0; one < n; one++) {
      const line = 2 * weight * (rows.lines[from + one] as number);
      gradient[one] = (gradient[one] as number) + line * miss;
      for (let other = 0; other <= one; other++)
        hessian[one * n + other] =
          (hessian[one * n + other] as number) + line * (rows.lines[from + other] as number);
    }
  }
  return sum;
}

/** Solves the free part of hessian × direction = −gradient by Cholesky, in place. */
function newtonStep(n: number, free: readonly number[], damping: number): void {
  const size = free.length;
  let trace = 0;
  for (const index_n of free) trace += hessian[index_n * n + index_n] as number;
  const ridge = damping * trace + 1e-300;
  for (let row = 0; row < size; row++)
    for (let column = 0; column <= row; column++) {
      const one = free[row] as number;
      const other = free[column] as number;
      let sum = (one >= other ? hessian[one * n + other] : hessian[other * n + one]) as number;
      if (row === column) sum += ridge;
      for (let k = 0; k < column; k++)
        sum -= (factor[row * size + k] as number) * (factor[column * size + k] as number);
      factor[row * size + column] =
        row === column ? Math.sqrt(Math.max(sum, ridge)) : sum / (factor[column * size + column] as number);
    }
  for (let row = 0; row < size; row++) {
    let sum = -(gradient[free[row] as number] as number);
    for (let k = 0; k < row; k++) sum -= (factor[row * size + k] as number) * (solved[k] as number);
    solved[row] = sum / (factor[row * size + row] as number);
  }
  for (let row = size - 1; row >= 0; row--) {
    let sum = solved[row] as number;
    for (let k = row + 1; k < size; k++) sum -= (factor[k * size + row] as number) * (solved[k] as number);
    solved[row] = sum / (factor[row * size + row] as number);
  }
  direction.fill(0, 0, n);
  for (let row = 0; row < size; row++) direction[free[row] as number] = solved[row] as number;
}

/** Newton's step of the free variables: one at its end that it would push out stays there, and the others step without it. */
function stepWithin(
  n: number,
  free: number[],
  low: ArrayLike<number>,
  high: ArrayLike<number>,
  at: Float64Array,
  damping: number,
): void {
  for (let isSettled = false; !isSettled && free.length > 0; ) {
    newtonStep(n, free, damping);
    const blocked = free.findIndex((index_n) => {
      const position = at[index_n] as number;
      const step = direction[index_n] as number;
      return (
        (position <= (low[index_n] as number) && step < 0) ||
        (position >= (high[index_n] as number) && step > 0)
      );
    });
    isSettled = blocked < 0;
    if (!isSettled) free.splice(blocked, 1);
  }
}

/** One variable after another down its own slope: for a smooth convex sum, where none leads down there is no way down. */
function oneByOne(
  rows: BoxRows,
  low: ArrayLike<number>,
  high: ArrayLike<number>,
  at: Float64Array,
  from: number,
): boolean {
  const n = rows.variables_n;
  for (let index_n = 0; index_n < n; index_n++) {
    const slope = gradient[index_n] as number;
    const bend = hessian[index_n * n + index_n] as number;
    if (slope === 0) continue;
    const before = at[index_n] as number;
    const room = (high[index_n] as number) - (low[index_n] as number);
    for (
      let step = bend > 0 ? -slope / bend : -Math.sign(slope) * room;
      Math.abs(step) > 1e-14 * room;
      step /= 4
    ) {
      at[index_n] = Math.min(high[index_n] as number, Math.max(low[index_n] as number, before + step));
      if (valueAt(rows, at) < from) return true;
    }
    at[index_n] = before;
  }
  return false;
}

/**
 * Least of convex rows over a box, by Newton steps that stay in it.
 *
 * The value that comes back is a bound in any case: a convex function lies above its tangent, and the tangent's least over
 * the box is at a corner. A search that stops early only prunes less.
 *
 * @param rows to be met
 * @param low least of each variable
 * @param high greatest of each variable
 * @param at where to begin; holds the best point found afterwards
 * @param loops_n most Newton steps
 * @param enough a bound beyond which nobody asks how far
 * @returns a number that no point of the box can undercut
 * @source our assumption
 */
export function leastOverBox(
  rows: BoxRows,
  low: ArrayLike<number>,
  high: ArrayLike<number>,
  at: Float64Array,
  loops_n = 40,
  enough = Number.POSITIVE_INFINITY,
): number {
  const n = rows.variables_n;
  let value = valueWithSlopes(rows, at);
  for (let loop_n = 0; loop_n < loops_n && value > 0; loop_n++) {
    const free: number[] = [];
    let rise = 0;
    for (let index_n = 0; index_n < n; index_n++) {
      const slope = gradient[index_n] as number;
      const position = at[index_n] as number;
      if (
        (position <= (low[index_n] as number) && slope > 0) ||
        (position >= (high[index_n] as number) && slope < 0)
      )
        continue;
      if ((low[index_n] as number) === (high[index_n] as number)) continue;
      free.push(index_n);
      const room = slope > 0 ? position - (low[index_n] as number) : (high[index_n] as number) - position;
      rise += Math.abs(slope) * Math.min(room, 1e6);
    }
    if (free.length === 0 || rise <= 1e-13 * (1 + value)) break;
    let taken = false;
    // Where rows say nothing of a direction the step is damped until it leads down.
    for (let damping = 1e-11; damping < 10 && !taken && free.length > 0; damping *= 1e4) {
      stepWithin(n, free, low, high, at, damping);
      for (let stride = 1; stride > 1e-4 && !taken; stride /= 2) {
        for (let index_n = 0; index_n < n; index_n++)
          trial[index_n] = Math.min(
            high[index_n] as number,
            Math.max(
              low[index_n] as number,
              (at[index_n] as number) + stride * (direction[index_n] as number),
            ),
          );
        taken = valueAt(rows, trial) < value;
      }
    }
    if (taken) at.set(trial.subarray(0, n));
    else taken = oneByOne(rows, low, high, at, value);
    if (!taken) break;
    value = valueWithSlopes(rows, at);
    if (value > enough && boundBelow(n, value, low, high, at) > enough) break;
  }
  return boundBelow(n, value, low, high, at);
}

/** The tangent's least over the box: at a corner. */
function boundBelow(
  n: number,
  value: number,
  low: ArrayLike<number>,
  high: ArrayLike<number>,
  at: Float64Array,
): number {
  let bound = value;
  for (let index_n = 0; index_n < n; index_n++) {
    const slope = gradient[index_n] as number;
    const corner = slope > 0 ? (low[index_n] as number) : (high[index_n] as number);
    if (slope !== 0) bound += slope * (corner - (at[index_n] as number));
  }
  return bound;
}
