/**
 * Air and its vapour. The formulas are deliberately not those of the engine: the nursery is a second opinion.
 */

/**
 * Saturation vapour pressure over water, Magnus form.
 *
 * e = 0.61094 exp(17.625 T / (T + 243.04))
 *
 * @param air_C temperature [°C], -40 to 50
 * @source Alduchov and Eskridge (1996), Journal of Applied Meteorology 35, eq. 21
 */
export function saturation_kPa(air_C: number): number {
  return 0.61094 * Math.exp((17.625 * air_C) / (air_C + 243.04));
}

/** Change of saturation pressure with temperature, kPa per °C. @source derivative of the same */
export function saturationSlope_kPa_per_C(air_C: number): number {
  return (saturation_kPa(air_C) * 17.625 * 243.04) / (air_C + 243.04) ** 2;
}

/** Air pressure at an elevation, kPa. @source hypsometric formula, 8.43 km scale height */
export function pressure_kPa(elevation_m: number): number {
  return 101.325 * Math.exp(-elevation_m / 8430);
}
