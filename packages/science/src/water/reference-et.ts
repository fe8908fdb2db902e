import { gamma_kPa_per_C, pressure_kPa } from "../air/kernel.ts";
import { within } from "../errors/index.ts";
import { extraterrestrial_MJ_m2_d, extraterrestrialOf_MJ_m2_d } from "../sun/kernel.ts";
import { rad_per_deg } from "../units.ts";
import {
  asceShort,
  asceTall,
  type DailySurface,
  dailyEt_mm_d,
  dailyParts,
  faoGrass,
} from "./penman-monteith.ts";

/** The weather of one day at one site. */
export type ReferenceDay = {
  readonly airMax_C: number;
  readonly airMin_C: number;
  readonly vapourPressure_kPa: number;
  readonly solar_MJ_m2_d: number;
  readonly wind2m_m_s: number;
  readonly latitude_deg: number;
  readonly elevation_m: number;
  readonly dayOfYear_d: number;
  readonly soilHeat_MJ_m2_d?: number;
};

function checkDay(day: ReferenceDay): void {
  within("airMin_C", day.airMin_C, -40, 60);
  within("airMax_C", day.airMax_C, -40, 60);
  within("airMax_C", day.airMax_C, day.airMin_C, 60);
  within("vapourPressure_kPa", day.vapourPressure_kPa, 0, 20);
  within("solar_MJ_m2_d", day.solar_MJ_m2_d, 0, 50);
  within("wind2m_m_s", day.wind2m_m_s, 0, 40);
  within("latitude_deg", day.latitude_deg, -90, 90);
  within("elevation_m", day.elevation_m, -430, 6000);
  within("dayOfYear_d", day.dayOfYear_d, 1, 366);
  if (day.soilHeat_MJ_m2_d !== undefined) within("soilHeat_MJ_m2_d", day.soilHeat_MJ_m2_d, -10, 10);
}

function etOver(surface: DailySurface, day: ReferenceDay): number {
  const above_MJ_m2_d = extraterrestrial_MJ_m2_d(day.latitude_deg * rad_per_deg, day.dayOfYear_d);
  return dailyEt_mm_d(
    surface,
    day.airMax_C,
    day.airMin_C,
    day.vapourPressure_kPa,
    day.solar_MJ_m2_d,
    day.wind2m_m_s,
    gamma_kPa_per_C(pressure_kPa(day.elevation_m)),
    (0.75 + 2e-5 * day.elevation_m) * above_MJ_m2_d,
    day.soilHeat_MJ_m2_d ?? 0,
  );
}

/**
 * Reference evapotranspiration of a day: what a well-watered sward outdoors would use (FAO-56 Penman-Monteith).
 *
 * ETo = [0.408 Δ (Rn − G) + γ 900/(T + 273) u2 (es − ea)] / [Δ + γ (1 + 0.34 u2)], T = (Tmax + Tmin)/2, not below 0.
 * Not for rooms, shaded yards (solar must be what arrives at the bench) or air stiller than 0.5 m s⁻¹.
 *
 * @param day highest and lowest air temperature [°C], -40 to 60; vapour pressure [kPa], 0 to 20; solar radiation [MJ m⁻² d⁻¹], 0 to 50; wind at 2 m [m s⁻¹], 0 to 40; latitude [°], -90 to 90; elevation [m], -430 to 6000; day of the year, 1 to 366; heat into the ground [MJ m⁻² d⁻¹], -10 to 10, 0 unless given
 * @returns depth of water [mm d⁻¹]
 * @throws QuantityError outside those ranges
 * @source FAO56 eq. 6
 * @see checks/air-water.json 047, 048, 052, 056
 * @example referenceEtDaily_mm_d({ airMax_C: 21.5, airMin_C: 12.3, vapourPressure_kPa: 1.4086, solar_MJ_m2_d: 22.07, wind2m_m_s: 2.078, latitude_deg: 50.8, elevation_m: 100, dayOfYear_d: 187 }) // 3.88
 */
export function referenceEtDaily_mm_d(day: ReferenceDay): number {
  checkDay(day);
  return etOver(faoGrass, day);
}

/**
 * The same with everything on the way: what the grower sees behind the number.
 *
 * light share = 0.408 Δ (Rn − G)/den, dry-air share = the rest; they add up to ETo unless that was held at 0
 *
 * @param day as for the daily reference evapotranspiration
 * @returns ETo and its two shares [mm d⁻¹], slope and psychrometric constant [kPa °C⁻¹], saturation and deficit [kPa], radiation terms [MJ m⁻² d⁻¹]
 * @throws QuantityError as for the daily reference evapotranspiration
 * @source FAO56 eq. 6, split as in ZotarelliAE459
 * @see checks/air-water.json 048, 049
 * @example referenceEtWorking({ airMax_C: 21.5, airMin_C: 12.3, vapourPressure_kPa: 1.4086, solar_MJ_m2_d: 22.07, wind2m_m_s: 2.078, latitude_deg: 50.8, elevation_m: 100, dayOfYear_d: 187 }).light_mm_d // 2.807
 */
export function referenceEtWorking(day: ReferenceDay): {
  readonly referenceEt_mm_d: number;
  readonly light_mm_d: number;
  readonly dryAir_mm_d: number;
  readonly slope_kPa_per_C: number;
  readonly psychrometric_kPa_per_C: number;
  readonly saturation_kPa: number;
  readonly deficit_kPa: number;
  readonly extraterrestrial_MJ_m2_d: number;
  readonly clearSky_MJ_m2_d: number;
  readonly netRadiation_MJ_m2_d: number;
} {
  checkDay(day);
  const parts = dailyParts(
    faoGrass,
    day.airMax_C,
    day.airMin_C,
    day.vapourPressure_kPa,
    day.solar_MJ_m2_d,
    day.wind2m_m_s,
    day.latitude_deg * rad_per_deg,
    day.elevation_m,
    day.dayOfYear_d,
    day.soilHeat_MJ_m2_d ?? 0,
  );
  return {
    referenceEt_mm_d: Math.max(0, parts.light_mm_d + parts.dryAir_mm_d),
    deficit_kPa: parts.saturation_kPa - day.vapourPressure_kPa,
    ...parts,
  };
}

/**
 * Standardised reference evapotranspiration of a day over a short (clipped grass) or tall (alfalfa) surface.
 *
 * [0.408 Δ (Rn − G) + γ Cn/(T + 273) u2 (es − ea)] / [Δ + γ (1 + Cd u2)], Cn/Cd 900/0.34 short, 1600/0.38 tall
 *
 * @param day as for the daily reference evapotranspiration, and the surface
 * @returns depth of water [mm d⁻¹]
 * @throws QuantityError as for the daily reference evapotranspiration
 * @source ASCE2005 eq. 1
 * @see checks/air-water.json 057-066, 082
 * @example standardisedEtDaily_mm_d({ surface: "tall", airMax_C: 32.4, airMin_C: 10.9, vapourPressure_kPa: 1.27, solar_MJ_m2_d: 22.4, wind2m_m_s: 1.787, latitude_deg: 40.41, elevation_m: 1462.4, dayOfYear_d: 183 }) // 7.32
 */
export function standardisedEtDaily_mm_d(day: ReferenceDay & { readonly surface: "short" | "tall" }): number {
  checkDay(day);
  return etOver(day.surface === "tall" ? asceTall : asceShort, day);
}

/**
 * Reference evapotranspiration of many days at one site, into an array of the caller's; nothing is checked.
 *
 * The formula of `referenceEtDaily_mm_d` with G = 0. For years of weather that have been screened once.
 *
 * @param days arrays of equal length, one element a day [day], units as in the scalar function; latitude and elevation of the site
 * @param referenceEt_mm_d where the results go [day]
 * @source FAO56 eq. 6
 */
export function referenceEtDailyArray(
  days: {
    readonly airMax_C: Float64Array;
    readonly airMin_C: Float64Array;
    readonly vapourPressure_kPa: Float64Array;
    readonly solar_MJ_m2_d: Float64Array;
    readonly wind2m_m_s: Float64Array;
    readonly dayOfYear_d: Float64Array;
    readonly latitude_deg: number;
    readonly elevation_m: number;
  },
  referenceEt_mm_d: Float64Array,
): void {
  const { airMax_C, airMin_C, vapourPressure_kPa, solar_MJ_m2_d, wind2m_m_s, dayOfYear_d } = days;
  const latitude_rad = days.latitude_deg * rad_per_deg;
  const latitudeSine = Math.sin(latitude_rad);
  const latitudeCosine = Math.cos(latitude_rad);
  const gamma = gamma_kPa_per_C(pressure_kPa(days.elevation_m));
  const clearShare = 0.75 + 2e-5 * days.elevation_m;
  // The sun repeats itself every year: the clear sky of each calendar day is computed once.
  const clearSkies_MJ_m2_d = new Float64Array(367).fill(Number.NaN);
  const count = referenceEt_mm_d.length;
  for (let i = 0; i < count; i += 1) {
    const dayOfYear = dayOfYear_d[i] as number;
    let clearSky = clearSkies_MJ_m2_d[dayOfYear];
    if (clearSky === undefined || Number.isNaN(clearSky)) {
      clearSky = clearShare * extraterrestrialOf_MJ_m2_d(latitudeSine, latitudeCosine, dayOfYear);
      clearSkies_MJ_m2_d[dayOfYear] = clearSky;
    }
    referenceEt_mm_d[i] = dailyEt_mm_d(
      faoGrass,
      airMax_C[i] as number,
      airMin_C[i] as number,
      vapourPressure_kPa[i] as number,
      solar_MJ_m2_d[i] as number,
      wind2m_m_s[i] as number,
      gamma,
      clearSky,
      0,
    );
  }
}
