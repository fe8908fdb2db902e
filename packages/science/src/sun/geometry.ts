import { within } from "../errors/index.ts";
import * as kernel from "./kernel.ts";

/**
 * Squared inverse of the relative distance between earth and sun.
 *
 * dr = 1 + 0.033 cos(2π J / 365)
 *
 * @param dayOfYear_d day of the year, 1 to 366
 * @returns factor without unit, 0.967 to 1.033; greatest in early January
 * @throws QuantityError outside that range
 * @source FAO56 eq. 23
 * @see checks/air-water.json 028
 * @example sunDistanceFactor(246) // 0.985
 */
export function sunDistanceFactor(dayOfYear_d: number): number {
  within("dayOfYear_d", dayOfYear_d, 1, 366);
  return kernel.distanceFactor(dayOfYear_d);
}

/**
 * Declination of the sun (daily formula, good to about 0.4°).
 *
 * δ = 0.409 sin(2π J / 365 − 1.39)
 *
 * @param dayOfYear_d day of the year, 1 to 366
 * @returns declination [rad], north positive
 * @throws QuantityError outside that range
 * @source FAO56 eq. 24
 * @see checks/air-water.json 028
 * @example sunDeclination_rad(246) // 0.120
 */
export function sunDeclination_rad(dayOfYear_d: number): number {
  within("dayOfYear_d", dayOfYear_d, 1, 366);
  return kernel.declination_rad(dayOfYear_d);
}

/**
 * Hour angle of the sun at sunset.
 *
 * ωs = acos(−tan φ tan δ), clamped: π in polar day, 0 in polar night
 *
 * @param site latitude [°], -90 to 90, north positive; day of the year, 1 to 366
 * @returns angle [rad], 0 to π
 * @throws QuantityError outside those ranges
 * @source FAO56 eq. 25
 * @see checks/air-water.json 028, 046
 * @example sunsetHourAngle_rad({ latitude_deg: -20, dayOfYear_d: 246 }) // 1.527
 */
export function sunsetHourAngle_rad(site: {
  readonly latitude_deg: number;
  readonly dayOfYear_d: number;
}): number {
  within("latitude_deg", site.latitude_deg, -90, 90);
  within("dayOfYear_d", site.dayOfYear_d, 1, 366);
  const latitude = kernel.radiansOf_rad(site.latitude_deg);
  return kernel.sunsetAngle_rad(latitude, kernel.declination_rad(site.dayOfYear_d));
}

/**
 * Length of the day, sun's centre above a level horizon, without refraction.
 *
 * N = 24 ωs / π; civil tables, which count the sun's rim and refraction, give 0.17 to 0.22 h more at 40 to 50°
 *
 * @param site latitude [°], -90 to 90, north positive; day of the year, 1 to 366
 * @returns hours [h], 0 in polar night to 24 in polar day
 * @throws QuantityError outside those ranges
 * @source FAO56 eq. 34
 * @see checks/air-water.json 029, 046
 * @example daylight_h({ latitude_deg: -20, dayOfYear_d: 246 }) // 11.67
 */
export function daylight_h(site: { readonly latitude_deg: number; readonly dayOfYear_d: number }): number {
  return (24 * sunsetHourAngle_rad(site)) / Math.PI;
}

/**
 * Solar radiation of a day on a level surface above the air.
 *
 * Ra = (1440/π) 0.0820 dr (ωs sin φ sin δ + cos φ cos δ sin ωs)
 *
 * @param site latitude [°], -90 to 90, north positive; day of the year, 1 to 366
 * @returns radiation [MJ m⁻² d⁻¹]
 * @throws QuantityError outside those ranges
 * @source FAO56 eq. 21
 * @see checks/air-water.json 028, 044, 045
 * @example extraterrestrialRadiation_MJ_m2_d({ latitude_deg: -20, dayOfYear_d: 246 }) // 32.19
 */
export function extraterrestrialRadiation_MJ_m2_d(site: {
  readonly latitude_deg: number;
  readonly dayOfYear_d: number;
}): number {
  within("latitude_deg", site.latitude_deg, -90, 90);
  within("dayOfYear_d", site.dayOfYear_d, 1, 366);
  return kernel.extraterrestrial_MJ_m2_d(kernel.radiansOf_rad(site.latitude_deg), site.dayOfYear_d);
}
