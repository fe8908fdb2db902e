import {
  clearnessOfDays_frac,
  clearSkyRadiation_MJ_m2,
  extraterrestrialRadiation_MJ_m2_d,
  solarFromTemperatureRange_MJ_m2_d,
  usualClearness,
} from "@sillwood/science/sun";
import type { WeatherDay } from "../ahead.ts";
import type { Records } from "../records.ts";
import type { Site } from "../site.ts";
import { addDays, dayOfYear_d } from "../time.ts";

/** How much of the sun's light above the air reaches the ground on a day: the daily clearness Kt = Rs / Ra. */
export interface Clearness {
  /** Best estimate of this day. */
  readonly kt: number;
  /** Equally likely days of the season, dull to sunny: 10, 30, 50, 70 and 90 % of days are duller. One value for a day that was seen. */
  readonly days: readonly number[];
  readonly seen: "measured" | "temperature" | "season" | "usual";
}

const SEASON_HALF_WIDTH_d = 10;
const QUANTILES = [0.1, 0.3, 0.5, 0.7, 0.9] as const;
const LEAST_DAYS_n = 15;
const CLEAREST = 0.82;
const seasons = new WeakMap<Records, Map<number, readonly number[] | undefined>>();

/** Clearness of a date at a site: measured, else by the range of temperature, else as usual for the season in the record, else in general. */
export function clearnessOf(date: string, records: Records, site: Site): Clearness {
  const seen = records.weather.get(date) ?? records.forecast.get(date);
  if (seen) {
    const kt = ktOfDay(date, seen, site);
    if (kt !== undefined)
      return { kt, days: [kt], seen: seen.radiation_MJ_m2_d === undefined ? "temperature" : "measured" };
  }
  const known = seasonOf(date, records, site);
  const days = known ?? usualOf(date, site);
  return { kt: days.reduce((sum, kt) => sum + kt, 0) / days.length, days, seen: known ? "season" : "usual" };
}

/** Undefined where the sun hardly rises: there is no clearness to speak of. */
function ktOfDay(date: string, weather: WeatherDay, site: Site): number | undefined {
  const { latitude_deg, elevation_m } = site;
  const extraterrestrial_MJ_m2_d = extraterrestrialRadiation_MJ_m2_d({
    latitude_deg,
    dayOfYear_d: dayOfYear_d(date),
  });
  if (extraterrestrial_MJ_m2_d < 0.3) return undefined;
  const radiation_MJ_m2_d =
    weather.radiation_MJ_m2_d ??
    solarFromTemperatureRange_MJ_m2_d({
      extraterrestrial_MJ_m2_d,
      clearSky_MJ_m2_d: clearSkyRadiation_MJ_m2({
        extraterrestrial_MJ_m2: extraterrestrial_MJ_m2_d,
        elevation_m,
      }),
      airMax_C: weather.tMax_C,
      airMin_C: weather.tMin_C,
    });
  return Math.max(0.02, Math.min(CLEAREST, radiation_MJ_m2_d / extraterrestrial_MJ_m2_d));
}

/** Days within ten of the same day of the year, of all years in the record. */
function seasonOf(date: string, records: Records, site: Site): readonly number[] | undefined {
  if (records.weather.size < LEAST_DAYS_n) return undefined;
  let cache = seasons.get(records);
  if (!cache) {
    cache = new Map();
    seasons.set(records, cache);
  }
  const key = dayOfYear_d(date);
  if (cache.has(key)) return cache.get(key);
  const found: number[] = [];
  const year = Number(date.slice(0, 4));
  for (let back_y = 0; back_y <= 12; back_y++) {
    const sameDay = addDays(`${year - back_y}-${date.slice(5, 7)}-01`, Number(date.slice(8, 10)) - 1);
    for (let off_d = -SEASON_HALF_WIDTH_d; off_d <= SEASON_HALF_WIDTH_d; off_d++) {
      const day = addDays(sameDay, off_d);
      const weather = records.weather.get(day);
      const kt = weather && ktOfDay(day, weather, site);
      if (kt !== undefined) found.push(kt);
    }
  }
  found.sort((a, b) => a - b);
  const season =
    found.length < LEAST_DAYS_n
      ? undefined
      : QUANTILES.map((p) => found[Math.min(found.length - 1, Math.floor(p * found.length))] as number);
  cache.set(key, season);
  return season;
}

/** Of a climate nobody described: dull and temperate, its single days from dull to bright. */
function usualOf(date: string, { latitude_deg }: Site): readonly number[] {
  const { middle_frac } = usualClearness({
    climate: "dull temperate",
    latitude_deg,
    dayOfYear_d: dayOfYear_d(date),
  });
  return clearnessOfDays_frac({ clearness_frac: middle_frac, days_n: QUANTILES.length });
}
