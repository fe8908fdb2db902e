import { within } from "../errors/index.ts";
import { saturation_kPa } from "./kernel.ts";

/**
 * Vapour pressure deficit of the air at one moment: how much more vapour it could hold.
 *
 * D = e°(T) (1 − RH)
 *
 * @param air air temperature [°C], -40 to 60; humidity [share], 0.01 to 1.05
 * @returns deficit [kPa], 0 when saturated
 * @throws QuantityError outside those ranges
 * @source FAO56 eqs 10 and 11
 * @see checks/air-water.json 024
 * @example vapourPressureDeficit_kPa({ air_C: 19, humidity_frac: 0.45 }) // 1.2086
 */
export function vapourPressureDeficit_kPa(air: {
  readonly air_C: number;
  readonly humidity_frac: number;
}): number {
  within("air_C", air.air_C, -40, 60);
  within("humidity_frac", air.humidity_frac, 0.01, 1.05);
  return saturation_kPa(air.air_C) * (1 - Math.min(1, air.humidity_frac));
}

/**
 * Vapour pressure deficit of a day from its temperature range and its vapour pressure.
 *
 * D = es − ea, not below 0
 *
 * @param day highest and lowest temperature [°C], -40 to 60; vapour pressure [kPa], 0 to 20
 * @returns deficit [kPa]
 * @throws QuantityError outside those ranges
 * @source FAO56 eqs 12 and 17
 * @see checks/air-water.json 009, 048
 * @example dailyVapourPressureDeficit_kPa({ airMax_C: 25, airMin_C: 18, vapourPressure_kPa: 1.7017 }) // 0.914
 */
export function dailyVapourPressureDeficit_kPa(day: {
  readonly airMax_C: number;
  readonly airMin_C: number;
  readonly vapourPressure_kPa: number;
}): number {
  within("airMin_C", day.airMin_C, -40, 60);
  within("airMax_C", day.airMax_C, -40, 60);
  within("airMax_C", day.airMax_C, day.airMin_C, 60);
  within("vapourPressure_kPa", day.vapourPressure_kPa, 0, 20);
  const saturated = (saturation_kPa(day.airMax_C) + saturation_kPa(day.airMin_C)) / 2;
  return Math.max(0, saturated - day.vapourPressure_kPa);
}

/**
 * Vapour pressure deficit from leaf to air: what drives water out of the leaf.
 *
 * D_L = e°(T_leaf) − ea. Near 22 °C one degree of leaf temperature moves it by about 0.15 kPa; indoors an unstressed
 * leaf is usually within 2 °C of the air. Below 0 the leaf is under the dew point and dew forms.
 *
 * @param leaf leaf temperature [°C], -40 to 60; vapour pressure of the air [kPa], 0 to 20
 * @returns deficit [kPa], negative when dew forms
 * @throws QuantityError outside those ranges
 * @source NelsonBugbee2015
 * @example leafVapourPressureDeficit_kPa({ leaf_C: 23, vapourPressure_kPa: 1.32 }) // 1.489
 */
export function leafVapourPressureDeficit_kPa(leaf: {
  readonly leaf_C: number;
  readonly vapourPressure_kPa: number;
}): number {
  within("leaf_C", leaf.leaf_C, -40, 60);
  within("vapourPressure_kPa", leaf.vapourPressure_kPa, 0, 20);
  return saturation_kPa(leaf.leaf_C) - leaf.vapourPressure_kPa;
}

/**
 * Mean vapour pressure deficit over readings in equal steps: the mean of the deficits, never the deficit of the means.
 *
 * @param readings air temperatures [hour][°C], -40 to 60, and humidities [hour][share], 0.01 to 1.05, equally many
 * @returns mean deficit [kPa]
 * @throws QuantityError outside those ranges or when the lists differ in length
 * @source FAO56 eqs 10 and 11
 * @example meanVapourPressureDeficit_kPa({ air_C: [10, 30], humidity_frac: [0.9, 0.4] }) // 1.334
 */
export function meanVapourPressureDeficit_kPa(readings: {
  readonly air_C: readonly number[];
  readonly humidity_frac: readonly number[];
}): number {
  const { air_C, humidity_frac } = readings;
  within("readings_n", air_C.length, 1, 1e6);
  within("humidityReadings_n", humidity_frac.length, air_C.length, air_C.length);
  let sum = 0;
  for (let i = 0; i < air_C.length; i += 1) {
    sum += vapourPressureDeficit_kPa({ air_C: air_C[i] ?? NaN, humidity_frac: humidity_frac[i] ?? NaN });
  }
  return sum / air_C.length;
}
