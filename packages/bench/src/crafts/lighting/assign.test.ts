import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { assign } from "./assign.ts";

const total = (cost: readonly (readonly number[])[], columns: readonly number[]) =>
  columns.reduce((sum, column, row) => sum + (cost[row]?.[column] ?? Number.NaN), 0);

/** Every way to give rows columns of their own. */
function* ways(
  rows_n: number,
  columns_n: number,
  taken: readonly number[] = [],
): Generator<readonly number[]> {
  if (taken.length === rows_n) {
    yield taken;
    return;
  }
  for (let column = 0; column < columns_n; column++)
    if (!taken.includes(column)) yield* ways(rows_n, columns_n, [...taken, column]);
}

const costs = fc
  .tuple(fc.integer({ min: 1, max: 5 }), fc.integer({ min: 0, max: 2 }))
  .chain(([rows_n, more_n]) =>
    fc.array(
      fc.array(fc.double({ min: -20, max: 20, noNaN: true }), {
        minLength: rows_n + more_n,
        maxLength: rows_n + more_n,
      }),
      { minLength: rows_n, maxLength: rows_n },
    ),
  );

describe("assignment", () => {
  it("is as cheap as the cheapest of all ways", () => {
    fc.assert(
      fc.property(costs, (cost) => {
        const columns = assign(cost);
        expect(new Set(columns).size).toBe(cost.length);
        const cheapest = Math.min(
          ...[...ways(cost.length, cost[0]?.length ?? 0)].map((way) => total(cost, way)),
        );
        expect(total(cost, columns)).toBeCloseTo(cheapest, 9);
      }),
      { seed: 7, numRuns: 200 },
    );
  });

  it("leaves who stands best where it stands", () => {
    expect(
      assign([
        [0, 5],
        [5, 0],
      ]),
    ).toEqual([0, 1]);
  });

  it("refuses more rows than columns", () => {
    expect(() => assign([[1], [2]])).toThrow("2 rows for 1 columns");
  });
});
