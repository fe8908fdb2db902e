import { within } from "../errors/index.ts";
import { rad_per_deg } from "../units.ts";

/** Below this elevation a direct beam is a small difference over a small sine, and is taken as none (sheet of the field). */
export const lowestBeam_deg = 3;
/** Least sine of the elevation that the clearness is divided by, so that a low sun gives no absurd clearness. */
const leastSine = 0.065;
const lowestBeamSine = Math.sin(lowestBeam_deg * rad_per_deg);

/** Erbs, for callers that have checked their arguments. Not exported by the field. */
export const erbs_frac = (kt: number): number => {
  if (kt <= 0.22) return 1 - 0.09 * kt;
  if (kt > 0.8) return 0.165;
  return 0.9511 + kt * (-0.1604 + kt * (4.388 + kt * (-16.638 + 12.336 * kt)));
};

/** Clearness of an hour from the sine of the elevation. Not exported by the field. */
export const clearnessOf_frac = (global_W_m2: number, sine: number, normal_W_m2: number): number =>
  global_W_m2 / (normal_W_m2 * Math.max(sine, leastSine));

/** Direct radiation on a surface that faces the sun. Not exported by the field. */
export const beamOf_W_m2 = (global_W_m2: number, diffuse_W_m2: number, sine: number): number =>
  sine < lowestBeamSine ? 0 : Math.max(0, (global_W_m2 - diffuse_W_m2) / sine);

/**
 * Share of an hour's global radiation that comes from the sky, not straight from the sun (Erbs, Klein and Duffie).
 *
 * kt ≤ 0.22: 1 − 0.09 kt; ≤ 0.80: 0.9511 − 0.1604 kt + 4.388 kt² − 16.638 kt³ + 12.336 kt⁴; else 0.165. For HOURLY means
 *
 * @param hourClearness_frac global radiation over that above the air, of the hour, 0 to 1.5
 * @returns share, 0.165 to 1
 * @throws QuantityError outside that range
 * @source Erbs1982 eq. 1
 * @see checks/sun-light.json 058-061
 * @example diffuseShare_frac(0.5) // 0.6591
 */
export function diffuseShare_frac(hourClearness_frac: number): number {
  within("hourClearness_frac", hourClearness_frac, 0, 1.5);
  return erbs_frac(hourClearness_frac);
}

/**
 * Split of an hour's global radiation into sky light and direct beam.
 *
 * kt = GHI / (E0 max(sin a, 0.065)); DHI = kd(kt) GHI; DNI = (GHI − DHI) / sin a, none below 3° of elevation
 *
 * @param hour global radiation, mean of the hour [W m⁻²], 0 to 1500; true elevation of the sun at mid-hour [°], -90 to 90; radiation above the air facing the sun [W m⁻²], 1250 to 1450
 * @returns clearness of the hour; diffuse radiation on level ground and direct radiation facing the sun [W m⁻²]
 * @throws QuantityError outside those ranges
 * @source Erbs1982 eq. 1
 * @see checks/sun-light.json 055, 056
 * @example diffuseSplit({ hourGlobal_W_m2: 1000, elevation_deg: 80, normalExtraterrestrial_W_m2: 1414.0 }).diffuse_W_m2 // 217.9
 */
export function diffuseSplit(hour: {
  readonly hourGlobal_W_m2: number;
  readonly elevation_deg: number;
  readonly normalExtraterrestrial_W_m2: number;
}): {
  readonly hourClearness_frac: number;
  readonly diffuse_W_m2: number;
  readonly direct_W_m2: number;
} {
  const { hourGlobal_W_m2, elevation_deg, normalExtraterrestrial_W_m2 } = hour;
  within("hourGlobal_W_m2", hourGlobal_W_m2, 0, 1500);
  within("elevation_deg", elevation_deg, -90, 90);
  within("normalExtraterrestrial_W_m2", normalExtraterrestrial_W_m2, 1250, 1450);
  const sine = Math.sin(elevation_deg * rad_per_deg);
  const hourClearness_frac = clearnessOf_frac(hourGlobal_W_m2, sine, normalExtraterrestrial_W_m2);
  const diffuse_W_m2 = erbs_frac(hourClearness_frac) * hourGlobal_W_m2;
  return { hourClearness_frac, diffuse_W_m2, direct_W_m2: beamOf_W_m2(hourGlobal_W_m2, diffuse_W_m2, sine) };
}
