// The bare formulas, for callers that have already checked their arguments. Not exported by the field.

/** Tetens form over water, FAO-56 eq. 11. */
export const saturation_kPa = (air_C: number): number => 0.6108 * Math.exp((17.27 * air_C) / (air_C + 237.3));

/** Slope of the above, FAO-56 eq. 13; takes the pressure so that the exponential is not computed twice. */
export const slopeFrom_kPa_per_C = (saturated_kPa: number, air_C: number): number =>
  (4098 * saturated_kPa) / ((air_C + 237.3) * (air_C + 237.3));

/** FAO-56 eq. 7; the power is written as exp and ln, which the engine runs in half the time. */
export const pressure_kPa = (elevation_m: number): number =>
  101.3 * Math.exp(5.26 * Math.log((293 - 0.0065 * elevation_m) / 293));

/** FAO-56 eq. 8 with the rounded factor that its examples use. */
export const gamma_kPa_per_C = (air_kPa: number): number => 0.000665 * air_kPa;
