import { LOGGER_COLUMNS, loggerRows } from "../book/logger-rows.ts";
import { byMonth, type SeriesFile, type SeriesRow, seriesFile } from "../book/series-file.ts";
import type { BenchAir } from "../nursery/bench-air.ts";
import { DAY_ms, dateAt, dayAfter, HOUR_ms, instantOf, type LocalDay } from "../nursery/calendar.ts";
import type { Chance } from "../nursery/chance.ts";
import { shiftedSeattle } from "../seattle.ts";
import { BENCHES, SHELF, SITE, YARD } from "./cast.ts";
import { grower, type Hands, type Pending } from "./setting-up.ts";

const WEATHER_COLUMNS = ["rain_mm", "tMax_C", "tMin_C", "wind_m_s"] as const;

interface SeriesParts {
  readonly pending: readonly Pending[];
  /** Text by content hash. */
  readonly files: ReadonlyMap<string, string>;
}

/**
 * The weather record in monthly parts up to the day before the demo day (its past years are read in on the first
 * evening), and the logger on the lamp shelf.
 */
export function demoSeries(
  hands: Hands,
  days: readonly LocalDay[],
  benches: readonly BenchAir[],
  shift_years: number,
  now_ms: number,
  chance: Chance,
): SeriesParts {
  const files = new Map<string, string>();
  const first = days[0] as LocalDay;
  const today = days[days.length - 1] as LocalDay;
  const from = `${2012 + shift_years}-01-01`;
  const weather = shiftedSeattle(from, daysBetween(from, today.date), shift_years).map(
    (day): SeriesRow => ({
      at_ms: instantOf(SITE.zone, day.date, 12),
      values: [day.rain_mm, day.tMax_C, day.tMin_C, day.wind_m_s],
    }),
  );
  const parts = [
    ...partsOf("Seattle record", "weather", YARD, WEATHER_COLUMNS, weather),
    ...partsOf(
      "shelf logger",
      "logger",
      SHELF,
      LOGGER_COLUMNS,
      loggerRows(benches[SHELF] as BenchAir, first.midnight_ms + DAY_ms, today.midnight_ms - HOUR_ms, chance),
    ),
  ];
  const pending = parts.map(({ name, what, bench, file }, i) => {
    files.set(file.hash, file.text);
    // A closed month is read in on the next evening; the running one on the eve of the demo day.
    const closed_ms = instantOf(SITE.zone, dayAfter(dateAt(SITE.zone, file.to_ms), 1), 20);
    const at_ms = Math.min(
      Math.max(closed_ms, first.midnight_ms + 20 * HOUR_ms) + i * 2000,
      today.midnight_ms - 600_000 + i * 1000,
      now_ms,
    );
    const { quantities, from_ms, to_ms, rows_n } = file;
    return grower(
      hands,
      at_ms,
      "series.part",
      [(BENCHES[bench] as (typeof BENCHES)[number]).id],
      { series: name, what, quantities, from_ms, to_ms, rows_n },
      [file.hash],
    );
  });
  return { pending, files };
}

interface Part {
  readonly name: string;
  readonly what: "weather" | "logger";
  readonly bench: number;
  readonly file: SeriesFile;
}

function partsOf(
  name: string,
  what: Part["what"],
  bench: number,
  columns: readonly string[],
  rows: readonly SeriesRow[],
): Part[] {
  return byMonth(rows, ({ at_ms }) => dateAt(SITE.zone, at_ms).slice(0, 7)).map((month) => ({
    name,
    what,
    bench,
    file: seriesFile(columns, month),
  }));
}

const daysBetween = (from: string, to: string) => Math.round((Date.parse(to) - Date.parse(from)) / DAY_ms);
