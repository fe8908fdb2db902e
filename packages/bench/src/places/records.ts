import { parseClock } from "../book/clock.ts";
import { parseSeries } from "../book/series.ts";
import type { WeatherDay } from "./ahead.ts";
import type { SeriesPart } from "./places.ts";

/** One row of a series as its file holds it. */
export interface SeriesRow {
  readonly at_ms: number;
  /** By quantity name with unit; a value that was not measured is absent. */
  readonly values: Readonly<Record<string, number>>;
}

/** The rows of a file by content hash; undefined while the file is not here yet. */
export type RowsOf = (file: string) => readonly SeriesRow[] | undefined;

/** Means over the hours of one local day at a logged bench. */
export interface LoggedDay {
  readonly hours: readonly {
    readonly from_ms: number;
    readonly air_C?: number;
    readonly humidity_frac?: number;
    readonly ppfd_umol_m2_s?: number;
  }[];
}

/** Weather by local date, and logger means by bench and date, merged from all parts that are here. */
export interface Records {
  readonly weather: ReadonlyMap<string, WeatherDay>;
  readonly forecast: ReadonlyMap<string, WeatherDay>;
  readonly lastWeatherDate?: string;
  /** When the newest forecast was written, and its last day. */
  readonly lastForecast?: { readonly written_ms: number; readonly until: string };
  logged(bench: string, date: string): LoggedDay | undefined;
  /** Parts whose files have not arrived: numbers that rest on them wait. */
  readonly missing: readonly SeriesPart[];
}

/** @throws SeriesError when the text is no series part */
export function rowsOfSeries(text: string): SeriesRow[] {
  const { quantities, at_ms, values } = parseSeries(text);
  return at_ms.map((at, row) => {
    const read: Record<string, number> = {};
    for (let i = 0; i < quantities.length; i++) {
      const value = values[i]?.[row];
      if (typeof value === "number") read[quantities[i] as string] = value;
    }
    return { at_ms: at, values: read };
  });
}

const HOUR_ms = 3_600_000;

/**
 * Merges parts of one name by instant (the later clock wins) and sorts them into days.
 *
 * @param until_ms rows after this instant are unseen (the past is asked again)
 */
export function mergeRecords(
  parts: readonly SeriesPart[],
  rowsOf: RowsOf,
  dateOf: (at_ms: number) => string,
  until_ms: number,
): Records {
  const weather = new Map<string, WeatherDay>();
  const forecast = new Map<string, WeatherDay>();
  const logged = new Map<string, Map<number, Record<string, { sum: number; n: number }>>>();
  const loggedDays = new Map<string, LoggedDay>();
  const missing: SeriesPart[] = [];
  let lastForecast: Records["lastForecast"];
  for (const part of [...parts].sort((a, b) => (a.clock < b.clock ? -1 : 1))) {
    const rows = rowsOf(part.file);
    if (!rows) {
      missing.push(part);
      continue;
    }
    if (part.what === "forecast" && rows.length > 0) {
      const last_ms = rows.reduce((most_ms, { at_ms }) => Math.max(most_ms, at_ms), rows[0]?.at_ms ?? 0);
      lastForecast = { written_ms: parseClock(part.clock)?.at_ms ?? last_ms, until: dateOf(last_ms) };
    }
    for (const row of rows) {
      if (part.what === "logger") {
        if (row.at_ms > until_ms) continue;
        for (const bench of part.benches) addLogged(logged, `${bench}|${dateOf(row.at_ms)}`, row);
        continue;
      }
      if (part.what === "weather" && row.at_ms > until_ms) continue;
      const day = weatherOf(row.values);
      if (day) (part.what === "weather" ? weather : forecast).set(dateOf(row.at_ms), day);
    }
  }
  const dates = [...weather.keys()].sort();
  const lastWeatherDate = dates[dates.length - 1];
  return {
    weather,
    forecast,
    ...(lastWeatherDate ? { lastWeatherDate } : {}),
    ...(lastForecast ? { lastForecast } : {}),
    missing,
    logged: (bench, date) => {
      const key = `${bench}|${date}`;
      const hours = logged.get(key);
      let day = hours && loggedDays.get(key);
      if (hours && !day) {
        day = {
          hours: [...hours].sort(([a], [b]) => a - b).map(([from_ms, sums]) => ({ from_ms, ...means(sums) })),
        };
        // Spots whose light was written apart share the logger of their bench.
        loggedDays.set(key, day);
      }
      return day;
    },
  };
}

function addLogged(
  logged: Map<string, Map<number, Record<string, { sum: number; n: number }>>>,
  key: string,
  row: SeriesRow,
) {
  let hours = logged.get(key);
  if (!hours) {
    hours = new Map();
    logged.set(key, hours);
  }
  const hour_ms = Math.floor(row.at_ms / HOUR_ms) * HOUR_ms;
  const sums = hours.get(hour_ms) ?? {};
  for (const name in row.values) {
    const before = sums[name];
    const value = row.values[name] as number;
    if (before) {
      before.sum += value;
      before.n++;
    } else sums[name] = { sum: value, n: 1 };
  }
  hours.set(hour_ms, sums);
}

function means(sums: Record<string, { sum: number; n: number }>): Record<string, number> {
  const of: Record<string, number> = {};
  for (const name in sums) {
    const { sum, n } = sums[name] as { sum: number; n: number };
    of[name] = sum / n;
  }
  return of;
}

function weatherOf(values: SeriesRow["values"]): WeatherDay | undefined {
  const { tMax_C, tMin_C, rain_mm, wind_m_s, humidity_frac, radiation_MJ_m2_d } = values as {
    readonly [name: string]: number | undefined;
  };
  if (tMax_C === undefined || tMin_C === undefined || tMax_C < tMin_C) return undefined;
  return {
    tMax_C,
    tMin_C,
    rain_mm: rain_mm ?? 0,
    ...(wind_m_s === undefined ? {} : { wind_m_s }),
    ...(humidity_frac === undefined ? {} : { humidity_frac }),
    ...(radiation_MJ_m2_d === undefined ? {} : { radiation_MJ_m2_d }),
  };
}
