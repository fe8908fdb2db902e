import { within } from "../errors/index.ts";
import {
  vapourPressureFromDewPoint_kPa,
  vapourPressureFromHumidityMax_kPa,
  vapourPressureFromHumidityMean_kPa,
  vapourPressureFromHumidityRange_kPa,
  vapourPressureFromMinimum_kPa,
} from "./vapour-pressure.ts";

/** Which of the daily routes gave a vapour pressure. */
export type VapourPressureRoute =
  | "dew point"
  | "humidity range"
  | "highest humidity"
  | "mean humidity"
  | "lowest temperature";

/**
 * Vapour pressure of a day by the best route that the measurements allow, with the name of the route.
 *
 * Order: dew point; highest and lowest humidity; highest humidity; mean humidity; lowest temperature.
 *
 * @param day highest and lowest temperature [°C], -40 to 60; what was measured of dew point [°C], -40 to 60, and humidity [share], 0.01 to 1.05; whether the climate is arid (only used when nothing was measured)
 * @returns vapour pressure [kPa] and route
 * @throws QuantityError outside those ranges
 * @source FAO56 eqs 14-19 and 48
 * @see checks/air-water.json 007-009, 052
 * @example dailyVapourPressure({ airMax_C: 25, airMin_C: 18, humidityMean_frac: 0.68 }).vapourPressure_kPa // 1.78
 */
export function dailyVapourPressure(day: {
  readonly airMax_C: number;
  readonly airMin_C: number;
  readonly dewPoint_C?: number;
  readonly humidityMax_frac?: number;
  readonly humidityMin_frac?: number;
  readonly humidityMean_frac?: number;
  readonly arid?: boolean;
}): { readonly vapourPressure_kPa: number; readonly route: VapourPressureRoute } {
  const { airMax_C, airMin_C, dewPoint_C, humidityMax_frac, humidityMin_frac, humidityMean_frac } = day;
  // All that was given is checked, also what a better route leaves unused: a bad reading is worth knowing of.
  within("airMin_C", airMin_C, -40, 60);
  within("airMax_C", airMax_C, -40, 60);
  within("airMax_C", airMax_C, airMin_C, 60);
  if (humidityMax_frac !== undefined) within("humidityMax_frac", humidityMax_frac, 0.01, 1.05);
  if (humidityMin_frac !== undefined) within("humidityMin_frac", humidityMin_frac, 0.01, 1.05);
  if (humidityMean_frac !== undefined) within("humidityMean_frac", humidityMean_frac, 0.01, 1.05);
  if (dewPoint_C !== undefined) {
    return { vapourPressure_kPa: vapourPressureFromDewPoint_kPa(dewPoint_C), route: "dew point" };
  }
  if (humidityMax_frac !== undefined && humidityMin_frac !== undefined) {
    const air = { airMax_C, airMin_C, humidityMax_frac, humidityMin_frac };
    return { vapourPressure_kPa: vapourPressureFromHumidityRange_kPa(air), route: "humidity range" };
  }
  if (humidityMax_frac !== undefined) {
    const air = { airMin_C, humidityMax_frac };
    return { vapourPressure_kPa: vapourPressureFromHumidityMax_kPa(air), route: "highest humidity" };
  }
  if (humidityMean_frac !== undefined) {
    const air = { airMax_C, airMin_C, humidityMean_frac };
    return { vapourPressure_kPa: vapourPressureFromHumidityMean_kPa(air), route: "mean humidity" };
  }
  const air = { airMin_C, arid: day.arid ?? false };
  return { vapourPressure_kPa: vapourPressureFromMinimum_kPa(air), route: "lowest temperature" };
}
