import { within } from "../errors/index.ts";
import * as kernel from "./kernel.ts";

/**
 * Seasonal correction between clock and sun (equation of time).
 *
 * b = 2π (J − 81) / 364; Sc = 0.1645 sin 2b − 0.1255 cos b − 0.025 sin b
 *
 * @param dayOfYear_d day of the year, 1 to 366
 * @returns correction [h], about -0.24 to 0.27
 * @throws QuantityError outside that range
 * @source FAO56 eqs 32 and 33
 * @example seasonalCorrection_h(274) // 0.1889
 */
export function seasonalCorrection_h(dayOfYear_d: number): number {
  within("dayOfYear_d", dayOfYear_d, 1, 366);
  const b = (2 * Math.PI * (dayOfYear_d - 81)) / 364;
  return 0.1645 * Math.sin(2 * b) - 0.1255 * Math.cos(b) - 0.025 * Math.sin(b);
}

/**
 * Hour angle of the sun at a moment of standard clock time.
 *
 * ω = (π/12) (t + (Lm − Lz)/15 + Sc − 12), here with east positive. FAO-56 counts west positive and rounds 1/15 to
 * 0.06667; mixing the signs is the commonest slip of this formula.
 *
 * @param moment standard clock time without summer time [h], 0 to 24; longitude and meridian of the zone [°], -180 to 180, east positive; day of the year, 1 to 366
 * @returns angle [rad], 0 at solar noon, afternoon positive
 * @throws QuantityError outside those ranges
 * @source FAO56 eq. 31
 * @see checks/air-water.json 050, 051
 * @example solarHourAngle_rad({ standardClock_h: 14.5, longitude_deg: -16.25, zoneMeridian_deg: -15, dayOfYear_d: 274 }) // 0.682
 */
export function solarHourAngle_rad(moment: {
  readonly standardClock_h: number;
  readonly longitude_deg: number;
  readonly zoneMeridian_deg: number;
  readonly dayOfYear_d: number;
}): number {
  const { standardClock_h, longitude_deg, zoneMeridian_deg, dayOfYear_d } = moment;
  within("standardClock_h", standardClock_h, 0, 24);
  within("longitude_deg", longitude_deg, -180, 180);
  within("zoneMeridian_deg", zoneMeridian_deg, -180, 180);
  const sunTime =
    standardClock_h + 0.06667 * (longitude_deg - zoneMeridian_deg) + seasonalCorrection_h(dayOfYear_d);
  return (Math.PI / 12) * (sunTime - 12);
}

// A zone far from its meridian can put the sun's clock past midnight; the day is a circle.
const onCircle = (angle: number): number => angle - 2 * Math.PI * Math.round(angle / (2 * Math.PI));

/**
 * Height of the sun above a level horizon, without refraction.
 *
 * sin β = sin φ sin δ + cos φ cos δ cos ω
 *
 * @param moment latitude [°], -90 to 90; day of the year, 1 to 366; hour angle [rad], -7 to 7
 * @returns angle [rad], negative below the horizon
 * @throws QuantityError outside those ranges
 * @source ASCE2005 eq. 62
 * @example sunElevation_rad({ latitude_deg: 40.41, dayOfYear_d: 183, hourAngle_rad: 0 }) // 1.267
 */
export function sunElevation_rad(moment: {
  readonly latitude_deg: number;
  readonly dayOfYear_d: number;
  readonly hourAngle_rad: number;
}): number {
  const { latitude_deg, dayOfYear_d, hourAngle_rad } = moment;
  within("latitude_deg", latitude_deg, -90, 90);
  within("dayOfYear_d", dayOfYear_d, 1, 366);
  within("hourAngle_rad", hourAngle_rad, -7, 7);
  const latitude = kernel.radiansOf_rad(latitude_deg);
  const declination = kernel.declination_rad(dayOfYear_d);
  const sine =
    Math.sin(latitude) * Math.sin(declination) +
    Math.cos(latitude) * Math.cos(declination) * Math.cos(hourAngle_rad);
  return Math.asin(Math.max(-1, Math.min(1, sine)));
}

/**
 * Solar radiation of a period of up to a day on a level surface above the air.
 *
 * Ra = (720/π) 0.0820 dr ((ω2 − ω1) sin φ sin δ + cos φ cos δ (sin ω2 − sin ω1)), ω1 and ω2 clamped to ±ωs
 *
 * @param period latitude [°], -90 to 90; day of the year, 1 to 366; hour angle at mid-period [rad], -7 to 7; length [h], 0.1 to 24
 * @returns radiation of the period [MJ m⁻²], per hour when the period is an hour; 0 at night
 * @throws QuantityError outside those ranges
 * @source FAO56 eq. 28
 * @see checks/air-water.json 051, 070-081
 * @example hourlyExtraterrestrialRadiation_MJ_m2({ latitude_deg: 16.2167, dayOfYear_d: 274, hourAngle_rad: 0.682 }) // 3.54
 */
export function hourlyExtraterrestrialRadiation_MJ_m2(period: {
  readonly latitude_deg: number;
  readonly dayOfYear_d: number;
  readonly hourAngle_rad: number;
  readonly length_h?: number;
}): number {
  const { latitude_deg, dayOfYear_d, hourAngle_rad, length_h = 1 } = period;
  within("latitude_deg", latitude_deg, -90, 90);
  within("dayOfYear_d", dayOfYear_d, 1, 366);
  within("hourAngle_rad", hourAngle_rad, -7, 7);
  within("length_h", length_h, 0.1, 24);
  const latitude = kernel.radiansOf_rad(latitude_deg);
  const declination = kernel.declination_rad(dayOfYear_d);
  const sunset = kernel.sunsetAngle_rad(latitude, declination);
  const middle = onCircle(hourAngle_rad);
  const half = (Math.PI * length_h) / 24;
  const start = Math.max(-sunset, Math.min(sunset, middle - half));
  const end = Math.max(-sunset, Math.min(sunset, middle + half));
  const vertical = (end - start) * Math.sin(latitude) * Math.sin(declination);
  const crosswise = Math.cos(latitude) * Math.cos(declination) * (Math.sin(end) - Math.sin(start));
  return Math.max(0, (720 / Math.PI) * 0.082 * kernel.distanceFactor(dayOfYear_d) * (vertical + crosswise));
}
