import { within } from "../errors/index.ts";
import { saturation_kPa, slopeFrom_kPa_per_C } from "./kernel.ts";

/**
 * Saturation vapour pressure over a water surface (Tetens form).
 *
 * e = 0.6108 exp(17.27 T / (T + 237.3)); below 0 °C it is over supercooled water
 *
 * @param air_C air temperature [°C], -40 to 60
 * @returns pressure [kPa]; increases with temperature
 * @throws QuantityError outside -40..60 °C or not finite
 * @source FAO56 eq. 11
 * @see checks/air-water.json 003, 010-016
 * @example saturationVapourPressure_kPa(20) // 2.338
 */
export function saturationVapourPressure_kPa(air_C: number): number {
  within("air_C", air_C, -40, 60);
  return saturation_kPa(air_C);
}

/**
 * Slope of the saturation vapour pressure curve.
 *
 * Δ = 4098 e°(T) / (T + 237.3)²
 *
 * @param air_C air temperature [°C], -40 to 60
 * @returns slope [kPa °C⁻¹]; increases with temperature
 * @throws QuantityError outside -40..60 °C or not finite
 * @source FAO56 eq. 13
 * @see checks/air-water.json 010-016
 * @example saturationSlope_kPa_per_C(20) // 0.1447
 */
export function saturationSlope_kPa_per_C(air_C: number): number {
  within("air_C", air_C, -40, 60);
  return slopeFrom_kPa_per_C(saturation_kPa(air_C), air_C);
}

/**
 * Saturation vapour pressure of a day: the mean of the values at its highest and lowest temperature.
 *
 * es = (e°(Tmax) + e°(Tmin)) / 2. Never e° of the mean temperature: the curve is bent, and the day would seem moister
 * than it is (2.30 instead of 2.39 kPa in FAO-56 example 3).
 *
 * @param day highest and lowest air temperature [°C], -40 to 60, the highest not below the lowest
 * @returns pressure [kPa]
 * @throws QuantityError outside those ranges
 * @source FAO56 eq. 12
 * @see checks/air-water.json 003
 * @example meanSaturationVapourPressure_kPa({ airMax_C: 24.5, airMin_C: 15 }) // 2.390
 */
export function meanSaturationVapourPressure_kPa(day: {
  readonly airMax_C: number;
  readonly airMin_C: number;
}): number {
  within("airMin_C", day.airMin_C, -40, 60);
  within("airMax_C", day.airMax_C, -40, 60);
  within("airMax_C", day.airMax_C, day.airMin_C, 60);
  return (saturation_kPa(day.airMax_C) + saturation_kPa(day.airMin_C)) / 2;
}
