import { within } from "../errors/index.ts";

/**
 * Fastest development that compact pot peppers reached, at any temperature [d⁻¹], and the temperature at which it stood still.
 *
 * They bound what may be promised: never fewer days than 1 over the rate. The curvature was not shown, so none is given.
 *
 * @source Dickson2024, Dickson2025
 */
export const compactPepperRates = {
  toFirstFlower_per_d: 0.0488,
  toFirstRipe_per_d: 0.019,
  flowerToRipe_per_d: 0.0252,
  hotToFirstFlower_per_d: 0.064,
  hotToFirstRipe_per_d: 0.016,
  min_C: 9.3,
  minOtherCultivar_C: 13.3,
  minHot_C: 17.8,
} as const;

/**
 * Rate of development that bends towards a greatest rate as it gets warmer.
 *
 * r = Rmax (1 − exp(−C (T − Tmin))), 0 up to Tmin. The form is inferred from an abstract, and C was not shown there.
 *
 * @param at temperature [°C], -40 to 60; temperature of no development [°C], -10 to 30; greatest rate [d⁻¹], 0.0001 to 1; curvature [°C⁻¹], 0.001 to 2
 * @returns rate [d⁻¹], 0 to the greatest rate; rises with temperature
 * @throws QuantityError outside those ranges
 * @source Dickson2024, form inferred
 * @example saturatingRate_per_d({ air_C: 25, min_C: 9.3, rateMax_per_d: 0.0488, curvature_per_C: 0.1 }) // 0.03865
 */
export function saturatingRate_per_d(at: {
  readonly air_C: number;
  readonly min_C: number;
  readonly rateMax_per_d: number;
  readonly curvature_per_C: number;
}): number {
  const { air_C, min_C, rateMax_per_d, curvature_per_C } = at;
  within("air_C", air_C, -40, 60);
  within("min_C", min_C, -10, 30);
  within("rateMax_per_d", rateMax_per_d, 0.0001, 1);
  within("curvature_per_C", curvature_per_C, 0.001, 2);
  return rateMax_per_d * (1 - Math.exp(-curvature_per_C * Math.max(0, air_C - min_C)));
}

/**
 * Shortest time that a greatest rate allows.
 *
 * @param rateMax_per_d greatest rate [d⁻¹], 0.0001 to 1
 * @returns time [d]; real crops take longer
 * @throws QuantityError outside that range
 * @source Dickson2024
 * @see checks/growth-fruit.json 053-057
 * @example shortestTime_d(0.0488) // 20.5
 */
export function shortestTime_d(rateMax_per_d: number): number {
  within("rateMax_per_d", rateMax_per_d, 0.0001, 1);
  return 1 / rateMax_per_d;
}
