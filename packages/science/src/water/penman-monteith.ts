import { gamma_kPa_per_C, pressure_kPa, saturation_kPa, slopeFrom_kPa_per_C } from "../air/kernel.ts";
import { extraterrestrial_MJ_m2_d } from "../sun/kernel.ts";

// The bare daily formula, for callers that have already checked their arguments. Not exported by the field.

/** What tells one daily reference surface from another. */
export type DailySurface = {
  readonly numerator: number;
  readonly denominator: number;
  readonly sigma_MJ_K4_m2_d: number;
};

/** FAO-56 eqs 6 and 39. */
export const faoGrass: DailySurface = { numerator: 900, denominator: 0.34, sigma_MJ_K4_m2_d: 4.903e-9 };

/** ASCE short and tall reference surfaces, daily; their sigma is printed as 4.901e-9. */
export const asceShort: DailySurface = { numerator: 900, denominator: 0.34, sigma_MJ_K4_m2_d: 4.901e-9 };
export const asceTall: DailySurface = { numerator: 1600, denominator: 0.38, sigma_MJ_K4_m2_d: 4.901e-9 };

/**
 * Net long-wave loss. The clamp on Rs/Rso keeps polar night and bad readings inside the range of the fit.
 *
 * @source FAO56 eq. 39
 */
export function netLongwaveLoss_MJ_m2_d(
  airMax_C: number,
  airMin_C: number,
  vapour_kPa: number,
  solar_MJ_m2_d: number,
  clearSky_MJ_m2_d: number,
  sigma_MJ_K4_m2_d: number,
): number {
  const max_K2 = (airMax_C + 273.16) * (airMax_C + 273.16);
  const min_K2 = (airMin_C + 273.16) * (airMin_C + 273.16);
  const ratio = solar_MJ_m2_d / clearSky_MJ_m2_d;
  // Written so that 0/0 (polar night) falls to the lower end.
  const clear = ratio > 0.3 ? Math.min(ratio, 1) : 0.3;
  const black = (sigma_MJ_K4_m2_d * (max_K2 * max_K2 + min_K2 * min_K2)) / 2;
  return black * (0.34 - 0.14 * Math.sqrt(vapour_kPa)) * (1.35 * clear - 0.35);
}

export type DailyParts = {
  readonly slope_kPa_per_C: number;
  readonly psychrometric_kPa_per_C: number;
  readonly saturation_kPa: number;
  readonly extraterrestrial_MJ_m2_d: number;
  readonly clearSky_MJ_m2_d: number;
  readonly netRadiation_MJ_m2_d: number;
  readonly light_mm_d: number;
  readonly dryAir_mm_d: number;
};

/**
 * The daily formula with everything on the way to it.
 *
 * @source FAO56 eq. 6
 */
export function dailyParts(
  surface: DailySurface,
  airMax_C: number,
  airMin_C: number,
  vapour_kPa: number,
  solar_MJ_m2_d: number,
  wind2m_m_s: number,
  latitude_rad: number,
  elevation_m: number,
  dayOfYear_d: number,
  soilHeat_MJ_m2_d: number,
): DailyParts {
  const mean_C = (airMax_C + airMin_C) / 2;
  const slope = slopeFrom_kPa_per_C(saturation_kPa(mean_C), mean_C);
  const psychrometric = gamma_kPa_per_C(pressure_kPa(elevation_m));
  const saturation = (saturation_kPa(airMax_C) + saturation_kPa(airMin_C)) / 2;
  const extraterrestrial = extraterrestrial_MJ_m2_d(latitude_rad, dayOfYear_d);
  const clearSky = (0.75 + 2e-5 * elevation_m) * extraterrestrial;
  const longwave = netLongwaveLoss_MJ_m2_d(
    airMax_C,
    airMin_C,
    vapour_kPa,
    solar_MJ_m2_d,
    clearSky,
    surface.sigma_MJ_K4_m2_d,
  );
  const net = 0.77 * solar_MJ_m2_d - longwave;
  const denominator = slope + psychrometric * (1 + surface.denominator * wind2m_m_s);
  const dryAir =
    (psychrometric * surface.numerator * wind2m_m_s * (saturation - vapour_kPa)) / (mean_C + 273);
  return {
    slope_kPa_per_C: slope,
    psychrometric_kPa_per_C: psychrometric,
    saturation_kPa: saturation,
    extraterrestrial_MJ_m2_d: extraterrestrial,
    clearSky_MJ_m2_d: clearSky,
    netRadiation_MJ_m2_d: net,
    light_mm_d: (0.408 * slope * (net - soilHeat_MJ_m2_d)) / denominator,
    dryAir_mm_d: dryAir / denominator,
  };
}

/**
 * The same as a single number, from what a site and day already fix: what the array kernel and the checked scalar run.
 *
 * @source FAO56 eq. 6
 */
export function dailyEt_mm_d(
  surface: DailySurface,
  airMax_C: number,
  airMin_C: number,
  vapour_kPa: number,
  solar_MJ_m2_d: number,
  wind2m_m_s: number,
  gamma_kPa_per_C: number,
  clearSky_MJ_m2_d: number,
  soilHeat_MJ_m2_d: number,
): number {
  const mean_C = (airMax_C + airMin_C) / 2;
  const slope = slopeFrom_kPa_per_C(saturation_kPa(mean_C), mean_C);
  const saturation = (saturation_kPa(airMax_C) + saturation_kPa(airMin_C)) / 2;
  const net =
    0.77 * solar_MJ_m2_d -
    netLongwaveLoss_MJ_m2_d(
      airMax_C,
      airMin_C,
      vapour_kPa,
      solar_MJ_m2_d,
      clearSky_MJ_m2_d,
      surface.sigma_MJ_K4_m2_d,
    );
  const dryAir =
    (gamma_kPa_per_C * surface.numerator * wind2m_m_s * (saturation - vapour_kPa)) / (mean_C + 273);
  const top = 0.408 * slope * (net - soilHeat_MJ_m2_d) + dryAir;
  return Math.max(0, top / (slope + gamma_kPa_per_C * (1 + surface.denominator * wind2m_m_s)));
}
