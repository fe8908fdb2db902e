/** Costs to be kept least over x ≥ 0 under lines that may not be passed; costs are never negative. */
export type LeastCost = {
  readonly costs: readonly number[];
  readonly lines: readonly { readonly factors: readonly number[]; readonly most: number }[];
};

/**
 * Least cost under straight lines, by the dual simplex method: with costs that are never negative nothing at all is the
 * first guess, and lines that it passes are mended one by one.
 *
 * @param problem costs, 0 or more, and lines
 * @returns the amounts and their cost; nothing when no amounts keep all lines
 * @source our assumption: Dantzig's tableau with Bland's rule against circles, from memory
 */
export function leastCost(
  problem: LeastCost,
): { readonly amounts: readonly number[]; readonly cost: number } | undefined {
  const { costs, lines } = problem;
  const columns_n = costs.length + lines.length;
  // Rows of the tableau: the basic variable, its factors, and its value last.
  const rows = lines.map(({ factors, most }, row_n) => {
    const row = new Float64Array(columns_n + 1);
    row.set(factors);
    row[costs.length + row_n] = 1;
    row[columns_n] = most;
    return row;
  });
  const reduced = new Float64Array(columns_n + 1);
  reduced.set(costs);
  const basic = lines.map((_, row_n) => costs.length + row_n);
  for (let loop_n = 0; loop_n < 20_000; loop_n++) {
    const leaving = leavingRow(rows, basic, columns_n, loop_n > 500);
    if (leaving < 0) {
      const amounts = costs.map(() => 0);
      basic.forEach((variable, row_n) => {
        if (variable < costs.length) amounts[variable] = Math.max(0, rows[row_n]?.[columns_n] ?? 0);
      });
      return {
        amounts,
        cost: amounts.reduce((sum, amount, index_n) => sum + amount * (costs[index_n] ?? 0), 0),
      };
    }
    const row = rows[leaving] as Float64Array;
    let entering = -1;
    let least = Number.POSITIVE_INFINITY;
    for (let column_n = 0; column_n < columns_n; column_n++) {
      const factor = row[column_n] as number;
      if (factor >= -1e-10) continue;
      const ratio = (reduced[column_n] as number) / -factor;
      if (ratio < least - 1e-14) {
        least = ratio;
        entering = column_n;
      }
    }
    if (entering < 0) return undefined;
    pivot(rows, reduced, leaving, entering);
    basic[leaving] = entering;
  }
  throw new RangeError("this problem of least cost does not come to an end");
}

function leavingRow(
  rows: readonly Float64Array[],
  basic: readonly number[],
  columns_n: number,
  careful: boolean,
): number {
  let leaving = -1;
  let least = -1e-9;
  rows.forEach((row, row_n) => {
    const value = row[columns_n] as number;
    if (value >= -1e-9) return;
    // Bland's rule once it seems to go in circles: the variable named first.
    const better = careful
      ? leaving < 0 || (basic[row_n] as number) < (basic[leaving] as number)
      : value < least;
    if (better) {
      leaving = row_n;
      least = Math.min(least, value);
    }
  });
  return leaving;
}

function pivot(
  rows: readonly Float64Array[],
  reduced: Float64Array,
  leaving: number,
  entering: number,
): void {
  const row = rows[leaving] as Float64Array;
  const by = row[entering] as number;
  for (let column_n = 0; column_n < row.length; column_n++) row[column_n] = (row[column_n] as number) / by;
  const clear = (other: Float64Array) => {
    const factor = other[entering] as number;
    if (factor === 0) return;
    for (let column_n = 0; column_n < row.length; column_n++)
      other[column_n] = (other[column_n] as number) - factor * (row[column_n] as number);
  };
  rows.forEach((other, row_n) => {
    if (row_n !== leaving) clear(other);
  });
  clear(reduced);
}
