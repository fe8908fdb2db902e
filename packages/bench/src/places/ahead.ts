import type { Origin } from "../working/working.ts";

/** A stretch of time at one spot over which air and light are taken as constant; 24 of one hour make a logged day. */
export interface Spell {
  readonly from_ms: number;
  readonly to_ms: number;
  readonly air_C: number;
  /** Relative humidity, 0 to 1. */
  readonly humidity_frac: number;
  readonly wind_m_s: number;
  /** Light at the leaf, in the waveband plants use. */
  readonly ppfd_umol_m2_s: number;
  readonly light: "none" | "window" | "lamp" | "sun";
}

/** What a weather record says of one day outdoors. */
export interface WeatherDay {
  readonly tMax_C: number;
  readonly tMin_C: number;
  readonly rain_mm: number;
  readonly wind_m_s?: number;
  readonly humidity_frac?: number;
  readonly radiation_MJ_m2_d?: number;
}

/** Where air and light of a day come from: read off an instrument, learned from such days, or assumed by us. */
export interface AirSource {
  readonly origin: Origin;
  /** "logger on the South sill", "weather record", "our guess for a south window in January". */
  readonly from: string;
}

/** Air and light at one spot over one local day, with its spread. */
export interface AirDay {
  /** The bench, or the spot where its light was written apart; "" where nothing is known. */
  readonly place: string;
  /** Local date, YYYY-MM-DD. */
  readonly date: string;
  /** Day of the year, 1 to 366. */
  readonly dayOfYear_d: number;
  readonly from_ms: number;
  readonly to_ms: number;
  readonly outdoors: boolean;
  /** In order and without gaps from `from_ms` to `to_ms`. */
  readonly spells: readonly Spell[];
  readonly dli_mol_m2_d: number;
  /** Only outdoors. */
  readonly weather?: WeatherDay | undefined;
  readonly latitude_deg: number;
  readonly elevation_m: number;
  /** Relative sd of the day's water demand that comes from not knowing the air and light. */
  readonly demandSd_frac: number;
  readonly air: AirSource;
  readonly light: AirSource;
}

/** Air and light at the spot of a plant, day by day, behind and ahead of now. Same object for same spot and date. */
export type AirAt = (spot: string | undefined, date: string) => AirDay;
