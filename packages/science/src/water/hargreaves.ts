import { within } from "../errors/index.ts";
import { evaporation_mm_per_MJ_m2 } from "../units.ts";

/**
 * Reference evapotranspiration from temperatures alone; for sums over five days or more.
 *
 * ETo = 0.0023 (Tmean + 17.8) √(Tmax − Tmin) 0.408 Ra, not below 0
 *
 * @param day highest and lowest air temperature [°C], -40 to 60; extraterrestrial radiation [MJ m⁻² d⁻¹], 0 to 50
 * @returns depth of water [mm d⁻¹]
 * @throws QuantityError outside those ranges
 * @source HargreavesSamani1985
 * @see checks/air-water.json 054
 * @example hargreavesEt_mm_d({ airMax_C: 26.6, airMin_C: 14.8, extraterrestrial_MJ_m2_d: 40.55 }) // 5.03
 */
export function hargreavesEt_mm_d(day: {
  readonly airMax_C: number;
  readonly airMin_C: number;
  readonly extraterrestrial_MJ_m2_d: number;
}): number {
  const { airMax_C, airMin_C, extraterrestrial_MJ_m2_d } = day;
  within("airMin_C", airMin_C, -40, 60);
  within("airMax_C", airMax_C, -40, 60);
  within("airMax_C", airMax_C, airMin_C, 60);
  within("extraterrestrial_MJ_m2_d", extraterrestrial_MJ_m2_d, 0, 50);
  const warmth = Math.max(0, (airMax_C + airMin_C) / 2 + 17.8);
  return (
    0.0023 * warmth * Math.sqrt(airMax_C - airMin_C) * evaporation_mm_per_MJ_m2 * extraterrestrial_MJ_m2_d
  );
}
