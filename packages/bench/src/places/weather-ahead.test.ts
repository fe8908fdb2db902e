import { describe, expect, it } from "vitest";
import { printSeries } from "../book/series.ts";
import type { SeriesPart } from "./places.ts";
import { mergeRecords, rowsOfSeries } from "./records.ts";
import { calendarOf, dayNumber } from "./time.ts";
import { outdoorWeather } from "./weather-ahead.ts";

const zone = calendarOf("America/Los_Angeles");
const noon = (date: string) => zone.hour_ms(date, 12);

/** A record whose warmth follows the date, so that what is blended can be told apart. */
function recordOf(from: string, days_n: number, warmth: (date: string) => number) {
  const dates = Array.from({ length: days_n }, (_, i) =>
    new Date((dayNumber(from) + i) * 86_400_000).toISOString().slice(0, 10),
  );
  return printSeries({
    quantities: ["tMax_C", "tMin_C", "rain_mm"],
    at_ms: dates.map(noon),
    values: [dates.map(warmth), dates.map((date) => warmth(date) - 8), dates.map(() => 1)],
  });
}
const part = (file: string, clock: string, over: Partial<SeriesPart> = {}): SeriesPart => ({
  series: "yard",
  what: "weather",
  quantities: ["tMax_C"],
  from_ms: 0,
  to_ms: 1,
  rows_n: 1,
  entry: "e" as never,
  clock,
  benches: ["yard"],
  file,
  ...over,
});

describe("weather ahead", () => {
  const texts: Record<string, string> = {
    years: recordOf("2024-01-01", 760, (date) => (date < "2025-12-01" ? 10 : 20)),
    again: recordOf("2024-03-01", 1, () => 33),
  };
  const rowsOf = (file: string) => (texts[file] ? rowsOfSeries(texts[file]) : undefined);
  const records = mergeRecords(
    [part("years", "b"), part("again", "c")],
    rowsOf,
    zone.dateOf,
    Number.POSITIVE_INFINITY,
  );

  it("is the record where there is one; of two parts the later clock wins", () => {
    expect(outdoorWeather("2024-02-29", records).weather.tMax_C).toBe(10);
    expect(outdoorWeather("2024-03-01", records).weather.tMax_C).toBe(33);
    expect(
      outdoorWeather(
        "2024-03-01",
        mergeRecords([part("again", "a"), part("years", "b")], rowsOf, zone.dateOf, 9e15),
      ).weather.tMax_C,
    ).toBe(10);
  });

  it("ahead is seven tenths of the last days and three of the season, with a spread that grows", () => {
    const last = records.lastWeatherDate as string;
    const near = outdoorWeather("2026-01-30", records);
    expect(last).toBe("2026-01-29");
    // Last five days 20 °C, the season's days 10 °C in two of three years.
    expect(near.weather.tMax_C).toBeGreaterThan(15);
    expect(near.weather.tMax_C).toBeLessThan(20);
    expect(outdoorWeather("2026-02-20", records).demandSd_frac).toBeGreaterThan(near.demandSd_frac);
  });

  it("knows 29 February of a year without one", () => {
    expect(Number.isFinite(outdoorWeather("2028-02-29", records).weather.tMax_C)).toBe(true);
  });

  it("does not see what happened after the moment asked", () => {
    const past = mergeRecords([part("years", "b")], rowsOf, zone.dateOf, noon("2025-06-01"));
    expect(past.lastWeatherDate).toBe("2025-06-01");
  });

  it("says that a part waits for its file", () => {
    expect(mergeRecords([part("nowhere", "a")], rowsOf, zone.dateOf, 9e15).missing).toHaveLength(1);
  });

  it("without any record is an assumption", () => {
    expect(outdoorWeather("2026-05-05", mergeRecords([], rowsOf, zone.dateOf, 9e15)).source.origin).toBe(
      "assumed",
    );
  });
});
