import { within } from "../errors/index.ts";
import { gamma_kPa_per_C, pressure_kPa } from "./kernel.ts";

/**
 * Mean air pressure at a height above the sea.
 *
 * P = 101.3 ((293 − 0.0065 z) / 293)^5.26
 *
 * @param elevation_m height above sea level [m], -430 to 6000
 * @returns pressure [kPa]; falls with height
 * @throws QuantityError outside that range or not finite
 * @source FAO56 eq. 7
 * @see checks/air-water.json 002, 005, 017-020
 * @example airPressure_kPa(1800) // 81.76
 */
export function airPressure_kPa(elevation_m: number): number {
  within("elevation_m", elevation_m, -430, 6000);
  return pressure_kPa(elevation_m);
}

/**
 * Psychrometric constant of the reference ET equations.
 *
 * γ = 0.000665 P
 *
 * @param pressure_kPa air pressure [kPa], 45 to 108
 * @returns constant [kPa °C⁻¹]; grows with pressure
 * @throws QuantityError outside that range or not finite
 * @source FAO56 eq. 8
 * @see checks/air-water.json 002, 017-020
 * @example psychrometricConstant_kPa_per_C(101.3) // 0.06736
 */
export function psychrometricConstant_kPa_per_C(pressure_kPa: number): number {
  within("pressure_kPa", pressure_kPa, 45, 108);
  return gamma_kPa_per_C(pressure_kPa);
}
