import { within } from "../errors/index.ts";
import { rad_per_deg } from "../units.ts";
import { firstInstant_ms, lastInstant_ms, sunOrbit } from "./ephemeris.ts";

/** Solar constant in use since about 2011 (Kopp and Lean); from memory. */
export const solarConstant_W_m2 = 1361;

/** Haurwitz, from the sine of the apparent elevation. Not exported by the field. */
export const haurwitz_W_m2 = (sine: number): number => (sine > 0 ? 1098 * sine * Math.exp(-0.059 / sine) : 0);

/**
 * Global radiation under a clear sky at one moment (Haurwitz).
 *
 * GHI = 1098 s exp(−0.059 / s), s the sine of the elevation as seen; needs no turbidity, scatters 5 to 10 %
 *
 * @param apparentElevation_deg elevation of the sun as seen [°], -90 to 90
 * @returns radiation on level ground [W m⁻²], 0 while the sun is down
 * @throws QuantityError outside that range
 * @source Haurwitz1945
 * @see checks/sun-light.json 049-051
 * @example clearSkyGlobal_W_m2(30) // 487.894
 */
export function clearSkyGlobal_W_m2(apparentElevation_deg: number): number {
  within("apparentElevation_deg", apparentElevation_deg, -90, 90);
  return haurwitz_W_m2(Math.sin(apparentElevation_deg * rad_per_deg));
}

/**
 * Solar radiation above the air on a surface that faces the sun, from the day of the year (Spencer).
 *
 * E0 = S0 (1.00011 + 0.034221 cos B + 0.00128 sin B + 0.000719 cos 2B + 0.000077 sin 2B), B = 2π (J − 1) / 365
 *
 * @param day day of the year, 1 to 366; solar constant [W m⁻²], 1300 to 1400, 1361 when left out
 * @returns radiation [W m⁻²]
 * @throws QuantityError outside those ranges
 * @source Spencer1971
 * @see checks/sun-light.json 055, 056
 * @example normalExtraterrestrial_W_m2({ dayOfYear_d: 1, solarConstant_W_m2: 1366.1 }) // 1414.0
 */
export function normalExtraterrestrial_W_m2(day: {
  readonly dayOfYear_d: number;
  readonly solarConstant_W_m2?: number;
}): number {
  within("dayOfYear_d", day.dayOfYear_d, 1, 366);
  const constant = day.solarConstant_W_m2 ?? solarConstant_W_m2;
  within("solarConstant_W_m2", constant, 1300, 1400);
  const b = (2 * Math.PI * (day.dayOfYear_d - 1)) / 365;
  return (
    constant *
    (1.00011 +
      0.034221 * Math.cos(b) +
      0.00128 * Math.sin(b) +
      0.000719 * Math.cos(2 * b) +
      0.000077 * Math.sin(2 * b))
  );
}

/**
 * Solar radiation above the air on a surface that faces the sun, at an instant.
 *
 * E0 = 1361 / R², R the distance of the sun over its mean
 *
 * @param instant_ms instant [ms] since 1970-01-01T00:00Z, years 1900 to 2100
 * @returns radiation [W m⁻²], 1316 in July to 1408 in January
 * @throws QuantityError outside those years
 * @source NoaaSolar
 * @example normalExtraterrestrialAt_W_m2(1066419030000) // 1370.5
 */
export function normalExtraterrestrialAt_W_m2(instant_ms: number): number {
  within("instant_ms", instant_ms, firstInstant_ms, lastInstant_ms);
  return solarConstant_W_m2 / sunOrbit(instant_ms).distanceRatio ** 2;
}
