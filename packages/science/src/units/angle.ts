import { within } from "../errors/index.ts";
import { rad_per_deg } from "../units.ts";

/**
 * Degrees, minutes and seconds of arc to decimal degrees.
 *
 * @param input whole degrees 0 to 180, minutes and seconds 0 to 60, and whether north or east (else south or west)
 * @returns angle [°], south and west negative
 * @throws QuantityError outside those ranges
 * @source FAO56 eq. 22
 * @example decimalDegrees_deg({ degrees_deg: 22, minutes_n: 54, seconds_n: 0, northOrEast: false }) // -22.9
 */
export function decimalDegrees_deg(input: {
  readonly degrees_deg: number;
  readonly minutes_n: number;
  readonly seconds_n?: number;
  readonly northOrEast: boolean;
}): number {
  const { degrees_deg, minutes_n, seconds_n = 0, northOrEast } = input;
  within("degrees_deg", degrees_deg, 0, 180);
  within("minutes_n", minutes_n, 0, 60);
  within("seconds_n", seconds_n, 0, 60);
  const angle = degrees_deg + minutes_n / 60 + seconds_n / 3600;
  return northOrEast ? angle : -angle;
}

/**
 * Degrees to radians.
 *
 * @param angle_deg angle [°], -360 to 360
 * @returns angle [rad]
 * @throws QuantityError outside that range
 * @source FAO56 eq. 22
 * @example radians_rad(180) // 3.14159
 */
export function radians_rad(angle_deg: number): number {
  within("angle_deg", angle_deg, -360, 360);
  return angle_deg * rad_per_deg;
}
