import { within } from "../errors/index.ts";
import { rad_per_deg } from "../units.ts";
import { firstInstant_ms, hourAngleOf_rad, lastInstant_ms, sunOrbit } from "./ephemeris.ts";

/** Elevation [rad] and azimuth [rad, north 0, clockwise, 0 to 2π]; all arguments in radians. */
const horizontalOf_rad = (
  latitude_rad: number,
  declination_rad: number,
  hourAngle_rad: number,
): { readonly elevation_rad: number; readonly azimuth_rad: number } => {
  const sine =
    Math.sin(latitude_rad) * Math.sin(declination_rad) +
    Math.cos(latitude_rad) * Math.cos(declination_rad) * Math.cos(hourAngle_rad);
  // From the south as atan2 gives it; multiplied by cos δ, so that it stays defined when the sun is at a pole.
  const fromSouth = Math.atan2(
    Math.sin(hourAngle_rad) * Math.cos(declination_rad),
    Math.cos(hourAngle_rad) * Math.sin(latitude_rad) * Math.cos(declination_rad) -
      Math.sin(declination_rad) * Math.cos(latitude_rad),
  );
  return {
    elevation_rad: Math.asin(Math.max(-1, Math.min(1, sine))),
    azimuth_rad: (fromSouth + Math.PI) % (2 * Math.PI),
  };
};

/**
 * How far the air lifts the image of the sun, standard air (1013 mbar, 10 °C).
 *
 * Above 85° 0; above 5° 58.1/t − 0.07/t³ + 0.000086/t⁵; above -0.575° 1735 + a(−518.2 + a(103.4 + a(−12.79 + 0.711a)));
 * else −20.774/t; arcseconds, a in degrees, t = tan a
 *
 * @param elevation_deg true elevation of the sun [°], -90 to 90
 * @returns refraction [°], to be added to the true elevation; 0 at the zenith and deep below the horizon
 * @throws QuantityError outside that range
 * @source NoaaSolar
 * @see checks/sun-light.json 003
 * @example atmosphericRefraction_deg(0) // 0.482
 */
export function atmosphericRefraction_deg(elevation_deg: number): number {
  within("elevation_deg", elevation_deg, -90, 90);
  if (elevation_deg > 85 || elevation_deg === -90) return 0;
  const t = Math.tan(elevation_deg * rad_per_deg);
  if (elevation_deg > 5) return (58.1 / t - 0.07 / t ** 3 + 0.000086 / t ** 5) / 3600;
  if (elevation_deg <= -0.575) return -20.774 / t / 3600;
  const a = elevation_deg;
  return (1735 + a * (-518.2 + a * (103.4 + a * (-12.79 + 0.711 * a)))) / 3600;
}

/**
 * Elevation and azimuth of the sun from latitude, declination and hour angle.
 *
 * sin a = sin φ sin δ + cos φ cos δ cos ω; azimuth = 180° + atan2(sin ω, cos ω sin φ − tan δ cos φ)
 *
 * @param moment latitude [°], -90 to 90; declination [°], -23.5 to 23.5; hour angle [°], -180 to 180, afternoon positive
 * @returns true elevation [°], negative below the horizon; azimuth [°] from north, clockwise, 0 to 360. Many books count from south
 * @throws QuantityError outside those ranges
 * @source Meeus1998 chapter 13
 * @see checks/sun-light.json 043
 * @example sunFromHourAngle({ latitude_deg: 43, declination_deg: 23.1, hourAngle_deg: 97.5 }).elevation_deg // 10.356151
 */
export function sunFromHourAngle(moment: {
  readonly latitude_deg: number;
  readonly declination_deg: number;
  readonly hourAngle_deg: number;
}): { readonly elevation_deg: number; readonly azimuth_deg: number } {
  within("latitude_deg", moment.latitude_deg, -90, 90);
  within("declination_deg", moment.declination_deg, -23.5, 23.5);
  within("hourAngle_deg", moment.hourAngle_deg, -180, 180);
  const { elevation_rad, azimuth_rad } = horizontalOf_rad(
    moment.latitude_deg * rad_per_deg,
    moment.declination_deg * rad_per_deg,
    moment.hourAngle_deg * rad_per_deg,
  );
  return { elevation_deg: elevation_rad / rad_per_deg, azimuth_deg: azimuth_rad / rad_per_deg };
}

/**
 * Where the sun stands at an instant, seen from a place.
 *
 * The series of `sunCoordinates`, the hour angle from universal time, then the horizontal angles. Good to about 0.01°;
 * near the horizon the air makes ±0.1° honest, and hills and buildings matter far more.
 *
 * @param moment instant [ms] since 1970-01-01T00:00Z, years 1900 to 2100; latitude [°], -90 to 90; longitude [°], -180 to 180, EAST positive
 * @returns elevation without air and as seen [°]; azimuth [°] from north, clockwise; declination and hour angle [°]
 * @throws QuantityError outside those ranges
 * @source NoaaSolar; Meeus1998
 * @see checks/sun-light.json 002, 003, 004
 * @example sunPosition({ instant_ms: 1066419030000, latitude_deg: 39.742476, longitude_deg: -105.1786 }).elevation_deg // 39.872
 */
export function sunPosition(moment: {
  readonly instant_ms: number;
  readonly latitude_deg: number;
  readonly longitude_deg: number;
}): {
  readonly elevation_deg: number;
  readonly apparentElevation_deg: number;
  readonly azimuth_deg: number;
  readonly declination_deg: number;
  readonly hourAngle_deg: number;
} {
  const { instant_ms, latitude_deg, longitude_deg } = moment;
  within("instant_ms", instant_ms, firstInstant_ms, lastInstant_ms);
  within("latitude_deg", latitude_deg, -90, 90);
  within("longitude_deg", longitude_deg, -180, 180);
  const { declination_rad, equationOfTime_min } = sunOrbit(instant_ms);
  const hourAngle_rad = hourAngleOf_rad(instant_ms, longitude_deg, equationOfTime_min);
  const { elevation_rad, azimuth_rad } = horizontalOf_rad(
    latitude_deg * rad_per_deg,
    declination_rad,
    hourAngle_rad,
  );
  const elevation_deg = elevation_rad / rad_per_deg;
  return {
    elevation_deg,
    apparentElevation_deg: Math.min(90, elevation_deg + atmosphericRefraction_deg(elevation_deg)),
    azimuth_deg: azimuth_rad / rad_per_deg,
    declination_deg: declination_rad / rad_per_deg,
    hourAngle_deg: hourAngle_rad / rad_per_deg,
  };
}
