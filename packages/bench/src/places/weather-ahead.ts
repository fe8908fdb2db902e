import { whence } from "../words/whence.ts";
import type { AirSource, WeatherDay } from "./ahead.ts";
import type { Records } from "./records.ts";
import { addDays, dayNumber } from "./time.ts";

/** Weather of one day: from the record, from a forecast as issued, or from what such days and the last ones were like. */
export interface FoundWeather {
  readonly weather: WeatherDay;
  readonly source: AirSource;
  readonly demandSd_frac: number;
}

/**
 * Relative sd of daily demand: with a full record, with a forecast, and for days that nobody has seen (growing from the first
 * to the fifth day ahead). @source our assumption, after sections 3 and 9 of the air-water sheet
 */
const SD = { record: 0.2, forecast: 0.22, unseenFirst: 0.15, unseenLast: 0.35, grows_d: 5 } as const;
/** Share of the last five days in what is expected next; the rest is the usual for the time of year. Air-water sheet F9. */
const RECENT_frac = 0.7;
const RECENT_d = 5;
const SEASON_HALF_WIDTH_d = 7;
/** Where no record is at all. @source our assumption */
const MILD_DAY: WeatherDay = { tMax_C: 20, tMin_C: 11, rain_mm: 0, wind_m_s: 2 };

const usualCache = new WeakMap<Records, Map<number, WeatherDay | undefined>>();
const recentCache = new WeakMap<Records, WeatherDay | null>();

export function outdoorWeather(date: string, records: Records): FoundWeather {
  const seen = records.weather.get(date);
  if (seen)
    return {
      weather: seen,
      source: { origin: "measured", from: whence(({ weather }) => weather.record(date)) },
      demandSd_frac: SD.record,
    };
  const issued = records.forecast.get(date);
  if (issued)
    return {
      weather: issued,
      source: { origin: "learned", from: whence(({ weather }) => weather.forecast(date)) },
      demandSd_frac: SD.forecast,
    };
  const usual = usualOfSeason(date, records);
  const last = records.lastWeatherDate;
  const recent = last && date > last ? recentDays(records) : undefined;
  const lead_d = last ? Math.max(1, dayNumber(date) - dayNumber(last)) : SD.grows_d;
  const growth = Math.min(1, (lead_d - 1) / (SD.grows_d - 1));
  const demandSd_frac = SD.unseenFirst + (SD.unseenLast - SD.unseenFirst) * growth;
  if (recent && usual) {
    return {
      weather: blend(recent, usual, RECENT_frac),
      source: { origin: "learned", from: whence(({ weather }) => weather.lastDaysAndSeason) },
      demandSd_frac,
    };
  }
  const one = recent ?? usual;
  if (one)
    return {
      weather: one,
      source: {
        origin: "learned",
        from: whence(({ weather }) => (recent ? weather.lastDays : weather.season)),
      },
      demandSd_frac,
    };
  return {
    weather: MILD_DAY,
    source: { origin: "assumed", from: whence(({ weather }) => weather.nothing) },
    demandSd_frac: SD.unseenLast,
  };
}

/** Mean over all years of the days within a week of the same day of the year. */
function usualOfSeason(date: string, records: Records): WeatherDay | undefined {
  let cache = usualCache.get(records);
  if (!cache) {
    cache = new Map();
    usualCache.set(records, cache);
  }
  const key = Number(date.slice(5, 7)) * 100 + Number(date.slice(8, 10));
  if (cache.has(key)) return cache.get(key);
  const found: WeatherDay[] = [];
  const year = Number(date.slice(0, 4));
  for (let back_y = 0; back_y <= 12; back_y++) {
    // 29 February of a year that has none is looked up as 1 March: addDays carries it over.
    const sameDay = addDays(`${year - back_y}-${date.slice(5, 7)}-01`, Number(date.slice(8, 10)) - 1);
    for (let off_d = -SEASON_HALF_WIDTH_d; off_d <= SEASON_HALF_WIDTH_d; off_d++) {
      const day = records.weather.get(addDays(sameDay, off_d));
      if (day) found.push(day);
    }
  }
  const usual = found.length > 0 ? mean(found) : undefined;
  cache.set(key, usual);
  return usual;
}

function recentDays(records: Records): WeatherDay | undefined {
  const kept = recentCache.get(records);
  if (kept !== undefined) return kept ?? undefined;
  const found: WeatherDay[] = [];
  for (let back_d = 0; back_d < RECENT_d && records.lastWeatherDate; back_d++) {
    const day = records.weather.get(addDays(records.lastWeatherDate, -back_d));
    if (day) found.push(day);
  }
  const recent = found.length > 0 ? mean(found) : undefined;
  recentCache.set(records, recent ?? null);
  return recent;
}

function mean(days: readonly WeatherDay[]): WeatherDay {
  const of = (pick: (day: WeatherDay) => number | undefined) => {
    const values = days.map(pick).filter((value): value is number => value !== undefined);
    return values.length > 0 ? values.reduce((sum, value) => sum + value, 0) / values.length : undefined;
  };
  return assemble(of);
}

function blend(recent: WeatherDay, usual: WeatherDay, share_frac: number): WeatherDay {
  return assemble((pick) => {
    const a = pick(recent);
    const b = pick(usual);
    return a === undefined ? b : b === undefined ? a : a * share_frac + b * (1 - share_frac);
  });
}

function assemble(of: (pick: (day: WeatherDay) => number | undefined) => number | undefined): WeatherDay {
  const wind_m_s = of((day) => day.wind_m_s);
  const humidity_frac = of((day) => day.humidity_frac);
  const radiation_MJ_m2_d = of((day) => day.radiation_MJ_m2_d);
  return {
    tMax_C: of((day) => day.tMax_C) ?? MILD_DAY.tMax_C,
    tMin_C: of((day) => day.tMin_C) ?? MILD_DAY.tMin_C,
    rain_mm: of((day) => day.rain_mm) ?? 0,
    ...(wind_m_s === undefined ? {} : { wind_m_s }),
    ...(humidity_frac === undefined ? {} : { humidity_frac }),
    ...(radiation_MJ_m2_d === undefined ? {} : { radiation_MJ_m2_d }),
  };
}
