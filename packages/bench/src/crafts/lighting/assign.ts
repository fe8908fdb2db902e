/**
 * The cheapest way to give every row a column of its own (Hungarian method with potentials, shortest augmenting paths).
 *
 * @param cost [row][column], finite, at least as many columns as rows
 * @returns column of each row
 * @throws RangeError when there are more rows than columns
 * @source Kuhn 1955, The Hungarian method for the assignment problem; potentials after Munkres 1957; from memory
 */
export function assign(cost: readonly (readonly number[])[]): readonly number[] {
  const rows_n = cost.length;
  const columns_n = cost[0]?.length ?? 0;
  if (rows_n > columns_n) throw new RangeError(`${rows_n} rows for ${columns_n} columns`);
  // One column and row before the first stand for "not yet assigned".
  const rowPotential = new Float64Array(rows_n + 1);
  const columnPotential = new Float64Array(columns_n + 1);
  const rowOf = new Int32Array(columns_n + 1);
  const came = new Int32Array(columns_n + 1);
  for (let row = 1; row <= rows_n; row++) {
    rowOf[0] = row;
    const least = new Float64Array(columns_n + 1).fill(Number.POSITIVE_INFINITY);
    const used = new Uint8Array(columns_n + 1);
    let column = 0;
    do {
      used[column] = 1;
      const from = rowOf[column] as number;
      let step = Number.POSITIVE_INFINITY;
      let next = 0;
      for (let j = 1; j <= columns_n; j++) {
        if (used[j]) continue;
        const reduced =
          (cost[from - 1]?.[j - 1] as number) -
          (rowPotential[from] as number) -
          (columnPotential[j] as number);
        if (reduced < (least[j] as number)) {
          least[j] = reduced;
          came[j] = column;
        }
        if ((least[j] as number) < step) {
          step = least[j] as number;
          next = j;
        }
      }
      for (let j = 0; j <= columns_n; j++) {
        if (used[j]) {
          rowPotential[rowOf[j] as number] = (rowPotential[rowOf[j] as number] as number) + step;
          columnPotential[j] = (columnPotential[j] as number) - step;
        } else least[j] = (least[j] as number) - step;
      }
      column = next;
    } while (rowOf[column] !== 0);
    do {
      const before = came[column] as number;
      rowOf[column] = rowOf[before] as number;
      column = before;
    } while (column !== 0);
  }
  const columnOf: number[] = new Array(rows_n).fill(0);
  for (let j = 1; j <= columns_n; j++) {
    const row = rowOf[j] as number;
    if (row > 0) columnOf[row - 1] = j - 1;
  }
  return columnOf;
}
