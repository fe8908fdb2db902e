import { within } from "../errors/index.ts";

/** What a plant gives to choose from: rows in such an order that the part above row i is rows i to end[i]. */
export type CutChoice = {
  readonly end: ArrayLike<number>;
  /** What a cut below the row gains, all it takes off counted. */
  readonly gain: readonly number[];
  /** What it costs of the budget: whole numbers. */
  readonly cost_n: readonly number[];
  readonly allowed: readonly boolean[];
  readonly budget_n: number;
};

/**
 * The best set of cuts of which none lies above another, within a budget: exact.
 *
 * Best(i, b) = max(Best(i+1, b), Best(end(i), b - cost(i)) + gain(i)): either the row stays and the next is looked at, or the part
 * above it is skipped
 *
 * @param choice rows, 1 to 5000; costs and budget in whole numbers, 0 to 100000
 * @returns rows to cut, in order; their gain and cost
 * @throws QuantityError outside those ranges
 * @source dynamic programme over a tree in order, textbook
 */
export function bestCuts(choice: CutChoice): {
  readonly rows: readonly number[];
  readonly gain: number;
  readonly cost_n: number;
} {
  const rows_n = choice.gain.length;
  within("rows_n", rows_n, 1, 5000);
  within("budget_n", choice.budget_n, 0, 100_000);
  const width = choice.budget_n + 1;
  const best = new Float64Array((rows_n + 1) * width);
  for (let row = rows_n - 1; row >= 0; row -= 1) {
    const cost = choice.cost_n[row] as number;
    const gain = choice.gain[row] as number;
    within("cost_n", cost, 0, 1e9);
    within("gain", gain, -1e12, 1e12);
    const stays = (row + 1) * width;
    const skips = (choice.end[row] as number) * width;
    for (let budget = 0; budget < width; budget += 1) {
      const without = best[stays + budget] as number;
      const cut =
        choice.allowed[row] === true && cost <= budget
          ? (best[skips + budget - cost] as number) + gain
          : Number.NEGATIVE_INFINITY;
      best[row * width + budget] = Math.max(without, cut);
    }
  }
  return followed(choice, best, width);
}

function followed(choice: CutChoice, best: Float64Array, width: number) {
  const rows: number[] = [];
  let cost_n = 0;
  let gain = 0;
  let budget = choice.budget_n;
  for (let row = 0; row < choice.gain.length; ) {
    if ((best[row * width + budget] as number) === (best[(row + 1) * width + budget] as number)) {
      row += 1;
      continue;
    }
    rows.push(row);
    const cost = choice.cost_n[row] as number;
    cost_n += cost;
    gain += choice.gain[row] as number;
    budget -= cost;
    row = choice.end[row] as number;
  }
  return { rows, gain, cost_n };
}
