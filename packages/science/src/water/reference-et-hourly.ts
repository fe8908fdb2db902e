import { gamma_kPa_per_C, pressure_kPa, saturation_kPa, slopeFrom_kPa_per_C } from "../air/kernel.ts";
import { within } from "../errors/index.ts";

/** Below this height of the sun the ratio of measured to clear-sky radiation says nothing about cloud. */
export const lowSun_rad = 0.3; // ASCE2005, p. 35

/** Hourly constants by reference surface; FAO-56 keeps its daily denominator in all hours. */
const surfaces = {
  short: { numerator: 37, day: 0.24, night: 0.96, groundDay: 0.1, groundNight: 0.5 },
  tall: { numerator: 66, day: 0.25, night: 1.7, groundDay: 0.04, groundNight: 0.2 },
  "FAO-56": { numerator: 37, day: 0.34, night: 0.34, groundDay: 0.1, groundNight: 0.5 },
} as const;

export type HourlySurface = keyof typeof surfaces;

/**
 * Cloud factor of the hourly long-wave loss.
 *
 * fcd = 1.35 Rs/Rso − 0.35, held to 0.05..1. When the sun at mid-period stands below 0.3 rad, carry the last hour's.
 *
 * @param sky solar and clear-sky radiation of the hour [MJ m⁻² h⁻¹], 0 to 6, clear sky above 0
 * @returns factor without unit, 0.05 to 1; low under cloud
 * @throws QuantityError outside those ranges
 * @source ASCE2005 eq. 45
 * @see checks/air-water.json 051, 076, 079
 * @example cloudFactor({ solar_MJ_m2_h: 2.45, clearSky_MJ_m2_h: 2.658 }) // 0.894
 */
export function cloudFactor(sky: {
  readonly solar_MJ_m2_h: number;
  readonly clearSky_MJ_m2_h: number;
}): number {
  within("solar_MJ_m2_h", sky.solar_MJ_m2_h, 0, 6);
  within("clearSky_MJ_m2_h", sky.clearSky_MJ_m2_h, 1e-6, 6);
  return Math.min(1, Math.max(0.05, 1.35 * (sky.solar_MJ_m2_h / sky.clearSky_MJ_m2_h) - 0.35));
}

/**
 * Reference evapotranspiration of an hour over a short or tall surface, or as FAO-56 prints it.
 *
 * Rnl = 2.042·10⁻¹⁰ fcd (0.34 − 0.14 √ea) (T + 273.16)⁴; Rn = 0.77 Rs − Rnl; G = 0.1 Rn by day, 0.5 Rn by night (tall
 * 0.04, 0.2); ETo = [0.408 Δ (Rn − G) + γ Cn/(T + 273) u2 (e°(T) − ea)] / [Δ + γ (1 + Cd u2)]. Day and night by the sign
 * of Rn. Cn 37 (tall 66), Cd 0.24 by day and 0.96 by night (tall 0.25, 1.7; FAO-56 0.34 always). Not held at 0: a small
 * negative hour is dew, and belongs into the day's sum.
 *
 * @param hour air temperature [°C], -40 to 60; vapour pressure [kPa], 0 to 20; solar radiation [MJ m⁻² h⁻¹], 0 to 6; wind at 2 m [m s⁻¹], 0 to 40; elevation [m], -430 to 6000; cloud factor of this hour, or carried, 0.05 to 1; surface
 * @returns ETo [mm h⁻¹] and radiation terms [MJ m⁻² h⁻¹]
 * @throws QuantityError outside those ranges
 * @source ASCE2005 eqs 1, 42-45; FAO56 eq. 53
 * @see checks/air-water.json 050, 051, 070-081
 * @example referenceEtHourly({ air_C: 38, vapourPressure_kPa: 3.445, solar_MJ_m2_h: 2.45, wind2m_m_s: 3.3, elevation_m: 8, cloudFactor: 0.894, surface: "FAO-56" }).referenceEt_mm_h // 0.63
 */
export function referenceEtHourly(hour: {
  readonly air_C: number;
  readonly vapourPressure_kPa: number;
  readonly solar_MJ_m2_h: number;
  readonly wind2m_m_s: number;
  readonly elevation_m: number;
  readonly cloudFactor: number;
  readonly surface: HourlySurface;
}): {
  readonly referenceEt_mm_h: number;
  readonly netLongwave_MJ_m2_h: number;
  readonly netRadiation_MJ_m2_h: number;
  readonly soilHeat_MJ_m2_h: number;
} {
  const { air_C, vapourPressure_kPa, solar_MJ_m2_h, wind2m_m_s, elevation_m } = hour;
  within("air_C", air_C, -40, 60);
  within("vapourPressure_kPa", vapourPressure_kPa, 0, 20);
  within("solar_MJ_m2_h", solar_MJ_m2_h, 0, 6);
  within("wind2m_m_s", wind2m_m_s, 0, 40);
  within("elevation_m", elevation_m, -430, 6000);
  within("cloudFactor", hour.cloudFactor, 0.05, 1);
  const surface = surfaces[hour.surface];
  const saturation = saturation_kPa(air_C);
  const slope = slopeFrom_kPa_per_C(saturation, air_C);
  const gamma = gamma_kPa_per_C(pressure_kPa(elevation_m));
  const longwave =
    2.042e-10 * hour.cloudFactor * (0.34 - 0.14 * Math.sqrt(vapourPressure_kPa)) * (air_C + 273.16) ** 4;
  const net = 0.77 * solar_MJ_m2_h - longwave;
  const isDay = net > 0;
  const ground = net * (isDay ? surface.groundDay : surface.groundNight);
  const dryAir = (gamma * surface.numerator * wind2m_m_s * (saturation - vapourPressure_kPa)) / (air_C + 273);
  const top = 0.408 * slope * (net - ground) + dryAir;
  return {
    referenceEt_mm_h: top / (slope + gamma * (1 + (isDay ? surface.day : surface.night) * wind2m_m_s)),
    netLongwave_MJ_m2_h: longwave,
    netRadiation_MJ_m2_h: net,
    soilHeat_MJ_m2_h: ground,
  };
}
