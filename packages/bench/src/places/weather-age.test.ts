import { expect, it } from "vitest";
import { clockText } from "../book/clock.ts";
import { printSeries } from "../book/series.ts";
import type { SeriesPart } from "./places.ts";
import { mergeRecords, rowsOfSeries } from "./records.ts";
import { calendarOf } from "./time.ts";
import { staleWeather } from "./weather-age.ts";

const zone = calendarOf("Europe/Berlin");
const HOUR_ms = 3_600_000;
const days = (dates: readonly string[]) =>
  printSeries({
    quantities: ["tMax_C", "tMin_C"],
    at_ms: dates.map((date) => zone.hour_ms(date, 12)),
    values: [dates.map(() => 12), dates.map(() => 4)],
  });
const texts: Readonly<Record<string, string>> = {
  record: days(["2026-01-10", "2026-01-11"]),
  forecast: days(["2026-01-12", "2026-01-13", "2026-01-14", "2026-01-15"]),
};
const written_ms = zone.hour_ms("2026-01-11", 18);
const part = (what: "weather" | "forecast", file: string): SeriesPart => ({
  series: what,
  what,
  quantities: ["tMax_C"],
  from_ms: 0,
  to_ms: 1,
  rows_n: 1,
  entry: "e" as never,
  clock: clockText(written_ms, 0),
  benches: [],
  file: file as never,
});
const ageAt = (parts: readonly SeriesPart[], now_ms: number) =>
  staleWeather(
    mergeRecords(parts, (file) => rowsOfSeries(texts[file] ?? ""), zone.dateOf, now_ms),
    now_ms,
    zone.dateOf(now_ms),
  );

it("a record is stale once it ends before yesterday; none at all is an assumption, not an age", () => {
  const record = [part("weather", "record")];
  expect(ageAt(record, zone.hour_ms("2026-01-12", 23))).toBeUndefined();
  expect(ageAt(record, zone.hour_ms("2026-01-13", 1))).toEqual({ until: "2026-01-11" });
  expect(ageAt([], written_ms)).toBeUndefined();
});

it("a forecast is stale a day after it was written, and one that has run out leaves the record's age", () => {
  const both = [part("weather", "record"), part("forecast", "forecast")];
  expect(ageAt(both, written_ms + 24 * HOUR_ms)).toBeUndefined();
  expect(ageAt(both, written_ms + 24.1 * HOUR_ms)).toEqual({ until: "2026-01-15", written_ms });
  expect(ageAt(both, zone.hour_ms("2026-01-17", 8))).toEqual({ until: "2026-01-11" });
});
