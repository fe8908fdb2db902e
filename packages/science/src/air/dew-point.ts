import { within } from "../errors/index.ts";

/**
 * Dew point of air, the inverse of the saturation curve.
 *
 * L = ln(ea / 0.6108); Tdew = 237.3 L / (17.27 − L)
 *
 * @param vapourPressure_kPa vapour pressure [kPa], 0.015 to 20 (about -43 to 60 °C)
 * @returns dew point [°C]; increases with vapour pressure
 * @throws QuantityError outside that range
 * @source FAO56 eq. 11, solved for the temperature
 * @see checks/air-water.json 021
 * @example dewPoint_C(1.08746946) // 8.2
 */
export function dewPoint_C(vapourPressure_kPa: number): number {
  within("vapourPressure_kPa", vapourPressure_kPa, 0.015, 20);
  const logRatio = Math.log(vapourPressure_kPa / 0.6108);
  return (237.3 * logRatio) / (17.27 - logRatio);
}
