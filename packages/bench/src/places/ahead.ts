import type { Said } from "../words/said.ts";
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

/**
 * Where the light of a day comes from and how sure it is. Amounts are photons on a level surface at the leaves, mol m⁻² d⁻¹,
 * the plane in which published needs are given.
 */
export interface Daylight {
  readonly window_mol_m2_d: number;
  readonly lamp_mol_m2_d: number;
  /** Open sky; 0 indoors. */
  readonly sky_mol_m2_d: number;
  /** All of it on the dull and on the sunny days of the season (the second and the eighth day of ten); a day that was seen has one value. */
  readonly dull_mol_m2_d: number;
  readonly sunny_mol_m2_d: number;
  /** Relative sd from not knowing the place: glass, distance, what stands opposite, the lamp. The weather is not in it. */
  readonly sd_frac: number;
  /** Light from all sides on leaves at all angles (half the spherical irradiance): what a side-lit crown lives on. */
  readonly around_mol_m2_d: number;
  /** Azimuth from which the one-sided part comes, and its share of all light; 0 under a lamp or the open sky. */
  readonly fromSide_deg: number;
  readonly fromSide_frac: number;
  /** From civil dawn to dusk, the lamp's hours joined to it. */
  readonly dayLength_h: number;
  /** Hours of lamp light, and its strength at the leaves. */
  readonly lamp_h: number;
  readonly lamp_umol_m2_s: number;
  /** Open sky above the house on this day, for comparison. */
  readonly outdoors_mol_m2_d: number;
}

/** Where air and light of a day come from: read off an instrument, learned from such days, or assumed by us. */
export interface AirSource {
  readonly origin: Origin;
  /** "logger on the South sill", "weather record", "our guess for a south window in January". */
  readonly from: Said;
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
  /** Light on a level surface at the leaves, from all sources. */
  readonly dli_mol_m2_d: number;
  readonly daylight: Daylight;
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
