import { within } from "../errors/index.ts";
import { sunsetHourAngle_rad } from "./geometry.ts";

const sixtyDegrees_rad = Math.PI / 3;

/** Shape of the day before it is scaled: zero before sunrise and after sunset. Not exported by the field. */
export const shapeOfHour = (hourAngle_rad: number, sunset_rad: number, a: number, b: number): number => {
  if (Math.abs(hourAngle_rad) >= sunset_rad) return 0;
  const cosine = Math.cos(hourAngle_rad);
  return (a + b * cosine) * (cosine - Math.cos(sunset_rad));
};

/** Coefficients a' and b' of Collares-Pereira and Rabl. Not exported by the field. */
export const globalCoefficients = (sunset_rad: number): { readonly a: number; readonly b: number } => {
  const sine = Math.sin(sunset_rad - sixtyDegrees_rad);
  return { a: 0.409 + 0.5016 * sine, b: 0.6609 - 0.4767 * sine };
};

const scaled = (shape: number, sunset_rad: number): number =>
  sunset_rad > 0 ? ((Math.PI / 24) * shape) / (Math.sin(sunset_rad) - sunset_rad * Math.cos(sunset_rad)) : 0;

type HourOfDay = { readonly hourAngle_rad: number; readonly sunsetHourAngle_rad: number };

function checked(hour: HourOfDay): HourOfDay {
  within("hourAngle_rad", hour.hourAngle_rad, -Math.PI, Math.PI);
  within("sunsetHourAngle_rad", hour.sunsetHourAngle_rad, 0, Math.PI);
  return hour;
}

/**
 * Share of a day's global radiation that falls in the hour around an hour angle (Collares-Pereira and Rabl).
 *
 * r = (π/24)(a' + b' cos ω)(cos ω − cos ωs)/(sin ωs − ωs cos ωs), a' = 0.409 + 0.5016 sin(ωs − 60°), b' = 0.6609 − 0.4767 sin(ωs − 60°)
 *
 * @param hour hour angle at mid-hour and at sunset [rad], -π to π and 0 to π
 * @returns share per hour; over the day 0.994 to 1.003, so scale the hours to the day
 * @throws QuantityError outside those ranges
 * @source CollaresPereiraRabl1979
 * @example globalOfHour_frac({ hourAngle_rad: 0, sunsetHourAngle_rad: 1.5708 }) // 0.1417
 */
export function globalOfHour_frac(hour: {
  readonly hourAngle_rad: number;
  readonly sunsetHourAngle_rad: number;
}): number {
  const { hourAngle_rad, sunsetHourAngle_rad } = checked(hour);
  const { a, b } = globalCoefficients(sunsetHourAngle_rad);
  return Math.max(0, scaled(shapeOfHour(hourAngle_rad, sunsetHourAngle_rad, a, b), sunsetHourAngle_rad));
}

/**
 * Share of a day's diffuse radiation that falls in the hour around an hour angle (Liu and Jordan).
 *
 * r = (π/24)(cos ω − cos ωs)/(sin ωs − ωs cos ωs)
 *
 * @param hour hour angle at mid-hour and at sunset [rad], -π to π and 0 to π
 * @returns share per hour
 * @throws QuantityError outside those ranges
 * @source LiuJordan1960
 * @example diffuseOfHour_frac({ hourAngle_rad: 0, sunsetHourAngle_rad: 1.5708 }) // 0.1309
 */
export function diffuseOfHour_frac(hour: {
  readonly hourAngle_rad: number;
  readonly sunsetHourAngle_rad: number;
}): number {
  const { hourAngle_rad, sunsetHourAngle_rad } = checked(hour);
  return scaled(shapeOfHour(hourAngle_rad, sunsetHourAngle_rad, 1, 0), sunsetHourAngle_rad);
}

/**
 * A day's global radiation spread over the 24 hours of sun time, scaled so that they add up to the day.
 *
 * @param day latitude [°], -90 to 90; day of the year, 1 to 366; radiation of the day [MJ m⁻² d⁻¹], 0 to 50
 * @returns radiation of each hour of sun time [hour][MJ m⁻² h⁻¹], noon between 11 and 12; all 0 in polar night
 * @throws QuantityError outside those ranges
 * @source CollaresPereiraRabl1979
 * @example hoursOfDay_MJ_m2_h({ latitude_deg: 45, dayOfYear_d: 172, solar_MJ_m2_d: 20 })[12] // 2.269
 */
export function hoursOfDay_MJ_m2_h(day: {
  readonly latitude_deg: number;
  readonly dayOfYear_d: number;
  readonly solar_MJ_m2_d: number;
}): readonly number[] {
  within("solar_MJ_m2_d", day.solar_MJ_m2_d, 0, 50);
  const sunset_rad = sunsetHourAngle_rad(day);
  const { a, b } = globalCoefficients(sunset_rad);
  // Quarters of an hour, so that the hours of sunrise and sunset get their part of it.
  const shapes = Array.from({ length: 24 }, (_, hour) => {
    let sum = 0;
    for (let quarter = 0; quarter < 4; quarter += 1) {
      const hourAngle_rad = (Math.PI / 12) * (hour + (quarter + 0.5) / 4 - 12);
      sum += Math.max(0, shapeOfHour(hourAngle_rad, sunset_rad, a, b));
    }
    return sum;
  });
  const total = shapes.reduce((sum, shape) => sum + shape, 0);
  return shapes.map((shape) => (total > 0 ? (day.solar_MJ_m2_d * shape) / total : 0));
}
