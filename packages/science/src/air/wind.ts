import { within } from "../errors/index.ts";

/**
 * Wind speed at 2 m above grass from a reading at another height.
 *
 * u2 = uz 4.87 / ln(67.8 z − 5.42)
 *
 * @param reading wind speed [m s⁻¹], 0 to 40; height of the cup [m], 0.5 to 100
 * @returns wind speed at 2 m [m s⁻¹]; 0.748 of a reading at 10 m
 * @throws QuantityError outside those ranges
 * @source FAO56 eq. 47
 * @see checks/air-water.json 034-036
 * @example windAt2m_m_s({ wind_m_s: 3.2, height_m: 10 }) // 2.393
 */
export function windAt2m_m_s(reading: { readonly wind_m_s: number; readonly height_m: number }): number {
  within("wind_m_s", reading.wind_m_s, 0, 40);
  within("height_m", reading.height_m, 0.5, 100);
  return (reading.wind_m_s * 4.87) / Math.log(67.8 * reading.height_m - 5.42);
}
