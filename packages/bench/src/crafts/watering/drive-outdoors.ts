import { referenceEtFromKnown } from "@sillwood/science/water";
import type { AirDay } from "../../places/ahead.ts";

/** Active leaf area above each unit of ground under the reference sward (half of its leaf area index of 2.88). @source FAO56, derivation of the reference surface */
const REFERENCE_ACTIVE_LEAVES = 1.44;
/** Upper limit of crop and wet surface together. @source FAO56 eq. 72 */
const WET_SURFACE_FACTOR = 1.2;
/** A night still takes this much of what the mean hour of the day takes. @source our assumption */
const NIGHT_WEIGHT_frac = 0.05;
/** Rain below this share of the day's ET does not reach the medium. @source air-water sheet section 6 */
const LOST_RAIN_frac = 0.2;

/** Reference ET of an outdoor day from whatever is known of it, mm; the missing-data ladder says how. */
function referenceOf(day: AirDay): { readonly et_mm: number; readonly method: string } {
  const warmest_C = day.spells.reduce((most, spell) => Math.max(most, spell.air_C), -40);
  const coldest_C = day.spells.reduce((least, spell) => Math.min(least, spell.air_C), 60);
  const { weather } = day;
  const airMax_C = between(weather?.tMax_C ?? warmest_C, -40, 60);
  const airMin_C = Math.min(airMax_C, between(weather?.tMin_C ?? coldest_C, -40, 60));
  const result = referenceEtFromKnown({
    airMax_C,
    airMin_C,
    latitude_deg: between(day.latitude_deg, -90, 90),
    elevation_m: between(day.elevation_m, -400, 6000),
    dayOfYear_d: between(day.dayOfYear_d, 1, 366),
    ...(weather?.wind_m_s === undefined ? {} : { wind2m_m_s: between(weather.wind_m_s, 0, 40) }),
    ...(weather?.humidity_frac === undefined
      ? {}
      : { humidityMean_frac: between(weather.humidity_frac, 0.02, 1) }),
    ...(weather?.radiation_MJ_m2_d === undefined
      ? {}
      : { solar_MJ_m2_d: between(weather.radiation_MJ_m2_d, 0, 50) }),
  });
  return { et_mm: Math.max(0, result.referenceEt_mm_d), method: result.method };
}

/** Losses of one spell, g/m² over the spell. */
interface SpellLosses {
  readonly leaf_g_m2: readonly number[];
  readonly surface_g_m2: readonly number[];
}

/** Losses outdoors by spell: the day's reference ET spread over its light. */
export function outdoorLosses(day: AirDay): SpellLosses {
  const { et_mm } = referenceOf(day);
  const weights = day.spells.map(
    (spell) => (spell.to_ms - spell.from_ms) * Math.max(0, spell.ppfd_umol_m2_s),
  );
  const light = weights.reduce((sum, weight) => sum + weight, 0);
  const whole_ms = Math.max(1, day.to_ms - day.from_ms);
  const shares = day.spells.map((spell, index) => {
    const ofTime_frac = (spell.to_ms - spell.from_ms) / whole_ms;
    if (!(light > 0)) return ofTime_frac;
    return NIGHT_WEIGHT_frac * ofTime_frac + (1 - NIGHT_WEIGHT_frac) * ((weights[index] as number) / light);
  });
  return {
    leaf_g_m2: shares.map((share) => (share * 1000 * et_mm) / REFERENCE_ACTIVE_LEAVES),
    surface_g_m2: shares.map((share) => share * 1000 * et_mm * WET_SURFACE_FACTOR),
  };
}

/** Rain of the day that reaches the medium, g. */
export function rain_g(day: AirDay, rim_m2: number, umbrella_frac: number): number {
  const rain_mm = day.weather?.rain_mm ?? 0;
  if (!(rain_mm > 0) || rain_mm < LOST_RAIN_frac * referenceOf(day).et_mm) return 0;
  return 1000 * rain_mm * rim_m2 * (1 - umbrella_frac);
}

function between(value: number, min: number, max: number): number {
  return value >= min ? Math.min(value, max) : min;
}
