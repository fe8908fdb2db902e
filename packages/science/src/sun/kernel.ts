import { rad_per_deg } from "../units.ts";

// The bare formulas, for callers that have already checked their arguments. Not exported by the field.

/** Inverse relative distance to the sun, squared; FAO-56 eq. 23. J counts 1 to 366 and is divided by 365 always. */
export const distanceFactor = (dayOfYear_d: number): number =>
  1 + 0.033 * Math.cos((2 * Math.PI * dayOfYear_d) / 365);

/** FAO-56 eq. 24. */
export const declination_rad = (dayOfYear_d: number): number =>
  0.409 * Math.sin((2 * Math.PI * dayOfYear_d) / 365 - 1.39);

/** FAO-56 eq. 25; the clamp makes polar day and polar night ends of the scale instead of NaN. */
export const sunsetAngle_rad = (latitude_rad: number, sun_rad: number): number =>
  Math.acos(Math.max(-1, Math.min(1, -Math.tan(latitude_rad) * Math.tan(sun_rad))));

/** FAO-56 eq. 21, Gsc = 0.0820 MJ m⁻² min⁻¹. */
export const extraterrestrial_MJ_m2_d = (latitude_rad: number, dayOfYear_d: number): number => {
  const declination = declination_rad(dayOfYear_d);
  const sunset = sunsetAngle_rad(latitude_rad, declination);
  const vertical = sunset * Math.sin(latitude_rad) * Math.sin(declination);
  const crosswise = Math.cos(latitude_rad) * Math.cos(declination) * Math.sin(sunset);
  return Math.max(0, (1440 / Math.PI) * 0.082 * distanceFactor(dayOfYear_d) * (vertical + crosswise));
};

export const radiansOf_rad = (angle_deg: number): number => angle_deg * rad_per_deg;
