import * as air from "@sillwood/science/air";
import * as sun from "@sillwood/science/sun";
import * as units from "@sillwood/science/units";
import * as water from "@sillwood/science/water";
import { alias, bindByRules, rule, ruleOn } from "../src/rules.ts";
import { potRules } from "./air-water-pot.ts";

const air_C = (t_C: number): number => t_C;
const share = (percent: number): number => percent / 100;
const site = (latitude_deg: number, dayOfYear_d: number) => ({ latitude_deg, dayOfYear_d });
const day = (airMax_C: number, airMin_C: number) => ({ airMax_C, airMin_C });

const airRules = [
  rule(
    "evaporation_mm_d",
    ["energy_MJ_m2_d", "fraction"],
    (v) => units.evaporation_mm_per_MJ_m2 * v.energy_MJ_m2_d * v.fraction,
  ),
  rule("pressure_kPa", ["elevation_m"], (v) => air.airPressure_kPa(v.elevation_m)),
  rule("gamma_kPa_C", ["pressure_kPa"], (v) => air.psychrometricConstant_kPa_per_C(v.pressure_kPa)),
  rule("e0_tmax_kPa", ["tmax_C"], (v) => air.saturationVapourPressure_kPa(v.tmax_C)),
  rule("e0_tmin_kPa", ["tmin_C"], (v) => air.saturationVapourPressure_kPa(v.tmin_C)),
  rule("e0_kPa", ["t_C"], (v) => air.saturationVapourPressure_kPa(v.t_C)),
  rule(/^es(_mean)?_kPa$/, ["tmax_C", "tmin_C"], (v) =>
    air.meanSaturationVapourPressure_kPa(day(v.tmax_C, v.tmin_C)),
  ),
  rule("es_kPa", ["t_C"], (v) => air.saturationVapourPressure_kPa(v.t_C)),
  rule("e0_of_mean_T_kPa", ["tmax_C", "tmin_C"], (v) =>
    air.saturationVapourPressure_kPa((v.tmax_C + v.tmin_C) / 2),
  ),
  rule("slope_kPa_C", ["t_C"], (v) => air.saturationSlope_kPa_per_C(v.t_C)),
  rule("slope_kPa_C", ["tmax_C", "tmin_C"], (v) => air.saturationSlope_kPa_per_C((v.tmax_C + v.tmin_C) / 2)),
  rule("ea_kPa", ["tdew_C"], (v) => air.vapourPressureFromDewPoint_kPa(v.tdew_C)),
  rule("ea_kPa", ["t_C", "rh_pct"], (v) =>
    air.vapourPressure_kPa({ air_C: air_C(v.t_C), humidity_frac: share(v.rh_pct) }),
  ),
  rule("ea_kPa", ["tmax_C", "tmin_C", "rhmax_pct", "rhmin_pct"], (v) =>
    air.vapourPressureFromHumidityRange_kPa({
      ...day(v.tmax_C, v.tmin_C),
      humidityMax_frac: share(v.rhmax_pct),
      humidityMin_frac: share(v.rhmin_pct),
    }),
  ),
  rule("ea_kPa", ["tmin_C", "rhmax_pct"], (v) =>
    air.vapourPressureFromHumidityMax_kPa({ airMin_C: v.tmin_C, humidityMax_frac: share(v.rhmax_pct) }),
  ),
  rule("ea_kPa", ["tmax_C", "tmin_C", "rhmean_pct"], (v) =>
    air.vapourPressureFromHumidityMean_kPa({
      ...day(v.tmax_C, v.tmin_C),
      humidityMean_frac: share(v.rhmean_pct),
    }),
  ),
  ruleOn<{ tmin_C: number; tdew_equals_tmin: boolean }>("ea_kPa", ["tmin_C", "tdew_equals_tmin"], (v) =>
    air.vapourPressureFromMinimum_kPa({ airMin_C: v.tmin_C, arid: !v.tdew_equals_tmin }),
  ),
  rule("ea_kPa", ["twet_C", "tdry_C", "pressure_kPa", "a_psy_per_C"], (v) =>
    air.vapourPressureFromWetBulb_kPa({
      air_C: v.tdry_C,
      wetBulb_C: v.twet_C,
      pressure_kPa: v.pressure_kPa,
      psychrometer_per_C: v.a_psy_per_C,
    }),
  ),
  rule("vpd_kPa", ["t_C", "rh_pct"], (v) =>
    air.vapourPressureDeficit_kPa({ air_C: v.t_C, humidity_frac: share(v.rh_pct) }),
  ),
  rule("vpd_kPa", ["tmax_C", "tmin_C", "ea_kPa"], (v) =>
    air.dailyVapourPressureDeficit_kPa({ ...day(v.tmax_C, v.tmin_C), vapourPressure_kPa: v.ea_kPa }),
  ),
  rule(/^(leaf_vpd|vpd_leaf|vpdl)_kPa$/, ["t_leaf_C", "ea_kPa"], (v) =>
    air.leafVapourPressureDeficit_kPa({ leaf_C: v.t_leaf_C, vapourPressure_kPa: v.ea_kPa }),
  ),
  rule("tdew_C", ["ea_kPa"], (v) => air.dewPoint_C(v.ea_kPa)),
  rule("twet_stull_C", ["t_C", "rh_pct"], (v) =>
    air.wetBulbByFit_C({ air_C: v.t_C, humidity_frac: share(v.rh_pct) }),
  ),
  rule("twet_C", ["t_C", "rh_pct", "pressure_kPa", "a_psy_per_C"], (v) =>
    air.wetBulb_C({
      air_C: v.t_C,
      humidity_frac: share(v.rh_pct),
      pressure_kPa: v.pressure_kPa,
      psychrometer_per_C: v.a_psy_per_C,
    }),
  ),
  rule("u2_m_s", ["uz_m_s", "wind_height_m"], (v) =>
    air.windAt2m_m_s({ wind_m_s: v.uz_m_s, height_m: v.wind_height_m }),
  ),
];

/** "22 deg 54 min S" as a Gazetteer writes it. */
function readLatitude(text: string): number {
  const [, degrees = "", minutes = "", side = ""] = /(\d+) deg (\d+) min ([NSEW])/.exec(text) ?? [];
  const northOrEast = side === "N" || side === "E";
  const angle = { degrees_deg: Number(degrees), minutes_n: Number(minutes), northOrEast };
  return units.radians_rad(units.decimalDegrees_deg(angle));
}

const sunRules = [
  ruleOn<{ bangkok_lat: string }>("bangkok_rad", ["bangkok_lat"], (v) => readLatitude(v.bangkok_lat)),
  ruleOn<{ rio_lat: string }>("rio_rad", ["rio_lat"], (v) => readLatitude(v.rio_lat)),
  rule(/^(latitude_rad|lat_rad|phi_rad)$/, ["latitude_deg"], (v) => units.radians_rad(v.latitude_deg)),
  rule("dr", ["day_of_year"], (v) => sun.sunDistanceFactor(v.day_of_year)),
  rule("declination_rad", ["day_of_year"], (v) => sun.sunDeclination_rad(v.day_of_year)),
  rule("sunset_angle_rad", ["latitude_deg", "day_of_year"], (v) =>
    sun.sunsetHourAngle_rad(site(v.latitude_deg, v.day_of_year)),
  ),
  rule("ra_MJ_m2_d", ["latitude_deg", "day_of_year"], (v) =>
    sun.extraterrestrialRadiation_MJ_m2_d(site(v.latitude_deg, v.day_of_year)),
  ),
  rule("daylight_h", ["latitude_deg", "day_of_year"], (v) =>
    sun.daylight_h(site(v.latitude_deg, v.day_of_year)),
  ),
  rule("rs_MJ_m2_d", ["ra_MJ_m2_d", "sunshine_h", "daylight_h"], (v) =>
    sun.solarFromSunshine_MJ_m2_d({
      extraterrestrial_MJ_m2_d: v.ra_MJ_m2_d,
      sunshine_h: v.sunshine_h,
      daylight_h: v.daylight_h,
    }),
  ),
  rule("rs_MJ_m2_d", ["ra_MJ_m2_d", "tmax_C", "tmin_C", "k_rs"], (v) => fromRange(v, 0)),
  rule("rs_MJ_m2_d", ["ra_MJ_m2_d", "tmax_C", "tmin_C", "k_rs", "elevation_m"], (v) =>
    fromRange(v, v.elevation_m),
  ),
  rule("rso_MJ_m2_d", ["ra_MJ_m2_d", "elevation_m"], (v) =>
    sun.clearSkyRadiation_MJ_m2({ extraterrestrial_MJ_m2: v.ra_MJ_m2_d, elevation_m: v.elevation_m }),
  ),
  rule("omega_rad", ["t_mid_h", "longitude_W_deg", "meridian_W_deg", "day_of_year"], (v) =>
    sun.solarHourAngle_rad({
      standardClock_h: v.t_mid_h,
      longitude_deg: -v.longitude_W_deg,
      zoneMeridian_deg: -v.meridian_W_deg,
      dayOfYear_d: v.day_of_year,
    }),
  ),
  rule("ra_MJ_m2_h", ["latitude_deg", "day_of_year", "omega_rad"], (v) =>
    sun.hourlyExtraterrestrialRadiation_MJ_m2({
      ...site(v.latitude_deg, v.day_of_year),
      hourAngle_rad: v.omega_rad,
    }),
  ),
  rule("rso_MJ_m2_h", ["ra_MJ_m2_h", "elevation_m"], (v) =>
    sun.clearSkyRadiation_MJ_m2({ extraterrestrial_MJ_m2: v.ra_MJ_m2_h, elevation_m: v.elevation_m }),
  ),
];

function fromRange(
  v: { readonly ra_MJ_m2_d: number; readonly tmax_C: number; readonly tmin_C: number; readonly k_rs: number },
  elevation_m: number,
): number {
  return sun.solarFromTemperatureRange_MJ_m2_d({
    ...day(v.tmax_C, v.tmin_C),
    extraterrestrial_MJ_m2_d: v.ra_MJ_m2_d,
    clearSky_MJ_m2_d: sun.clearSkyRadiation_MJ_m2({ extraterrestrial_MJ_m2: v.ra_MJ_m2_d, elevation_m }),
    temperatureRangeCoefficient: v.k_rs,
  });
}

const dayNeeds = [
  "tmax_C",
  "tmin_C",
  "ea_kPa",
  "rs_MJ_m2_d",
  "u2_m_s",
  "latitude_deg",
  "elevation_m",
  "day_of_year",
] as const;
type DayValues = { readonly [Name in (typeof dayNeeds)[number]]: number };
const referenceDay = (v: DayValues) => ({
  ...day(v.tmax_C, v.tmin_C),
  ...site(v.latitude_deg, v.day_of_year),
  vapourPressure_kPa: v.ea_kPa,
  solar_MJ_m2_d: v.rs_MJ_m2_d,
  wind2m_m_s: v.u2_m_s,
  elevation_m: v.elevation_m,
});

const hourNeeds = ["t_C", "ea_kPa", "rs_MJ_m2_h", "u2_m_s", "elevation_m", "cloud_factor"] as const;
type HourValues = { readonly [Name in (typeof hourNeeds)[number]]: number };
const hourOf = (v: HourValues, surface: "short" | "tall" | "FAO-56") =>
  water.referenceEtHourly({
    air_C: v.t_C,
    vapourPressure_kPa: v.ea_kPa,
    solar_MJ_m2_h: v.rs_MJ_m2_h,
    wind2m_m_s: v.u2_m_s,
    elevation_m: v.elevation_m,
    cloudFactor: v.cloud_factor,
    surface,
  });
/** FAO-56 prints one denominator for all hours, ASCE one for day and one for night. */
const printedSurface = (cd_hourly: number) => (cd_hourly === 0.34 ? "FAO-56" : "short");

/** Example 20 at a wind speed: only the temperatures are known. */
const atWind = (
  v: {
    readonly tmax_C: number;
    readonly tmin_C: number;
    readonly latitude_deg: number;
    readonly elevation_m: number;
    readonly day_of_year: number;
  },
  wind2m_m_s: number,
): number =>
  water.referenceEtFromKnown({
    ...day(v.tmax_C, v.tmin_C),
    ...site(v.latitude_deg, v.day_of_year),
    elevation_m: v.elevation_m,
    wind2m_m_s,
  }).referenceEt_mm_d;
const windNeeds = ["tmax_C", "tmin_C", "latitude_deg", "elevation_m", "day_of_year", "u2_ref_m_s"] as const;

const referenceRules = [
  rule("rns_MJ_m2_d", ["rs_MJ_m2_d"], (v) => water.netShortwave_MJ_m2({ solar_MJ_m2: v.rs_MJ_m2_d })),
  rule("rns_MJ_m2_d", ["rs_MJ_m2_d", "albedo"], (v) =>
    water.netShortwave_MJ_m2({ solar_MJ_m2: v.rs_MJ_m2_d, albedo: v.albedo }),
  ),
  rule(/^rns_albedo\d+_MJ_m2_d$/, ["rs_MJ_m2_d", "albedo_for_rns"], (v) =>
    water.netShortwave_MJ_m2({ solar_MJ_m2: v.rs_MJ_m2_d, albedo: v.albedo_for_rns }),
  ),
  rule("rnl_MJ_m2_d", ["tmax_C", "tmin_C", "ea_kPa", "rs_MJ_m2_d", "rso_MJ_m2_d"], (v) =>
    water.netLongwave_MJ_m2_d({
      ...day(v.tmax_C, v.tmin_C),
      vapourPressure_kPa: v.ea_kPa,
      solar_MJ_m2_d: v.rs_MJ_m2_d,
      clearSky_MJ_m2_d: v.rso_MJ_m2_d,
    }),
  ),
  rule("rn_MJ_m2_d", ["rns_MJ_m2_d", "rnl_MJ_m2_d"], (v) => v.rns_MJ_m2_d - v.rnl_MJ_m2_d),
  rule("g_MJ_m2_d", ["t_prev_C", "t_next_C"], (v) =>
    water.soilHeatOfMonth_MJ_m2_d({
      previousMonth_C: v.t_prev_C,
      laterMonth_C: v.t_next_C,
      laterIsNext: true,
    }),
  ),
  rule("g_MJ_m2_d", ["t_prev_month_C", "tmean_C"], (v) =>
    water.soilHeatOfMonth_MJ_m2_d({
      previousMonth_C: v.t_prev_month_C,
      laterMonth_C: v.tmean_C,
      laterIsNext: false,
    }),
  ),
  rule("g_mm_d", ["g_MJ_m2_d"], (v) => water.evaporationEquivalent_mm(v.g_MJ_m2_d)),
  rule("eto_mm_d", dayNeeds, (v) => water.referenceEtDaily_mm_d(referenceDay(v))),
  rule("eto_mm_d", [...dayNeeds, "g_MJ_m2_d"], (v) =>
    water.referenceEtDaily_mm_d({ ...referenceDay(v), soilHeat_MJ_m2_d: v.g_MJ_m2_d }),
  ),
  rule("eto_mm_d", ["rn_MJ_m2_d", "t_C", "ea_kPa", "es_kPa", "pressure_kPa"], (v) =>
    water.referenceEtUnderCover_mm_d({
      netRadiation_MJ_m2_d: v.rn_MJ_m2_d,
      air_C: v.t_C,
      saturation_kPa: v.es_kPa,
      vapourPressure_kPa: v.ea_kPa,
      pressure_kPa: v.pressure_kPa,
    }),
  ),
  rule("eto_mm_d", ["tmax_C", "tmin_C", "ra_MJ_m2_d"], (v) =>
    water.hargreavesEt_mm_d({ ...day(v.tmax_C, v.tmin_C), extraterrestrial_MJ_m2_d: v.ra_MJ_m2_d }),
  ),
  rule(
    "change_low_pct",
    [...windNeeds, "u2_low_m_s"],
    (v) => 100 * (atWind(v, v.u2_low_m_s) / atWind(v, v.u2_ref_m_s) - 1),
  ),
  rule(
    "change_high_pct",
    [...windNeeds, "u2_high_m_s"],
    (v) => 100 * (atWind(v, v.u2_high_m_s) / atWind(v, v.u2_ref_m_s) - 1),
  ),
  rule("etos_mm_d", dayNeeds, (v) =>
    water.standardisedEtDaily_mm_d({ ...referenceDay(v), surface: "short" }),
  ),
  rule(/^etrs?_mm_d$/, dayNeeds, (v) =>
    water.standardisedEtDaily_mm_d({ ...referenceDay(v), surface: "tall" }),
  ),
  rule(
    "et_rad_mm_d",
    ["rn_MJ_m2_d", "delta_term", "psi_term", "temperature_term", "vpd_kPa"],
    (v) => steps(v).light_mm_d,
  ),
  rule(
    "et_wind_mm_d",
    ["rn_MJ_m2_d", "delta_term", "psi_term", "temperature_term", "vpd_kPa"],
    (v) => steps(v).dryAir_mm_d,
  ),
  // A carried factor stands before one computed from a low sun, so it asks for more.
  rule(
    "cloud_factor",
    ["fcd_carried_or_computed", "rs_MJ_m2_h", "elevation_m"],
    (v) => v.fcd_carried_or_computed,
  ),
  rule("cloud_factor", ["night_rs_rso", "rs_MJ_m2_h", "elevation_m"], (v) =>
    water.cloudFactor({ solar_MJ_m2_h: v.night_rs_rso, clearSky_MJ_m2_h: 1 }),
  ),
  rule("cloud_factor", ["rs_MJ_m2_h", "rso_MJ_m2_h"], (v) =>
    v.rso_MJ_m2_h > 0
      ? water.cloudFactor({ solar_MJ_m2_h: v.rs_MJ_m2_h, clearSky_MJ_m2_h: v.rso_MJ_m2_h })
      : undefined,
  ),
  rule("rnl_MJ_m2_h", hourNeeds, (v) => hourOf(v, "short").netLongwave_MJ_m2_h),
  rule("rn_MJ_m2_h", hourNeeds, (v) => hourOf(v, "short").netRadiation_MJ_m2_h),
  rule("g_MJ_m2_h", hourNeeds, (v) => hourOf(v, "short").soilHeat_MJ_m2_h),
  rule(
    "eto_mm_h",
    [...hourNeeds, "cd_hourly"],
    (v) => hourOf(v, printedSurface(v.cd_hourly)).referenceEt_mm_h,
  ),
  rule("etos_mm_h", hourNeeds, (v) => hourOf(v, "short").referenceEt_mm_h),
  rule("etrs_mm_h", hourNeeds, (v) => hourOf(v, "tall").referenceEt_mm_h),
];

function steps(v: {
  readonly rn_MJ_m2_d: number;
  readonly delta_term: number;
  readonly psi_term: number;
  readonly temperature_term: number;
  readonly vpd_kPa: number;
}) {
  return water.etBySteps({
    netRadiation_MJ_m2_d: v.rn_MJ_m2_d,
    deltaTerm: v.delta_term,
    psiTerm: v.psi_term,
    temperatureTerm: v.temperature_term,
    deficit_kPa: v.vpd_kPa,
  });
}

const fahrenheit = (value: number): number => units.toCanonical({ value, kind: "temperature", unit: "°F" });
const speed =
  (unit: string) =>
  (value: number): number =>
    units.toCanonical({ value, kind: "speed", unit });

/** Other spellings of the same quantities in the table; wind at any height becomes `uz_m_s` and `wind_height_m`. */
const aliases = [
  alias("latitude_deg", /^(lat|lat_deg|phi_deg)$/),
  alias("latitude_deg", /^(latitude_rad|lat_rad|phi_rad)$/, (value) => value / units.rad_per_deg),
  alias("day_of_year", /^(doy|j|J|day)$/),
  alias("tmax_C", "tmax_F", fahrenheit),
  alias("tmin_C", "tmin_F", fahrenheit),
  alias("t_C", "t_F", fahrenheit),
  alias("rs_MJ_m2_d", "rs_langley_d", (value) =>
    units.toCanonical({ value, kind: "daily irradiation", unit: "langley/d" }),
  ),
  alias("rs_MJ_m2_d", "rs_W_m2", (value) =>
    units.toCanonical({ value, kind: "daily irradiation", unit: "W/m²" }),
  ),
  alias("u2_m_s", "wind_run_km_d", speed("km/d")),
  alias("u2_m_s", "u2_km_h", speed("km/h")),
  alias("uz_m_s", /^u(_mph|_at_\w+_mph)$/, speed("mph")),
  alias("uz_m_s", /^u\d+_km_h$/, speed("km/h")),
  alias("uz_m_s", /^u(?!2_)\w*m_s$/),
  alias("wind_height_m", /^(z_m|z_wind_m|wind_height_m)$/),
  alias("wind_height_m", /^u10_/, () => 10),
  alias("wind_height_m", /^u_?(at_)?3m?_/, () => 3),
  alias("rh_pct", "rh_percent"),
  alias("tdry_C", "t_C"),
];

/** Every row of the table, by what it gives and asks; also rows that are held back or come later. */
export const binding = bindByRules(
  "air-water",
  [...airRules, ...sunRules, ...referenceRules, ...potRules],
  aliases,
);
