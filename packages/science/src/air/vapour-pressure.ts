import { within } from "../errors/index.ts";
import { saturation_kPa } from "./kernel.ts";

// Sensors in fog read a little over 100 %; up to 105 % is accepted and counts as saturated.
const clampHumidity = (humidity_frac: number): number => Math.min(1, humidity_frac);

/**
 * Vapour pressure of air from its temperature and relative humidity at the same moment.
 *
 * e = RH e°(T)
 *
 * @param air air temperature [°C], -40 to 60; relative humidity [share], 0.01 to 1.05, counted as 1 above 1
 * @returns pressure [kPa]
 * @throws QuantityError outside those ranges
 * @source FAO56 eq. 10
 * @see checks/air-water.json 024
 * @example vapourPressure_kPa({ air_C: 22, humidity_frac: 0.5 }) // 1.322
 */
export function vapourPressure_kPa(air: { readonly air_C: number; readonly humidity_frac: number }): number {
  within("air_C", air.air_C, -40, 60);
  within("humidity_frac", air.humidity_frac, 0.01, 1.05);
  return clampHumidity(air.humidity_frac) * saturation_kPa(air.air_C);
}

/**
 * Vapour pressure from a measured dew point, the best of the daily routes.
 *
 * ea = e°(Tdew)
 *
 * @param dewPoint_C dew point [°C], -40 to 60
 * @returns pressure [kPa]
 * @throws QuantityError outside that range
 * @source FAO56 eq. 14
 * @example vapourPressureFromDewPoint_kPa(8.2) // 1.0875
 */
export function vapourPressureFromDewPoint_kPa(dewPoint_C: number): number {
  within("dewPoint_C", dewPoint_C, -40, 60);
  return saturation_kPa(dewPoint_C);
}

/**
 * Daily vapour pressure from the day's highest and lowest relative humidity.
 *
 * ea = (e°(Tmin) RHmax + e°(Tmax) RHmin) / 2: the air is moistest when it is coolest.
 *
 * @param day highest and lowest temperature [°C], -40 to 60; highest and lowest humidity [share], 0.01 to 1.05
 * @returns pressure [kPa]
 * @throws QuantityError outside those ranges
 * @source FAO56 eq. 17
 * @see checks/air-water.json 009, 048
 * @example vapourPressureFromHumidityRange_kPa({ airMax_C: 25, airMin_C: 18, humidityMax_frac: 0.82, humidityMin_frac: 0.54 }) // 1.70
 */
export function vapourPressureFromHumidityRange_kPa(day: {
  readonly airMax_C: number;
  readonly airMin_C: number;
  readonly humidityMax_frac: number;
  readonly humidityMin_frac: number;
}): number {
  within("airMin_C", day.airMin_C, -40, 60);
  within("airMax_C", day.airMax_C, -40, 60);
  within("airMax_C", day.airMax_C, day.airMin_C, 60);
  within("humidityMin_frac", day.humidityMin_frac, 0.01, 1.05);
  within("humidityMax_frac", day.humidityMax_frac, 0.01, 1.05);
  within("humidityMax_frac", day.humidityMax_frac, day.humidityMin_frac, 1.05);
  const moist = saturation_kPa(day.airMin_C) * clampHumidity(day.humidityMax_frac);
  const dry = saturation_kPa(day.airMax_C) * clampHumidity(day.humidityMin_frac);
  return (moist + dry) / 2;
}

/**
 * Daily vapour pressure from the lowest temperature and the highest humidity; for sensors that err when dry.
 *
 * ea = e°(Tmin) RHmax
 *
 * @param day lowest temperature [°C], -40 to 60; highest humidity [share], 0.01 to 1.05
 * @returns pressure [kPa]
 * @throws QuantityError outside those ranges
 * @source FAO56 eq. 18
 * @see checks/air-water.json 008
 * @example vapourPressureFromHumidityMax_kPa({ airMin_C: 18, humidityMax_frac: 0.82 }) // 1.69
 */
export function vapourPressureFromHumidityMax_kPa(day: {
  readonly airMin_C: number;
  readonly humidityMax_frac: number;
}): number {
  within("airMin_C", day.airMin_C, -40, 60);
  within("humidityMax_frac", day.humidityMax_frac, 0.01, 1.05);
  return saturation_kPa(day.airMin_C) * clampHumidity(day.humidityMax_frac);
}

/**
 * Daily vapour pressure from the mean relative humidity; the weakest of the humidity routes.
 *
 * ea = RHmean es. On the same day it gave 1.78 kPa where the range route gave 1.70: always say which was used.
 *
 * @param day highest and lowest temperature [°C], -40 to 60; mean humidity [share], 0.01 to 1.05
 * @returns pressure [kPa]
 * @throws QuantityError outside those ranges
 * @source FAO56 eq. 19
 * @see checks/air-water.json 007
 * @example vapourPressureFromHumidityMean_kPa({ airMax_C: 25, airMin_C: 18, humidityMean_frac: 0.68 }) // 1.78
 */
export function vapourPressureFromHumidityMean_kPa(day: {
  readonly airMax_C: number;
  readonly airMin_C: number;
  readonly humidityMean_frac: number;
}): number {
  within("airMin_C", day.airMin_C, -40, 60);
  within("airMax_C", day.airMax_C, -40, 60);
  within("airMax_C", day.airMax_C, day.airMin_C, 60);
  within("humidityMean_frac", day.humidityMean_frac, 0.01, 1.05);
  const saturated = (saturation_kPa(day.airMax_C) + saturation_kPa(day.airMin_C)) / 2;
  return clampHumidity(day.humidityMean_frac) * saturated;
}

/**
 * Daily vapour pressure when humidity was not measured: the dew point is taken as the night's lowest temperature.
 *
 * ea = e°(Tmin) in a humid climate, e°(Tmin − 2) in an arid one
 *
 * @param day lowest temperature [°C], -40 to 60; whether the climate is arid
 * @returns pressure [kPa]
 * @throws QuantityError outside that range
 * @source FAO56 eq. 48
 * @see checks/air-water.json 052
 * @example vapourPressureFromMinimum_kPa({ airMin_C: 14.8, arid: false }) // 1.68
 */
export function vapourPressureFromMinimum_kPa(day: {
  readonly airMin_C: number;
  readonly arid: boolean;
}): number {
  within("airMin_C", day.airMin_C, -40, 60);
  return saturation_kPa(day.airMin_C - (day.arid ? 2 : 0));
}
