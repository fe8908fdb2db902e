import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { EntryId } from "./entry.ts";
import { type PlacedPart, parseSeries, printSeries, SeriesError, type SeriesPart } from "./series.ts";
import { mergeSeries } from "./series-merge.ts";

const part: SeriesPart = {
  quantities: ["air_C", "humidity_frac"],
  at_ms: [Date.parse("2026-11-25T13:00:00Z"), Date.parse("2026-11-25T13:10:00Z")],
  values: [
    [21.4, 21.5],
    [0.52, null],
  ],
};
const text =
  "instant,air_C,humidity_frac\n2026-11-25T13:00:00.000Z,21.4,0.52\n2026-11-25T13:10:00.000Z,21.5,\n";

const anyPart: fc.Arbitrary<SeriesPart> = fc
  .record({
    quantities: fc.uniqueArray(fc.constantFrom("air_C", "humidity_frac", "light_lx", "wind_m_s"), {
      minLength: 1,
    }),
    steps: fc.array(fc.integer({ min: 1, max: 4 }), { maxLength: 12 }),
    cells: fc.array(fc.option(fc.double({ noNaN: true, noDefaultInfinity: true })), {
      minLength: 48,
      maxLength: 48,
    }),
  })
  .map(({ quantities, steps, cells }) => {
    let at = 1_790_000_000_000;
    const at_ms = steps.map((step) => (at += step * 600_000));
    const values = quantities.map((_, q) => at_ms.map((_at, row) => fixZero(cells[q * 12 + row] ?? null)));
    return { quantities, at_ms, values };
  });
// JSON and CSV alike have no minus zero.
const fixZero = (value: number | null) => (value === 0 ? 0 : value);

describe("series part", () => {
  it("is plain text, and the same readings give the same bytes", () => {
    expect(printSeries(part)).toBe(text);
    expect(parseSeries(text)).toEqual(part);
    expect(parseSeries(`\uFEFF${text.replaceAll("\n", "\r\n")}`)).toEqual(part);
  });

  it("comes back whole", () => {
    fc.assert(
      fc.property(anyPart, (any) => {
        expect(parseSeries(printSeries(any))).toEqual(any);
      }),
    );
  });

  it.each([
    ["", 1, "first column"],
    ["instant\n", 1, "0 quantities"],
    ["instant,air temperature\n", 1, "no quantity"],
    ["instant,air_C,air_C\n", 1, "twice"],
    ["instant,air_C\n2026-02-30T00:00:00Z,1\n", 2, "instant"],
    ["instant,air_C\n2026-11-25T13:00:00Z,1\n2026-11-25T13:00:00Z,2\n", 3, "rise"],
    ["instant,air_C\n2026-11-25T13:00:00Z,warm\n", 2, 'air_C is "warm"'],
    ["instant,air_C\n2026-11-25T13:00:00Z,0x10\n", 2, "expected a number"],
    ["instant,air_C\n2026-11-25T13:00:00Z,1e999\n", 2, "expected a number"],
    ["instant,air_C\n2026-11-25T13:00:00Z\n", 2, "1 cells; expected 2"],
  ])("refuses %j and names the line", (bad, line_n, message) => {
    const refusal = problemOf(() => parseSeries(bad));
    expect(refusal.line_n).toBe(line_n);
    expect(refusal.message).toContain(message);
  });

  it("refuses to print what is no part", () => {
    expect(() => printSeries({ ...part, at_ms: [...part.at_ms].reverse() })).toThrow(SeriesError);
    expect(() => printSeries({ ...part, values: [[1, 2]] })).toThrow(SeriesError);
    expect(() =>
      printSeries({
        ...part,
        values: [
          [1, Number.NaN],
          [1, 2],
        ],
      }),
    ).toThrow(SeriesError);
  });

  it("answers any text with a part or a SeriesError", () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc
            .tuple(fc.nat(text.length), fc.string())
            .map(([at, x]) => text.slice(0, at) + x + text.slice(at + 1)),
        ),
        (any) => {
          try {
            printSeries(parseSeries(any));
          } catch (error) {
            expect(error).toBeInstanceOf(SeriesError);
          }
        },
      ),
    );
  });
});

describe("merge of parts", () => {
  const placed = (n: number, some: SeriesPart): PlacedPart => ({
    clock: `2026-11-25T13:45:38.123Z/000${n}`,
    id: `entry-${n}` as EntryId,
    part: some,
  });

  it("the later clock wins where it has a reading, the earlier one stays elsewhere", () => {
    const later: SeriesPart = {
      quantities: ["humidity_frac"],
      at_ms: [part.at_ms[0] as number],
      values: [[0.6]],
    };
    expect(mergeSeries([placed(2, later), placed(1, part)]).values).toEqual([
      [21.4, 21.5],
      [0.6, null],
    ]);
    expect(mergeSeries([placed(1, later), placed(2, part)]).values[1]).toEqual([0.52, null]);
  });

  it("does not depend on the order of parts, nor on hearing one twice", () => {
    fc.assert(
      fc.property(fc.array(anyPart, { minLength: 1, maxLength: 4 }), (parts) => {
        const all = parts.map((some, n) => placed(n, some));
        const merged = mergeSeries(all);
        expect(mergeSeries([...all].reverse())).toEqual(merged);
        expect(mergeSeries([...all, ...all])).toEqual(merged);
        // The merged series is itself a part.
        expect(parseSeries(printSeries(merged))).toEqual(merged);
      }),
    );
  });
});

function problemOf(act: () => unknown): SeriesError {
  try {
    act();
  } catch (error) {
    if (error instanceof SeriesError) return error;
  }
  throw new Error("expected a SeriesError");
}
