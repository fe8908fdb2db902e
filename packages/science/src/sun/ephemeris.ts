import { within } from "../errors/index.ts";
import { rad_per_deg } from "../units.ts";

/** 1900-01-01 and 2101-01-01, the years for which the short series below are good to about 0.01°. */
export const firstInstant_ms = -2_208_988_800_000;
export const lastInstant_ms = 4_133_980_800_000;

/** Where the sun stands among the stars, for callers that have checked the instant: radians, minutes, and 1 for its mean distance. */
export type SunOrbit = {
  readonly declination_rad: number;
  readonly equationOfTime_min: number;
  readonly distanceRatio: number;
};

const julianDayOf_d = (instant_ms: number): number => instant_ms / 86_400_000 + 2_440_587.5;

/** The bare series, Meeus 1998 chapters 22, 25 and 28 as the NOAA solar calculator uses them. Not exported by the field. */
export const sunOrbit = (instant_ms: number): SunOrbit => {
  const t = (julianDayOf_d(instant_ms) - 2_451_545) / 36_525;
  const meanLongitude = (280.46646 + t * (36_000.76983 + 0.0003032 * t)) * rad_per_deg;
  const anomaly = (357.52911 + t * (35_999.05029 - 0.0001537 * t)) * rad_per_deg;
  const eccentricity = 0.016708634 - t * (0.000042037 + 1.267e-7 * t);
  const centre =
    (Math.sin(anomaly) * (1.914602 - t * (0.004817 + 0.000014 * t)) +
      Math.sin(2 * anomaly) * (0.019993 - 0.000101 * t) +
      Math.sin(3 * anomaly) * 0.000289) *
    rad_per_deg;
  const node = (125.04 - 1934.136 * t) * rad_per_deg;
  const longitude = meanLongitude + centre - (0.00569 + 0.00478 * Math.sin(node)) * rad_per_deg;
  const obliquity =
    (23 +
      (26 + (21.448 - t * (46.815 + t * (0.00059 - 0.001813 * t))) / 60) / 60 +
      0.00256 * Math.cos(node)) *
    rad_per_deg;
  const y = Math.tan(obliquity / 2) ** 2;
  const clock =
    y * Math.sin(2 * meanLongitude) -
    2 * eccentricity * Math.sin(anomaly) +
    4 * eccentricity * y * Math.sin(anomaly) * Math.cos(2 * meanLongitude) -
    0.5 * y * y * Math.sin(4 * meanLongitude) -
    1.25 * eccentricity * eccentricity * Math.sin(2 * anomaly);
  return {
    declination_rad: Math.asin(Math.sin(obliquity) * Math.sin(longitude)),
    equationOfTime_min: (4 * clock) / rad_per_deg,
    distanceRatio:
      (1.000001018 * (1 - eccentricity * eccentricity)) / (1 + eccentricity * Math.cos(anomaly + centre)),
  };
};

/** Hour angle of the sun [rad], afternoon positive, -π to π. */
export const hourAngleOf_rad = (
  instant_ms: number,
  longitude_deg: number,
  equationOfTime_min: number,
): number => {
  const minutes = instant_ms / 60_000 + equationOfTime_min + 4 * longitude_deg;
  const ofDay = minutes - 1440 * Math.floor(minutes / 1440);
  return (ofDay / 4 - 180) * rad_per_deg;
};

/**
 * Julian day of an instant: days since noon of 1 January 4713 BC, universal time.
 *
 * JD = ms / 86 400 000 + 2 440 587.5
 *
 * @param instant_ms instant [ms] since 1970-01-01T00:00Z, years 1900 to 2100
 * @returns days [d] with fraction
 * @throws QuantityError outside those years
 * @source Meeus1998 chapter 7
 * @see checks/sun-light.json 001
 * @example julianDay_d(1066419030000) // 2452930.312847
 */
export function julianDay_d(instant_ms: number): number {
  within("instant_ms", instant_ms, firstInstant_ms, lastInstant_ms);
  return julianDayOf_d(instant_ms);
}

/**
 * Declination and distance of the sun and the equation of time at an instant.
 *
 * Low-precision series of the sun's longitude after Meeus; declination good to about 0.01°, the equation of time to 2 s.
 *
 * @param instant_ms instant [ms] since 1970-01-01T00:00Z, years 1900 to 2100
 * @returns declination [°], north positive; equation of time [min], positive when the sun is ahead of the clock; distance ratio, 1 at the mean distance (1 AU)
 * @throws QuantityError outside those years
 * @source NoaaSolar; Meeus1998 chapters 22, 25, 28
 * @see checks/sun-light.json 006
 * @example sunCoordinates(1066419030000).distanceRatio // 0.99654
 */
export function sunCoordinates(instant_ms: number): {
  readonly declination_deg: number;
  readonly equationOfTime_min: number;
  readonly distanceRatio: number;
} {
  within("instant_ms", instant_ms, firstInstant_ms, lastInstant_ms);
  const { declination_rad, equationOfTime_min, distanceRatio } = sunOrbit(instant_ms);
  return { declination_deg: declination_rad / rad_per_deg, equationOfTime_min, distanceRatio };
}
