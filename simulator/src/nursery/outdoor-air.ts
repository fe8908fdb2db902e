import { type BenchAir, emptyAir } from "./bench-air.ts";
import { HOUR_ms, type LocalDay } from "./calendar.ts";
import type { Chance } from "./chance.ts";
import { clearness_frac, diffuse_frac, type Sun, sunAt } from "./sky.ts";
import { pressure_kPa, saturation_kPa } from "./vapour.ts";

/** A day of a weather record. */
export interface WeatherDay {
  readonly date: string;
  readonly rain_mm: number;
  readonly tMax_C: number;
  readonly tMin_C: number;
  readonly wind_m_s: number;
}

export interface Ground {
  readonly latitude_deg: number;
  readonly longitude_deg: number;
  readonly elevation_m: number;
}

/** What the sky does in one hour, before windows and walls. */
export interface SkyHours {
  readonly air: BenchAir;
  /** Light on open level ground, [hour]. */
  readonly global_W_m2: Float64Array;
  readonly diffuse_W_m2: Float64Array;
  readonly suns: readonly Sun[];
}

/** Photons of daylight per joule of short-wave. @source common practice: 0.45 of the energy, 4.57 µmol per joule of it */
const PHOTONS_umol_J = 2.06;
/** Leaves take up about half of the short-wave that falls on them. @source common practice, no source */
export const LEAF_TAKES_frac = 0.52;

/**
 * Hours from days. The record knows extremes, rain and wind; radiation, humidity and the course of the day are
 * invented around it and hidden from everybody.
 *
 * @param days as many as `weather`
 */
export function outdoorAir(
  days: readonly LocalDay[],
  weather: readonly WeatherDay[],
  ground: Ground,
  chance: Chance,
): SkyHours {
  const first_ms = (days[0] as LocalDay).midnight_ms;
  const last = days[days.length - 1] as LocalDay;
  const hours_n = Math.round((last.midnight_ms - first_ms) / HOUR_ms) + 24;
  const columns = emptyAir(first_ms, hours_n);
  const global_W_m2 = new Float64Array(hours_n);
  const diffuse_W_m2 = new Float64Array(hours_n);
  const suns: Sun[] = [];
  const clearness = cloudiness(weather, chance.under("cloud"));
  const dewGap_C = gaps(weather, chance.under("dew"));
  const shelter_frac = chance.between(0.25, 0.55);
  const puffs = chance.under("puffs");
  let day = 0;
  for (let i = 0; i < hours_n; i++) {
    const at_ms = first_ms + (i + 0.5) * HOUR_ms;
    while (day + 1 < days.length && at_ms >= (days[day + 1] as LocalDay).midnight_ms) day++;
    columns.dayOf[i] = day;
    const today = weather[day] as WeatherDay;
    const sun = sunAt(at_ms, ground.latitude_deg, ground.longitude_deg);
    suns.push(sun);
    const passing = Math.max(0.05, Math.min(0.8, (clearness[day] as number) * puffs.logNormal(1, 0.22)));
    global_W_m2[i] = sun.extraterrestrial_W_m2 * passing;
    diffuse_W_m2[i] = (global_W_m2[i] as number) * diffuse_frac(passing);
    const hour = (at_ms - (days[day] as LocalDay).midnight_ms) / HOUR_ms;
    columns.air_C[i] = courseOfDay_C(hour, today, weather[day + 1] ?? today, weather[day - 1] ?? today);
    const dew_C = today.tMin_C - (dewGap_C[day] as number);
    columns.vapour_kPa[i] = Math.min(
      saturation_kPa(dew_C),
      saturation_kPa(columns.air_C[i] as number) * 0.985,
    );
    columns.wind_m_s[i] = Math.max(
      0.15,
      today.wind_m_s * shelter_frac * (1 + 0.35 * Math.sin(((hour - 9) / 24) * 2 * Math.PI)),
    );
    columns.ppfd_umol_m2_s[i] = (global_W_m2[i] as number) * PHOTONS_umol_J;
    columns.absorbed_W_m2[i] = (global_W_m2[i] as number) * LEAF_TAKES_frac;
  }
  rainIn(columns.rain_mm_h, columns.dayOf, weather, chance.under("rain"));
  return {
    air: {
      ...columns,
      outdoors: true,
      pressure_kPa: pressure_kPa(ground.elevation_m),
      whims: sharedWhims(days.length, chance.between(0.05, 0.18), chance.under("whims")),
      throughfall_frac: chance.between(0.4, 0.8),
    },
    global_W_m2,
    diffuse_W_m2,
    suns,
  };
}

/** Dull and bright days: what the range of temperature says, with a memory of its own from day to day. */
function cloudiness(weather: readonly WeatherDay[], chance: Chance): Float64Array {
  let mood = 0;
  return Float64Array.from(weather, (day) => {
    mood = 0.45 * mood + chance.normal(0, 0.22);
    return Math.max(
      0.08,
      Math.min(0.76, clearness_frac(day.tMax_C - day.tMin_C, day.rain_mm) * Math.exp(mood)),
    );
  });
}

/** By how much the dew point lies under the night's lowest temperature. */
function gaps(weather: readonly WeatherDay[], chance: Chance): Float64Array {
  let gap_C = 1;
  return Float64Array.from(weather, (day) => {
    const usual_C = day.rain_mm > 1 ? 0.2 : 0.6 + 0.14 * (day.tMax_C - day.tMin_C);
    gap_C = 0.5 * gap_C + 0.5 * usual_C + chance.normal(0, 0.7);
    return gap_C;
  });
}

/** Coldest at five, warmest at three in the afternoon, half a cosine between. */
function courseOfDay_C(hour: number, today: WeatherDay, tomorrow: WeatherDay, yesterday: WeatherDay): number {
  const between = (from_C: number, to_C: number, share: number) =>
    from_C + ((to_C - from_C) * (1 - Math.cos(Math.PI * share))) / 2;
  if (hour < 5) return between(yesterday.tMax_C, today.tMin_C, (hour + 9) / 14);
  if (hour < 15) return between(today.tMin_C, today.tMax_C, (hour - 5) / 10);
  return between(today.tMax_C, tomorrow.tMin_C, (hour - 15) / 14);
}

/** Lays each day's rain into a few hours of it, so that the sum of a day is the record's. */
function rainIn(
  rain_mm_h: Float64Array,
  dayOf: Uint16Array,
  weather: readonly WeatherDay[],
  chance: Chance,
): void {
  let start = 0;
  for (let day = 0; day < weather.length; day++) {
    let end = start;
    while (end < dayOf.length && dayOf[end] === day) end++;
    const total_mm = (weather[day] as WeatherDay).rain_mm;
    if (total_mm > 0 && end > start) {
      const spell_h = Math.min(end - start, Math.max(1, Math.round(1 + total_mm * chance.between(0.3, 0.9))));
      const first = start + chance.whole(0, end - start - spell_h);
      for (let i = first; i < first + spell_h; i++) rain_mm_h[i] = total_mm / spell_h;
    }
    start = end;
  }
}

/** Day noise with a memory: log-factors that are mostly small and sometimes large. */
export function sharedWhims(days_n: number, sdOfLog: number, chance: Chance): Float64Array {
  const memory = chance.between(0.15, 0.6);
  let log = 0;
  return Float64Array.from({ length: days_n }, () => {
    log = memory * log + Math.sqrt(1 - memory ** 2) * sdOfLog * chance.heavyTailed(4);
    return Math.exp(Math.max(-1.2, Math.min(1.2, log)));
  });
}
