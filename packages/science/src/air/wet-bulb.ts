import { within } from "../errors/index.ts";
import { saturation_kPa } from "./kernel.ts";

/**
 * Psychrometer coefficients by how the wet bulb is aired [°C⁻¹].
 *
 * @source FAO56 eq. 16 (first value quoted by an opened document, the others from memory)
 */
export const psychrometerCoefficients_per_C = {
  aspirated: 0.000662,
  "natural ventilation": 0.0008,
  "still indoor": 0.0012,
} as const;

/**
 * Vapour pressure from a dry and a wet bulb.
 *
 * ea = e°(Twet) − a P (Tdry − Twet)
 *
 * @param reading dry and wet bulb [°C], -40 to 60, wet not above dry; pressure [kPa], 45 to 108; coefficient [°C⁻¹], 0.0005 to 0.0015
 * @returns pressure [kPa], never below 0
 * @throws QuantityError outside those ranges
 * @source FAO56 eq. 15
 * @example vapourPressureFromWetBulb_kPa({ air_C: 20, wetBulb_C: 13.8415, pressure_kPa: 101.325, psychrometer_per_C: 0.000662 }) // 1.169
 */
export function vapourPressureFromWetBulb_kPa(reading: {
  readonly air_C: number;
  readonly wetBulb_C: number;
  readonly pressure_kPa: number;
  readonly psychrometer_per_C?: number;
}): number {
  const { air_C, wetBulb_C, pressure_kPa } = reading;
  const { psychrometer_per_C = psychrometerCoefficients_per_C.aspirated } = reading;
  within("air_C", air_C, -40, 60);
  within("wetBulb_C", wetBulb_C, -40, 60);
  within("wetBulb_C", wetBulb_C, -40, air_C);
  within("pressure_kPa", pressure_kPa, 45, 108);
  within("psychrometer_per_C", psychrometer_per_C, 0.0005, 0.0015);
  return Math.max(0, saturation_kPa(wetBulb_C) - psychrometer_per_C * pressure_kPa * (air_C - wetBulb_C));
}

/**
 * Wet bulb temperature: the psychrometer equation solved by bisection.
 *
 * The equation rises with Twet all the way, so thirty halvings of [T − 60, T] pin it to 6e-8 °C.
 *
 * @param air air temperature [°C], -40 to 60; humidity [share], 0.01 to 1.05; pressure [kPa], 45 to 108; coefficient [°C⁻¹], 0.0005 to 0.0015
 * @returns wet bulb temperature [°C]; equals the air temperature at saturation
 * @throws QuantityError outside those ranges
 * @source FAO56 eq. 15, solved for the wet bulb
 * @see checks/air-water.json 026
 * @example wetBulb_C({ air_C: 20, humidity_frac: 0.5, pressure_kPa: 101.325 }) // 13.8415
 */
export function wetBulb_C(air: {
  readonly air_C: number;
  readonly humidity_frac: number;
  readonly pressure_kPa: number;
  readonly psychrometer_per_C?: number;
}): number {
  const { air_C, humidity_frac, pressure_kPa } = air;
  const { psychrometer_per_C = psychrometerCoefficients_per_C.aspirated } = air;
  within("air_C", air_C, -40, 60);
  within("humidity_frac", humidity_frac, 0.01, 1.05);
  within("pressure_kPa", pressure_kPa, 45, 108);
  within("psychrometer_per_C", psychrometer_per_C, 0.0005, 0.0015);
  const wanted = Math.min(1, humidity_frac) * saturation_kPa(air_C);
  let low = air_C - 60;
  let high = air_C;
  for (let step = 0; step < 30; step += 1) {
    const middle = (low + high) / 2;
    const there = saturation_kPa(middle) - psychrometer_per_C * pressure_kPa * (air_C - middle);
    if (there > wanted) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}

/**
 * Wet bulb temperature by an empirical fit, for when no pressure is known; at sea level, error -1 to +0.65 °C.
 *
 * Tw = T atan(0.151977 (RH + 8.313659)^½) + atan(T + RH) − atan(RH − 1.676331) + 0.00391838 RH^1.5 atan(0.023101 RH) − 4.686035, RH in percent
 *
 * @param air air temperature [°C], -20 to 50; humidity [share], 0.05 to 0.99
 * @returns wet bulb temperature [°C]
 * @throws QuantityError outside those ranges
 * @source Stull2011
 * @see checks/air-water.json 025
 * @example wetBulbByFit_C({ air_C: 20, humidity_frac: 0.5 }) // 13.70
 */
export function wetBulbByFit_C(air: { readonly air_C: number; readonly humidity_frac: number }): number {
  const { air_C, humidity_frac } = air;
  within("air_C", air_C, -20, 50);
  within("humidity_frac", humidity_frac, 0.05, 0.99);
  const percent = humidity_frac * 100;
  return (
    air_C * Math.atan(0.151977 * Math.sqrt(percent + 8.313659)) +
    Math.atan(air_C + percent) -
    Math.atan(percent - 1.676331) +
    0.00391838 * percent ** 1.5 * Math.atan(0.023101 * percent) -
    4.686035
  );
}
