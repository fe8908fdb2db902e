import * as sun from "@sillwood/science/sun";
import * as units from "@sillwood/science/units";
import { type Alias, alias, bindByRules, rule, ruleOn } from "../src/rules.ts";
import { lightRules } from "./sun-light-light.ts";
import { windowRules } from "./sun-light-window.ts";

const day_ms = 86_400_000;
const instantOf_ms = (utc: string): number => Date.parse(utc);
/** Local noon of a date: the day of the sun is asked for the instant nearest to it. */
const noonOf_ms = (date: string, utc_offset_h: number): number =>
  Date.parse(`${date}T12:00:00Z`) - utc_offset_h * 3_600_000;

type Place = { readonly lat_deg: number; readonly lon_deg: number };
type Moment = Place & { readonly utc: string };
const position = (v: Moment) =>
  sun.sunPosition({ instant_ms: instantOf_ms(v.utc), latitude_deg: v.lat_deg, longitude_deg: v.lon_deg });
const at = (gives: string | RegExp, pick: (of: ReturnType<typeof position>) => number) =>
  ruleOn<Moment>(gives, ["utc", "lat_deg", "lon_deg"], (v) => pick(position(v)));
const orbit = (gives: string | RegExp, pick: (of: ReturnType<typeof sun.sunCoordinates>) => number) =>
  ruleOn<{ utc: string }>(gives, ["utc"], (v) => pick(sun.sunCoordinates(instantOf_ms(v.utc))));

type Date_ = Place & {
  readonly date: string;
  readonly utc_offset_h: number;
  readonly alt_threshold_deg: number;
};
const sunDay = (v: Date_) =>
  sun.sunDay({
    noon_ms: noonOf_ms(v.date, v.utc_offset_h),
    latitude_deg: v.lat_deg,
    longitude_deg: v.lon_deg,
    threshold_deg: v.alt_threshold_deg,
  });
const clock_ms = (v: Date_, instant_ms: number | null): number | null =>
  instant_ms === null ? null : instant_ms - (noonOf_ms(v.date, v.utc_offset_h) - day_ms / 2);
/** Minutes after local midnight; one that lies in another day keeps its sign or its size. */
const minutes = (v: Date_, instant_ms: number | null): number | null => {
  const clock = clock_ms(v, instant_ms);
  return clock === null ? null : clock / 60_000;
};
const hms = (v: Date_, instant_ms: number | null): string | null => {
  const clock = clock_ms(v, instant_ms);
  if (clock === null) return null;
  return new Date(((Math.round(clock / 1000) * 1000) % day_ms) + (clock < 0 ? day_ms : 0))
    .toISOString()
    .slice(11, 19);
};
const ofDay = (gives: string | RegExp, pick: (of: sun.SunDay, v: Date_) => unknown) =>
  ruleOn<Date_>(gives, ["date", "utc_offset_h", "alt_threshold_deg", "lat_deg", "lon_deg"], (v) =>
    pick(sunDay(v), v),
  );

/** Hours that the clock of a zone is ahead of universal time at noon of a date. */
function zoneOffset_h(date: string, zone: string): number {
  const noon = new Date(`${date}T12:00:00Z`);
  const local = new Intl.DateTimeFormat("sv-SE", {
    timeZone: zone,
    dateStyle: "short",
    timeStyle: "medium",
  }).format(noon);
  return (Date.parse(`${local.replace(" ", "T")}Z`) - noon.getTime()) / 3_600_000;
}

const positionRules = [
  ruleOn<{ date: string; zone: string }>("utc_offset_h", ["date", "zone"], (v) =>
    zoneOffset_h(v.date, v.zone),
  ),
  ruleOn<{ utc: string }>(/^julian_day$|^jd$/, ["utc"], (v) => sun.julianDay_d(instantOf_ms(v.utc))),
  at(/^(elevation|altitude)_(norefr|true)_deg$/, (of) => of.elevation_deg),
  at(/^(apparent_)?(elevation|altitude)_deg$/, (of) => of.apparentElevation_deg),
  at(/^(apparent_)?zenith_deg$/, (of) => 90 - of.apparentElevation_deg),
  at(/^zenith_(norefr|true)_deg$/, (of) => 90 - of.elevation_deg),
  at("azimuth_deg", (of) => of.azimuth_deg),
  at(/^hour_angle_deg$/, (of) => of.hourAngle_deg),
  orbit(/^distance_au$|^sun_distance_au$/, (of) => of.distanceRatio),
  orbit(/^(equation_of_time|eot)_min$/, (of) => of.equationOfTime_min),
  orbit(/^declination_deg$|^decl_deg$/, (of) => of.declination_deg),
  ofDay(/^sunrise_hms$/, (of, v) => hms(v, of.rise_ms)),
  ofDay(/^sunset_hms$/, (of, v) => hms(v, of.set_ms)),
  ofDay(/^(solar_noon|transit)_hms$/, (of, v) => hms(v, of.transit_ms)),
  ofDay(/^(sunrise|dawn|rise)_min(_after_midnight)?$/, (of, v) => minutes(v, of.rise_ms)),
  ofDay(/^(sunset|dusk|set)_min(_after_midnight)?$/, (of, v) => minutes(v, of.set_ms)),
  ofDay(/^(solar_noon|transit)_min(_after_midnight)?$/, (of, v) => minutes(v, of.transit_ms)),
  ofDay(/^(day_?length|daylight)_h$/, (of) => of.daylight_h),
  ofDay(/^state$/, (of) => of.state),
  ofDay(/^polar_(day|night)$/, (of) => of.state !== "rises and sets"),
];

const site = (lat_deg: number, day_of_year: number) => ({ latitude_deg: lat_deg, dayOfYear_d: day_of_year });
type Year = { readonly lat_deg: number; readonly day_of_year: number | readonly number[] };
const overYear = (gives: string | RegExp, run: (at: ReturnType<typeof site>) => number) =>
  ruleOn<Year>(gives, ["lat_deg", "day_of_year"], (v) =>
    typeof v.day_of_year === "number"
      ? run(site(v.lat_deg, v.day_of_year))
      : v.day_of_year.map((day) => run(site(v.lat_deg, day))),
  );

const surface = ["lat_deg", "declination_deg", "hour_angle_deg"] as const;
type Surface = { readonly [Name in (typeof surface)[number]]: number };
const sunAt = (v: Surface) =>
  sun.sunFromHourAngle({
    latitude_deg: v.lat_deg,
    declination_deg: v.declination_deg,
    hourAngle_deg: v.hour_angle_deg,
  });
const onCircle = (angle_deg: number): number => ((angle_deg % 360) + 360) % 360;

const geometryRules = [
  rule(/^dr$/, ["day_of_year"], (v) => sun.sunDistanceFactor(v.day_of_year)),
  rule(/^declination_rad$/, ["day_of_year"], (v) => sun.sunDeclination_rad(v.day_of_year)),
  overYear(/^(sunset_hour_angle|ws|omega_s)_rad$/, sun.sunsetHourAngle_rad),
  overYear("ra_MJ_m2_d", sun.extraterrestrialRadiation_MJ_m2_d),
  overYear(/^(daylight|day_?length|N)_h$/, sun.daylight_h),
  rule(/^(sunset_hour_angle|ws)_rad$/, ["lat_deg", "declination_deg"], (v) =>
    sun.hourAngleAtElevation_rad({ latitude_deg: v.lat_deg, declination_deg: v.declination_deg }),
  ),
  rule(
    /^(sunset_hour_angle|ws)_deg$/,
    ["lat_deg", "declination_deg"],
    (v) =>
      sun.hourAngleAtElevation_rad({ latitude_deg: v.lat_deg, declination_deg: v.declination_deg }) /
      units.rad_per_deg,
  ),
  rule(
    /^(daylight|day_?length)_h$/,
    ["lat_deg", "declination_deg"],
    (v) =>
      (24 / Math.PI) *
      sun.hourAngleAtElevation_rad({ latitude_deg: v.lat_deg, declination_deg: v.declination_deg }),
  ),
  rule(/^(altitude|elevation)_deg$/, surface, (v) => sunAt(v).elevation_deg),
  rule(/^zenith_deg$/, surface, (v) => 90 - sunAt(v).elevation_deg),
  rule(/^azimuth_deg$/, surface, (v) => sunAt(v).azimuth_deg),
  ruleOn<Surface & { what: string }>(/^azimuth_deg$/, [...surface, "what"], (v) =>
    /from south|west of south/i.test(v.what) ? sunAt(v).azimuth_deg - 180 : sunAt(v).azimuth_deg,
  ),
  // Books of solar engineering count azimuth from south, west positive.
  rule(/^(solar_)?azimuth.*south/, surface, (v) => sunAt(v).azimuth_deg - 180),
  rule(/^incidence_deg$/, [...surface, "tilt_deg", "surface_azimuth_deg_west_of_south"], (v) =>
    sun.incidenceAngle_deg({
      ...sunAt(v),
      tilt_deg: v.tilt_deg,
      facing_deg: onCircle(180 + v.surface_azimuth_deg_west_of_south),
    }),
  ),
  rule(/^incidence_deg$/, ["apparent_elevation_deg", "azimuth_deg", "tilt_deg", "facing_deg"], (v) =>
    sun.incidenceAngle_deg({ ...v, elevation_deg: v.apparent_elevation_deg }),
  ),
];

type Slope = Moment & { readonly tilt_deg: number; readonly surface_azimuth_deg_west_of_south: number };
const slopeRules = [
  ruleOn<Slope>(
    /^incidence_deg$/,
    ["utc", "lat_deg", "lon_deg", "tilt_deg", "surface_azimuth_deg_west_of_south"],
    (v) => {
      const { apparentElevation_deg, azimuth_deg } = position(v);
      return sun.incidenceAngle_deg({
        elevation_deg: apparentElevation_deg,
        azimuth_deg,
        tilt_deg: v.tilt_deg,
        facing_deg: onCircle(180 + v.surface_azimuth_deg_west_of_south),
      });
    },
  ),
];

/** Every row of the day, or a single one. */
const each = <Result>(value: number | readonly number[], run: (one: number) => Result): Result | Result[] =>
  typeof value === "number" ? run(value) : value.map(run);

type Split = { readonly ghi_W_m2: number; readonly zenith_deg: number; readonly e0_W_m2: number };
const splitOf = (v: Split) =>
  sun.diffuseSplit({
    hourGlobal_W_m2: v.ghi_W_m2,
    elevation_deg: 90 - v.zenith_deg,
    normalExtraterrestrial_W_m2: v.e0_W_m2,
  });
const split = (gives: string, pick: (of: ReturnType<typeof splitOf>) => number) =>
  rule(gives, ["ghi_W_m2", "zenith_deg", "e0_W_m2"], (v) => pick(splitOf(v)));

const skyRules = [
  rule(/^rs_MJ_m2_d$/, ["ra_MJ_m2_d", "sunshine_h", "daylight_h"], (v) =>
    sun.solarFromSunshine_MJ_m2_d({
      extraterrestrial_MJ_m2_d: v.ra_MJ_m2_d,
      sunshine_h: v.sunshine_h,
      daylight_h: v.daylight_h,
    }),
  ),
  rule(/^rso_MJ_m2_d$/, ["ra_MJ_m2_d", "elevation_m"], (v) =>
    sun.clearSkyRadiation_MJ_m2({ extraterrestrial_MJ_m2: v.ra_MJ_m2_d, elevation_m: v.elevation_m }),
  ),
  rule(/^rs_MJ_m2_d$/, ["ra_MJ_m2_d", "tmax_C", "tmin_C", "k_rs"], (v) =>
    sun.solarFromTemperatureRange_MJ_m2_d({
      extraterrestrial_MJ_m2_d: v.ra_MJ_m2_d,
      clearSky_MJ_m2_d: sun.clearSkyRadiation_MJ_m2({ extraterrestrial_MJ_m2: v.ra_MJ_m2_d, elevation_m: 0 }),
      airMax_C: v.tmax_C,
      airMin_C: v.tmin_C,
      temperatureRangeCoefficient: v.k_rs,
    }),
  ),
  ruleOn<{ apparent_elevation_deg: number | readonly number[] }>(
    /^ghi(_clear)?_W_m2$/,
    ["apparent_elevation_deg"],
    (v) => each(v.apparent_elevation_deg, sun.clearSkyGlobal_W_m2),
  ),
  rule("e0_W_m2", ["day_of_year", "solar_constant_W_m2"], (v) =>
    sun.normalExtraterrestrial_W_m2({
      dayOfYear_d: v.day_of_year,
      solarConstant_W_m2: v.solar_constant_W_m2,
    }),
  ),
  split("dni_W_m2", (of) => of.direct_W_m2),
  split("dhi_W_m2", (of) => of.diffuse_W_m2),
  split("kt", (of) => of.hourClearness_frac),
  ruleOn<{ kt: number | readonly number[] }>(/^(diffuse_fraction|kd)$/, ["kt"], (v) =>
    each(v.kt, sun.diffuseShare_frac),
  ),
  ruleOn<{ omega_rad: number | readonly number[]; ws_rad: number }>(
    /^r_?t(_\w+)?$/,
    ["omega_rad", "ws_rad"],
    (v) =>
      each(v.omega_rad, (hourAngle_rad) =>
        sun.globalOfHour_frac({ hourAngle_rad, sunsetHourAngle_rad: v.ws_rad }),
      ),
  ),
  ruleOn<{ omega_rad: number | readonly number[]; ws_rad: number }>(
    /^r_?d(_\w+)?$/,
    ["omega_rad", "ws_rad"],
    (v) =>
      each(v.omega_rad, (hourAngle_rad) =>
        sun.diffuseOfHour_frac({ hourAngle_rad, sunsetHourAngle_rad: v.ws_rad }),
      ),
  ),
];

const radians = (value: number | readonly number[]) =>
  each(value, (angle_deg) => angle_deg * units.rad_per_deg);
const degrees = (value: number) => value / units.rad_per_deg;
const through = (of: string, from: string | RegExp, convert: (value: never) => unknown): Alias => ({
  of,
  from,
  convert,
});

const aliases = [
  alias("lat_deg", /^(lat|latitude|latitude_deg|phi_deg)$/),
  alias("lat_deg", /^(lat|latitude|phi)_rad$/, degrees),
  alias("lon_deg", /^(lon|longitude|lon_deg_east_positive|longitude_deg|lon_deg_east|longitude_deg_east)$/),
  alias("declination_deg", /^(declination|decl|delta)_rad$/, degrees),
  alias("declination_deg", /^(decl|delta)_deg$/),
  alias("hour_angle_deg", /^(omega_deg|w_deg)$/),
  alias("day_of_year", /^(doy|j|J|day)$/),
  alias("apparent_elevation_deg", /^(elevation|altitude|sun_elevation)_deg$/),
  alias("zenith_deg", "apparent_zenith_deg"),
  alias("ws_rad", /^(sunset_hour_angle|omega_s)_rad$/),
  through("ws_rad", /^(ws|sunset_hour_angle|omega_s)_deg$/, radians as (value: never) => unknown),
  alias("omega_rad", /^(w|hour_angle)_rad$/),
  through("omega_rad", /^(w|omega|hour_angle)_deg$/, radians as (value: never) => unknown),
  alias("kt", /^(clearness|clearness_index)$/),
  alias("rs_MJ_m2_d", "rs_daily_MJ_m2_d"),
  alias("facing_deg", /^(window|surface)_azimuth_deg$/),
  alias("utc", /^(utc_time|time_utc|instant_utc)$/),
  alias("zone", /^(iana_zone|time_zone|timezone|tz)$/),
  alias("tilt_deg", /^(slope|surface_tilt|surface_slope)_deg$/),
  alias("surface_azimuth_deg_west_of_south", /^(azm|azimuth)_rotation(_deg)?$/),
  alias("beam_deg", /beam/),
  alias("lateral_m", /^(x|lateral|offset)_m$/),
  alias("rs_MJ_m2_d", "rs_kWh_m2_d", (value) =>
    units.toCanonical({ value, kind: "daily irradiation", unit: "kWh/m²/d" }),
  ),
  alias("ppfd_umol_m2_s", /^ppfd$/),
  alias("hours", /^(h|hours_h|photoperiod_h|lit_h)$/),
  alias("foot_candles", /^(foot_?candles?|fc)$/),
  alias("k_rs", /^(krs|kRs)$/),
];

/** Every row of the table, by what it gives and asks; also rows that are held back or come later. */
export const binding = bindByRules(
  "sun-light",
  [...positionRules, ...geometryRules, ...slopeRules, ...skyRules, ...windowRules, ...lightRules],
  aliases,
);
