import { within } from "../errors/index.ts";
import { evaporation_mm_per_MJ_m2 } from "../units.ts";
import { faoGrass, netLongwaveLoss_MJ_m2_d } from "./penman-monteith.ts";

/**
 * Depth of water that an amount of heat can evaporate.
 *
 * 0.408 mm per MJ m⁻²
 *
 * @param energy_MJ_m2 energy [MJ m⁻²], -50 to 50
 * @returns depth [mm] in the period of the input
 * @throws QuantityError outside that range
 * @source FAO56 eq. 20
 * @see checks/air-water.json 001, 033
 * @example evaporationEquivalent_mm(12) // 4.896
 */
export function evaporationEquivalent_mm(energy_MJ_m2: number): number {
  within("energy_MJ_m2", energy_MJ_m2, -50, 50);
  return evaporation_mm_per_MJ_m2 * energy_MJ_m2;
}

/**
 * Short-wave radiation that a surface keeps.
 *
 * Rns = (1 − α) Rs
 *
 * @param surface solar radiation [MJ m⁻²], 0 to 50; albedo, 0 to 1 (0.23, the reference crop, unless given)
 * @returns radiation in the period of the input [MJ m⁻²]
 * @throws QuantityError outside those ranges
 * @source FAO56 eq. 38
 * @see checks/air-water.json 032, 055
 * @example netShortwave_MJ_m2({ solar_MJ_m2: 14.5 }) // 11.165
 */
export function netShortwave_MJ_m2(surface: {
  readonly solar_MJ_m2: number;
  readonly albedo?: number;
}): number {
  const { solar_MJ_m2, albedo = 0.23 } = surface;
  within("solar_MJ_m2", solar_MJ_m2, 0, 50);
  within("albedo", albedo, 0, 1);
  return (1 - albedo) * solar_MJ_m2;
}

/**
 * Long-wave radiation that a surface loses in a day.
 *
 * Rnl = 4.903·10⁻⁹ ½[(Tmax + 273.16)⁴ + (Tmin + 273.16)⁴] (0.34 − 0.14 √ea) (1.35 q − 0.35), q = Rs/Rso held to 0.3..1
 *
 * @param day highest and lowest temperature [°C], -40 to 60; vapour pressure [kPa], 0 to 20; solar and clear-sky radiation [MJ m⁻² d⁻¹], 0 to 50
 * @returns radiation lost [MJ m⁻² d⁻¹]
 * @throws QuantityError outside those ranges
 * @source FAO56 eq. 39
 * @see checks/air-water.json 031, 055, 057
 * @example netLongwave_MJ_m2_d({ airMax_C: 25.1, airMin_C: 19.1, vapourPressure_kPa: 2.1, solar_MJ_m2_d: 14.5, clearSky_MJ_m2_d: 18.8 }) // 3.534
 */
export function netLongwave_MJ_m2_d(day: {
  readonly airMax_C: number;
  readonly airMin_C: number;
  readonly vapourPressure_kPa: number;
  readonly solar_MJ_m2_d: number;
  readonly clearSky_MJ_m2_d: number;
}): number {
  const { airMax_C, airMin_C, vapourPressure_kPa, solar_MJ_m2_d, clearSky_MJ_m2_d } = day;
  within("airMin_C", airMin_C, -40, 60);
  within("airMax_C", airMax_C, -40, 60);
  within("airMax_C", airMax_C, airMin_C, 60);
  within("vapourPressure_kPa", vapourPressure_kPa, 0, 20);
  within("solar_MJ_m2_d", solar_MJ_m2_d, 0, 50);
  within("clearSky_MJ_m2_d", clearSky_MJ_m2_d, 0, 50);
  return netLongwaveLoss_MJ_m2_d(
    airMax_C,
    airMin_C,
    vapourPressure_kPa,
    solar_MJ_m2_d,
    clearSky_MJ_m2_d,
    faoGrass.sigma_MJ_K4_m2_d,
  );
}

/**
 * Heat going into the ground over a month, from mean temperatures; over a single day it counts as 0.
 *
 * G = 0.07 (T next − T previous), or 0.14 (T this − T previous) when the next month is not known yet
 *
 * @param months mean temperature of the month before [°C], and of the month after or of this month, -40 to 60; whether the second is the month after
 * @returns heat flux [MJ m⁻² d⁻¹], positive while the ground warms
 * @throws QuantityError outside those ranges
 * @source FAO56 eqs 43 and 44
 * @see checks/air-water.json 033, 047
 * @example soilHeatOfMonth_MJ_m2_d({ previousMonth_C: 14.1, laterMonth_C: 18.8, laterIsNext: true }) // 0.329
 */
export function soilHeatOfMonth_MJ_m2_d(months: {
  readonly previousMonth_C: number;
  readonly laterMonth_C: number;
  readonly laterIsNext: boolean;
}): number {
  within("previousMonth_C", months.previousMonth_C, -40, 60);
  within("laterMonth_C", months.laterMonth_C, -40, 60);
  return (months.laterIsNext ? 0.07 : 0.14) * (months.laterMonth_C - months.previousMonth_C);
}
