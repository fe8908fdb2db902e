import { within } from "../errors/index.ts";
import { rad_per_deg } from "../units.ts";
import { firstInstant_ms, hourAngleOf_rad, lastInstant_ms, type SunOrbit, sunOrbit } from "./ephemeris.ts";

/** Sun's upper rim on a level horizon, usual air: half a sun and the refraction below it. NoaaSolar. */
export const sunriseElevation_deg = -0.833;
/** Civil dawn and dusk: from here on plants count the light as day (sheet of the field, Meeus1998 chapter 15). */
export const civilElevation_deg = -6;

export type SunDay = {
  readonly state: "rises and sets" | "polar day" | "polar night";
  /** when the sun stands highest */
  readonly transit_ms: number;
  readonly noonElevation_deg: number;
  /** null when the sun does not cross the threshold on this day */
  readonly rise_ms: number | null;
  readonly set_ms: number | null;
  readonly daylight_h: number;
};

/** cos of the hour angle at which the sun stands at an elevation; beyond ±1 it never does. */
function crossingCosine(latitude_rad: number, declination_rad: number, threshold_rad: number): number {
  const vertical = Math.sin(latitude_rad) * Math.sin(declination_rad);
  // At the very pole the sun keeps its height all day: the limit of a site a hair beside it.
  const crosswise = Math.max(1e-9, Math.cos(latitude_rad) * Math.cos(declination_rad));
  return (Math.sin(threshold_rad) - vertical) / crosswise;
}

const clamped = (cosine: number): number => Math.max(-1, Math.min(1, cosine));

/**
 * Hour angle at which the sun stands at a given height, seen from a latitude.
 *
 * cos ω = (sin a − sin φ sin δ) / (cos φ cos δ), clamped: 180° when it never sinks so low, 0 when it never rises so high
 *
 * @param sun latitude [°], -90 to 90; declination [°], -23.5 to 23.5; height [°], -18 to 60, 0 when left out
 * @returns hour angle [rad], 0 to π
 * @throws QuantityError outside those ranges
 * @source Meeus1998 chapter 15
 * @see checks/sun-light.json 047
 * @example hourAngleAtElevation_rad({ latitude_deg: 9.05, declination_deg: 22.04 }) // 1.635
 */
export function hourAngleAtElevation_rad(sun: {
  readonly latitude_deg: number;
  readonly declination_deg: number;
  readonly threshold_deg?: number;
}): number {
  const { latitude_deg, declination_deg, threshold_deg = 0 } = sun;
  within("latitude_deg", latitude_deg, -90, 90);
  within("declination_deg", declination_deg, -23.5, 23.5);
  within("threshold_deg", threshold_deg, -18, 60);
  const cosine = crossingCosine(
    latitude_deg * rad_per_deg,
    declination_deg * rad_per_deg,
    threshold_deg * rad_per_deg,
  );
  return Math.acos(clamped(cosine));
}

/** The sun's highest point nearest to an instant: the equation of time moves so slowly that two rounds settle it. */
function transitNear_ms(noon_ms: number, longitude_deg: number): number {
  let transit_ms = noon_ms;
  for (let round = 0; round < 3; round += 1) {
    const { equationOfTime_min } = sunOrbit(transit_ms);
    const ahead = hourAngleOf_rad(transit_ms, longitude_deg, equationOfTime_min);
    transit_ms -= (ahead / rad_per_deg) * 240_000;
  }
  return transit_ms;
}

/**
 * The day of the sun at a place: highest point, rise, set and length, or the state that there is none.
 *
 * t = transit ∓ 4 ω0(t) min with the declination of that moment, iterated. Asked for the local noon of a date, rise and set
 * belong to that local date even when they fall in another UTC day. At -0.833° within a minute of printed tables.
 *
 * @param day any instant near local noon of the date that is meant [ms], years 1900 to 2100; latitude [°], -90 to 90; longitude [°], -180 to 180, EAST positive; height that counts as rising [°], -18 to 60: -0.833 sunrise (when left out), -6 civil dawn, or the height of a hill
 * @returns state; highest point [ms] and its true elevation [°]; rise and set [ms], null in polar day and night; daylight [h], 0 to 24
 * @throws QuantityError outside those ranges
 * @source NoaaSolar; Meeus1998 chapter 15
 * @see checks/sun-light.json 007-026
 * @example sunDay({ noon_ms: 757512000000, latitude_deg: 35, longitude_deg: 0 }).daylight_h // 9.862
 */
export function sunDay(day: {
  readonly noon_ms: number;
  readonly latitude_deg: number;
  readonly longitude_deg: number;
  readonly threshold_deg?: number;
}): SunDay {
  const { noon_ms, latitude_deg, longitude_deg, threshold_deg = sunriseElevation_deg } = day;
  within("noon_ms", noon_ms, firstInstant_ms, lastInstant_ms);
  within("latitude_deg", latitude_deg, -90, 90);
  within("longitude_deg", longitude_deg, -180, 180);
  within("threshold_deg", threshold_deg, -18, 60);
  const latitude_rad = latitude_deg * rad_per_deg;
  const transit_ms = transitNear_ms(noon_ms, longitude_deg);
  const atNoon = sunOrbit(transit_ms);
  const noonElevation_deg = 90 - Math.abs(latitude_deg - atNoon.declination_rad / rad_per_deg);
  const cosineOf = (orbit: SunOrbit): number =>
    crossingCosine(latitude_rad, orbit.declination_rad, threshold_deg * rad_per_deg);
  const cosine = cosineOf(atNoon);
  if (cosine > 1 || cosine < -1) {
    const state = cosine > 1 ? "polar night" : "polar day";
    const daylight_h = state === "polar day" ? 24 : 0;
    return { state, transit_ms, noonElevation_deg, rise_ms: null, set_ms: null, daylight_h };
  }
  const crossing_ms = (side: -1 | 1): number => {
    let at_ms = transit_ms;
    for (let round = 0; round < 6; round += 1) {
      const orbit = sunOrbit(at_ms);
      const angle_deg = Math.acos(clamped(cosineOf(orbit))) / rad_per_deg;
      const drift_min = atNoon.equationOfTime_min - orbit.equationOfTime_min;
      at_ms = transit_ms + (side * 4 * angle_deg + drift_min) * 60_000;
    }
    return at_ms;
  };
  const rise_ms = crossing_ms(-1);
  const set_ms = crossing_ms(1);
  return {
    state: "rises and sets",
    transit_ms,
    noonElevation_deg,
    rise_ms,
    set_ms,
    daylight_h: (set_ms - rise_ms) / 3_600_000,
  };
}
