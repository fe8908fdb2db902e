import { within } from "../errors/index.ts";

/**
 * Solar radiation under a clear sky, of a day or an hour.
 *
 * Rso = (0.75 + 2·10⁻⁵ z) Ra
 *
 * @param site extraterrestrial radiation [MJ m⁻² per period], 0 to 50; elevation [m], -430 to 6000
 * @returns radiation in the period of the input [MJ m⁻²]
 * @throws QuantityError outside those ranges
 * @source FAO56 eq. 37
 * @see checks/air-water.json 048, 055, 057
 * @example clearSkyRadiation_MJ_m2({ extraterrestrial_MJ_m2: 41.09, elevation_m: 100 }) // 30.90
 */
export function clearSkyRadiation_MJ_m2(site: {
  readonly extraterrestrial_MJ_m2: number;
  readonly elevation_m: number;
}): number {
  within("extraterrestrial_MJ_m2", site.extraterrestrial_MJ_m2, 0, 50);
  within("elevation_m", site.elevation_m, -430, 6000);
  return (0.75 + 2e-5 * site.elevation_m) * site.extraterrestrial_MJ_m2;
}

/**
 * Solar radiation of a day from its hours of sunshine (Ångström).
 *
 * Rs = (0.25 + 0.50 n/N) Ra
 *
 * @param day extraterrestrial radiation [MJ m⁻² d⁻¹], 0 to 50; sunshine [h], 0 to the daylight; daylight [h], 0 to 24
 * @returns radiation [MJ m⁻² d⁻¹]; 0 in polar night
 * @throws QuantityError outside those ranges
 * @source FAO56 eq. 35
 * @see checks/air-water.json 030, 048
 * @example solarFromSunshine_MJ_m2_d({ extraterrestrial_MJ_m2_d: 25.11, sunshine_h: 7.1, daylight_h: 10.895 }) // 14.46
 */
export function solarFromSunshine_MJ_m2_d(day: {
  readonly extraterrestrial_MJ_m2_d: number;
  readonly sunshine_h: number;
  readonly daylight_h: number;
}): number {
  const { extraterrestrial_MJ_m2_d, sunshine_h, daylight_h } = day;
  within("extraterrestrial_MJ_m2_d", extraterrestrial_MJ_m2_d, 0, 50);
  within("daylight_h", daylight_h, 0, 24);
  within("sunshine_h", sunshine_h, 0, 24);
  // Recorders are read to a tenth of an hour; a little over the computed day length is rounding, not an error.
  within("sunshine_h", sunshine_h, 0, daylight_h + 0.5);
  const share = daylight_h > 0 ? Math.min(1, sunshine_h / daylight_h) : 0;
  return (0.25 + 0.5 * share) * extraterrestrial_MJ_m2_d;
}

/**
 * Solar radiation of a day from its temperature range, when nothing else is known; better as a mean of three days or more.
 *
 * Rs = min(Rso, k √(Tmax − Tmin) Ra), k 0.16 inland and 0.19 at the coast
 *
 * @param day extraterrestrial and clear-sky radiation [MJ m⁻² d⁻¹], 0 to 50; highest and lowest temperature [°C], -40 to 60; coefficient [°C^-½], 0.1 to 0.25
 * @returns radiation [MJ m⁻² d⁻¹]
 * @throws QuantityError outside those ranges
 * @source FAO56 eq. 50
 * @see checks/air-water.json 037, 052
 * @example solarFromTemperatureRange_MJ_m2_d({ extraterrestrial_MJ_m2_d: 40.55, clearSky_MJ_m2_d: 30.6, airMax_C: 26.6, airMin_C: 14.8 }) // 22.29
 */
export function solarFromTemperatureRange_MJ_m2_d(day: {
  readonly extraterrestrial_MJ_m2_d: number;
  readonly clearSky_MJ_m2_d: number;
  readonly airMax_C: number;
  readonly airMin_C: number;
  readonly temperatureRangeCoefficient?: number;
}): number {
  const { extraterrestrial_MJ_m2_d, clearSky_MJ_m2_d, airMax_C, airMin_C } = day;
  const { temperatureRangeCoefficient = 0.16 } = day;
  within("extraterrestrial_MJ_m2_d", extraterrestrial_MJ_m2_d, 0, 50);
  within("clearSky_MJ_m2_d", clearSky_MJ_m2_d, 0, 50);
  within("airMin_C", airMin_C, -40, 60);
  within("airMax_C", airMax_C, -40, 60);
  within("airMax_C", airMax_C, airMin_C, 60);
  within("temperatureRangeCoefficient", temperatureRangeCoefficient, 0.1, 0.25);
  const estimate = temperatureRangeCoefficient * Math.sqrt(airMax_C - airMin_C) * extraterrestrial_MJ_m2_d;
  return Math.min(clearSky_MJ_m2_d, estimate);
}
