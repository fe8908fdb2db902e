/** Where the sun stands. */
export interface Sun {
  /** Sine of the height above the horizon; negative at night. */
  readonly sinHeight: number;
  /** Clockwise from north. */
  readonly azimuth_deg: number;
  /** Radiation above the air on a level surface. */
  readonly extraterrestrial_W_m2: number;
}

const RAD = Math.PI / 180;
const SOLAR_CONSTANT_W_m2 = 1361;

/**
 * Sun by the low-precision almanac (mean longitude, mean anomaly, ecliptic longitude), good to about 0.01°.
 *
 * @source Astronomical Almanac, low-precision formulas for the Sun's coordinates
 */
export function sunAt(at_ms: number, latitude_deg: number, longitude_deg: number): Sun {
  const days = at_ms / 86_400_000 - 10_957.5;
  const meanLongitude_deg = 280.46 + 0.9856474 * days;
  const anomaly = (357.528 + 0.9856003 * days) * RAD;
  const ecliptic = (meanLongitude_deg + 1.915 * Math.sin(anomaly) + 0.02 * Math.sin(2 * anomaly)) * RAD;
  const tilt = (23.439 - 0.0000004 * days) * RAD;
  const rightAscension = Math.atan2(Math.cos(tilt) * Math.sin(ecliptic), Math.cos(ecliptic));
  const declination = Math.asin(Math.sin(tilt) * Math.sin(ecliptic));
  const sidereal_deg = (18.697374558 + 24.06570982441908 * days) * 15 + longitude_deg;
  const hourAngle = sidereal_deg * RAD - rightAscension;
  const latitude = latitude_deg * RAD;
  const sinHeight =
    Math.sin(latitude) * Math.sin(declination) +
    Math.cos(latitude) * Math.cos(declination) * Math.cos(hourAngle);
  const east = -Math.cos(declination) * Math.sin(hourAngle);
  const north =
    Math.cos(latitude) * Math.sin(declination) -
    Math.sin(latitude) * Math.cos(declination) * Math.cos(hourAngle);
  const distance_au = 1.00014 - 0.01671 * Math.cos(anomaly) - 0.00014 * Math.cos(2 * anomaly);
  return {
    sinHeight,
    azimuth_deg: (Math.atan2(east, north) / RAD + 360) % 360,
    extraterrestrial_W_m2: Math.max(0, (SOLAR_CONSTANT_W_m2 / distance_au ** 2) * sinHeight),
  };
}

/**
 * Share of the day's extraterrestrial light that comes through, from the range of temperature: clear days are warm
 * by day and cold by night.
 *
 * K = a (1 - exp(-b ΔT^c)), a 0.75, b 0.036, c 1.54
 *
 * @source Bristow and Campbell (1984), Agricultural and Forest Meteorology 31 (coefficients of a humid winter climate)
 */
export function clearness_frac(range_C: number, rain_mm: number): number {
  const dry_frac = 0.75 * (1 - Math.exp(-0.036 * Math.max(1, range_C) ** 1.54));
  return Math.max(0.1, rain_mm > 1 ? dry_frac * 0.72 : dry_frac);
}

/** Share of the light on level ground that comes from the whole sky, not from the sun. @source our assumption, a straight line through the published scatter */
export function diffuse_frac(clearness: number): number {
  return Math.max(0.15, Math.min(1, 1.15 - 1.3 * clearness));
}
