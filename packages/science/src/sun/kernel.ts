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

/**
 * FAO-56 eq. 21, Gsc = 0.0820 MJ m⁻² min⁻¹. Cosines that follow from a sine already at hand are taken by the root: the
 * declination stays within ±90° and the sunset angle within 0..180°, where that is exact, and trigonometry is the
 * greater part of the cost of a day of reference ET.
 */
export const extraterrestrial_MJ_m2_d = (latitude_rad: number, dayOfYear_d: number): number =>
  extraterrestrialOf_MJ_m2_d(Math.sin(latitude_rad), Math.cos(latitude_rad), dayOfYear_d);

/** The same from the sine and cosine of the latitude, for many days at one site. */
export const extraterrestrialOf_MJ_m2_d = (
  latitudeSine: number,
  latitudeCosine: number,
  dayOfYear_d: number,
): number => {
  const sine = Math.sin(declination_rad(dayOfYear_d));
  const vertical = latitudeSine * sine;
  const crosswise = latitudeCosine * Math.sqrt(1 - sine * sine);
  const sunsetCosine = Math.max(-1, Math.min(1, -vertical / crosswise));
  const sunset = Math.acos(sunsetCosine) * vertical + crosswise * Math.sqrt(1 - sunsetCosine * sunsetCosine);
  return Math.max(0, (1440 / Math.PI) * 0.082 * distanceFactor(dayOfYear_d) * sunset);
};

export const radiansOf_rad = (angle_deg: number): number => angle_deg * rad_per_deg;
