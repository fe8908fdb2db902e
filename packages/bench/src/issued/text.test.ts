import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { PlantId } from "../book/entry.ts";
import { sha256Hex } from "../book/hash.ts";
import { datesIn, type Forecasts, ForecastsError, parseForecasts, printForecasts } from "./text.ts";

const plantId = (n: number) => `01980000-0000-7000-8000-${String(n).padStart(12, "0")}` as PlantId;
const waits = (first: number) => Array.from({ length: 20 }, (_, i) => first + 30 * i);

const day: Forecasts = {
  date: "2026-03-12",
  issued_ms: Date.UTC(2026, 2, 12, 7, 0, 12, 345),
  engine: "3.1",
  inputs: sha256Hex("what they rest on"),
  dates: [
    { plant: plantId(2), work: "water", dates_min: waits(0) },
    { plant: plantId(1), work: "water", since_min: -2880, dates_min: waits(600) },
  ],
  ahead: [
    {
      plant: plantId(1),
      name: "use_g",
      stretches: [
        { to_min: 1020, mean: 31.2, sd: 5.1 },
        { to_min: 2460, mean: 44, sd: 0 },
      ],
    },
  ],
};
const inOrder = (one: Forecasts): Forecasts => ({
  ...one,
  dates: [...one.dates].sort((a, b) => (`${a.plant} ${a.work}` < `${b.plant} ${b.work}` ? -1 : 1)),
  ahead: [...one.ahead].sort((a, b) => (`${a.plant} ${a.name}` < `${b.plant} ${b.name}` ? -1 : 1)),
});
const trouble = (text: string): string => {
  try {
    parseForecasts(text);
  } catch (error) {
    expect(error).toBeInstanceOf(ForecastsError);
    return (error as Error).message;
  }
  return "taken";
};

const word = fc.stringMatching(/^[a-z][A-Za-z0-9_]{0,8}$/);
const anyDay: fc.Arbitrary<Forecasts> = fc.record({
  date: fc.integer({ min: 0, max: 40_000 }).map((n) => new Date(n * 86_400_000).toISOString().slice(0, 10)),
  issued_ms: fc.integer({ min: 0, max: 4e12 }),
  engine: fc.stringMatching(/^[A-Za-z0-9.+-]{1,12}$/),
  inputs: fc.string().map((text) => sha256Hex(text)),
  dates: fc.uniqueArray(
    fc
      .record({
        plant: fc.nat(20).map(plantId),
        work: word,
        since: fc.option(fc.integer({ min: -2_000_000, max: 0 })),
        dates_min: fc.array(fc.integer({ min: 0, max: 2_000_000 }), { minLength: 20, maxLength: 20 }),
      })
      .map(({ since, dates_min, ...row }) => ({
        ...row,
        ...(since === null ? {} : { since_min: since }),
        dates_min: [...dates_min].sort((a, b) => a - b),
      })),
    { maxLength: 12, selector: ({ plant, work }) => `${plant} ${work}` },
  ),
  ahead: fc.uniqueArray(
    fc.record({
      plant: fc.nat(20).map(plantId),
      name: word,
      stretches: fc
        .array(
          fc.record({
            to_min: fc.integer({ min: 1, max: 2000 }),
            mean: fc.double({ min: -1e6, max: 1e6, noNaN: true }).map((value) => value + 0),
            sd: fc.double({ min: 0, max: 1e6, noNaN: true }).map((value) => value + 0),
          }),
          { minLength: 1, maxLength: 8 },
        )
        .map((all) => all.map((one, i) => ({ ...one, to_min: one.to_min + 2000 * i }))),
    }),
    { maxLength: 6, selector: ({ plant, name }) => `${plant} ${name}` },
  ),
});

describe("the text of forecasts as issued", () => {
  it("comes back as it was written, whatever the order of its rows", () => {
    expect(parseForecasts(printForecasts(day))).toEqual(inOrder(day));
    fc.assert(
      fc.property(anyDay, (one) => {
        const text = printForecasts(one);
        expect(parseForecasts(text)).toEqual(inOrder(one));
        expect(
          printForecasts({ ...one, dates: [...one.dates].reverse(), ahead: [...one.ahead].reverse() }),
        ).toBe(text);
        expect(printForecasts(parseForecasts(text))).toBe(text);
      }),
      { numRuns: 100 },
    );
  });

  it("is read for one plant without reading the others", () => {
    const text = printForecasts(day).replace(",use_g,1020", ",use_g,soon");
    const one = parseForecasts(text, (plant) => plant === plantId(2));
    expect(one.dates.map(({ plant }) => plant)).toEqual([plantId(2)]);
    const spoilt = printForecasts(day).replace(",630,", ",6x0,");
    expect(() => datesIn(spoilt, plantId(1), "water")).toThrow('line 6, wait 2: is "6x0"');
    expect(datesIn(spoilt, plantId(2), "water")).toEqual(one.dates[0]);
    expect(datesIn(spoilt, plantId(3), "water")).toBeUndefined();
    expect(trouble(text)).toBe('line 7, end of stretch 1: is "soon"; expected 1 to 2103840 whole minutes');
  });

  it("is refused by line and field", () => {
    const text = printForecasts(day);
    const lines = text.split("\n");
    const spoilt = (line_n: number, from: string | RegExp, to: string) =>
      trouble(lines.map((line, i) => (i === line_n - 1 ? line.replace(from, to) : line)).join("\n"));
    expect(spoilt(1, "1", "2")).toBe('line 1, forecasts: is "2"; expected version 1');
    expect(spoilt(2, "03-12", "02-30")).toMatch(/^line 2, date: is "2026-02-30"; expected a date/);
    expect(spoilt(3, "345Z", "34Z")).toMatch(/^line 3, issued: /);
    expect(spoilt(4, "3.1", "")).toMatch(/^line 4, engine: is ""/);
    expect(spoilt(5, /,../, ",")).toMatch(/^line 5, inputs: /);
    expect(spoilt(6, "dates", "data")).toMatch(/^line 6, row: begins with "data"/);
    expect(spoilt(6, "-2880", "5")).toBe('line 6, since: is "5"; expected -2103840 to 0 whole minutes');
    expect(spoilt(6, ",630,", ",630.5,")).toMatch(/^line 6, wait 2: is "630.5"/);
    expect(spoilt(6, ",630,", ",600000,")).toBe("line 6, wait 3: is shorter than the one before");
    expect(spoilt(6, ",630,", ",")).toBe("line 6, waits: 19 of them; expected 20");
    expect(spoilt(7, ",5.1,", ",-5.1,")).toMatch(
      /^line 7, sd of stretch 1: is "-5.1"; expected a number from 0/,
    );
    expect(spoilt(7, ",5.1,", ",NaN,")).toMatch(/^line 7, sd of stretch 1: is "NaN"/);
    expect(spoilt(7, ",5.1,", ",05.1,")).toMatch(/^line 7, sd of stretch 1/);
    expect(spoilt(8, plantId(2), plantId(1))).toBe("line 8, row: stands twice or out of order");
    expect(trouble(text.slice(0, -1))).toBe("line 8, end: expected a line break");
    expect(trouble("")).toMatch(/^line 1/);
    expect(() => printForecasts({ ...day, dates: [{ ...day.dates[0], dates_min: [1] } as never] })).toThrow(
      "line 7, waits: 1 of them",
    );
  });

  it("never gives anything but forecasts or an error that names a field, whatever it reads", () => {
    const text = printForecasts(day);
    const junk = fc.constantFrom(
      ",",
      "\n",
      "dates",
      "ahead",
      "-",
      "1e9",
      "NaN",
      " ",
      "\r",
      "0",
      "",
      "é",
      plantId(1),
    );
    fc.assert(
      fc.property(fc.nat(text.length), fc.nat(30), fc.oneof(junk, fc.string()), (at, cut_n, put) => {
        const spoilt = text.slice(0, at) + put + text.slice(at + cut_n);
        const said = trouble(spoilt);
        // What is still taken must be exactly what it says.
        if (said === "taken") expect(printForecasts(parseForecasts(spoilt))).toBe(spoilt);
        else expect(said).toMatch(/^(line \d+, )?[\w ]+: /);
      }),
      { numRuns: 500 },
    );
  });
});
