import { lineAt } from "./mix-measure.ts";
import { compiledMix, type MixProblem } from "./mix-problem.ts";
import { type BoxRows, leastOverBox } from "./mix-relax.ts";

/** A mix in any fraction of a step, and what its limits cost. */
export type RelaxedMix = {
  /** in units of each product, by id */
  readonly doses: Readonly<Record<string, number>>;
  readonly misfit: number;
  /** by name of the limit: how much the misfit would fall for each unit that the limit gave way, in its scaled unit */
  readonly prices: Readonly<Record<string, number>>;
  /** greatest break of the conditions of an optimum, relative to the slope at nothing */
  readonly residual: number;
};

/**
 * How near any doses could come, tool steps aside, with the price of each limit. Of equal optima it gives one: never
 * show these doses as a recipe.
 *
 * @param problem as for `bestMix`; all products together; conductivity by ions is not looked at
 * @returns doses, misfit, prices and how well the conditions of an optimum hold
 * @throws QuantityError for numbers outside their ranges
 * @source our assumption: augmented Lagrangian over Newton steps in the box
 * @see checks/feed.json FEED-097
 */
export function relaxedMix(problem: MixProblem): RelaxedMix {
  const mix = compiledMix(problem);
  const n = mix.products.length;
  const prices = mix.limits.map(() => 0);
  const at = Float64Array.from(mix.most, (most) => most / 2);
  const low = new Float64Array(n);
  const strength = 1e4;
  for (let loop_n = 0; loop_n < 200; loop_n++) {
    const rows = [
      ...mix.aims,
      // (s + price/strength)+ squared, times half the strength, has the same slope as price × s plus the penalty.
      ...mix.limits.map((row, row_n) => ({
        ...row,
        low: Number.NEGATIVE_INFINITY,
        high: -(prices[row_n] as number) / strength,
        weight: strength / 2,
      })),
    ];
    const box: BoxRows = {
      variables_n: n,
      rows_n: rows.length,
      lines: Float64Array.from(rows.flatMap(({ steps }) => [...steps])),
      base: Float64Array.from(rows, ({ base }) => base),
      low: Float64Array.from(rows, (row) => row.low),
      high: Float64Array.from(rows, (row) => row.high),
      weight: Float64Array.from(rows, ({ weight }) => weight),
    };
    leastOverBox(box, low, mix.most, at, 2000);
    let moved = 0;
    mix.limits.forEach((row, row_n) => {
      const before = prices[row_n] as number;
      const next = Math.max(0, before + strength * lineAt(row, at));
      moved = Math.max(moved, Math.abs(next - before));
      prices[row_n] = next;
    });
    if (moved < 1e-12) break;
  }
  const slope = (from: ArrayLike<number>, withPrices: boolean) => {
    const sum = new Float64Array(n);
    const add = (steps: Float64Array, times: number) => {
      for (let index_n = 0; index_n < n; index_n++)
        sum[index_n] = (sum[index_n] as number) + times * (steps[index_n] as number);
    };
    let misfit = 0;
    for (const aim of mix.aims) {
      const value = lineAt(aim, from);
      const miss = value > aim.high ? value - aim.high : value < aim.low ? value - aim.low : 0;
      misfit += aim.weight * miss * miss;
      add(aim.steps, 2 * aim.weight * miss);
    }
    if (withPrices) {
      for (const [row_n, row] of mix.limits.entries()) add(row.steps, prices[row_n] as number);
    }
    return { sum, misfit };
  };
  const { sum, misfit } = slope(at, true);
  const scale = 1 + Math.max(...slope(low, false).sum.map(Math.abs));
  // At the least of a product its slope may rise; at its most it may fall.
  const residual = Math.max(
    ...Array.from(sum, (value, index_n) =>
      (at[index_n] as number) <= 1e-9 * (mix.most[index_n] as number)
        ? Math.max(0, -value)
        : (at[index_n] as number) >= (1 - 1e-9) * (mix.most[index_n] as number)
          ? Math.max(0, value)
          : Math.abs(value),
    ),
    ...mix.limits.map((row) => Math.max(0, lineAt(row, at))),
  );
  return {
    doses: Object.fromEntries(
      mix.products.map(({ id, step }, index_n) => [id, step * (at[index_n] as number)]),
    ),
    misfit,
    prices: Object.fromEntries(mix.limits.map(({ name }, row_n) => [name, prices[row_n] as number])),
    residual: residual / scale,
  };
}
