import { byName, describeField, single } from "../catalogue/describe.ts";
import { anyNumber, choice, number, numbers, optional } from "../catalogue/input.ts";
import type { ScienceFunction } from "../catalogue/types.ts";
import { firstInstant_ms, lastInstant_ms } from "./ephemeris.ts";
import {
  atmosphericRefraction_deg,
  clearnessOfDays_frac,
  clearSkyGlobal_W_m2,
  diffuseOfHour_frac,
  diffuseShare_frac,
  diffuseSplit,
  globalOfHour_frac,
  hourAngleAtElevation_rad,
  hoursOfDay_MJ_m2_h,
  incidenceAngle_deg,
  julianDay_d,
  normalExtraterrestrial_W_m2,
  normalExtraterrestrialAt_W_m2,
  screenHourlySolar,
  screenSite,
  screenSolarDays,
  solarFromKnown,
  sunCoordinates,
  sunDay,
  sunFromHourAngle,
  sunPosition,
  usualClearness,
} from "./index.ts";

const describe = describeField("sun");
const instant = (name: string) => number(name, firstInstant_ms, lastInstant_ms, 1_750_500_000_000);
const latitude = number("latitude_deg", -90, 90, 45);
const longitude = number("longitude_deg", -180, 180, 10);
const hoursOfJune_W_m2 = Array.from({ length: 24 }, (_, hour) => Math.max(0, 600 - 12 * (hour - 12) ** 2));
const dayOfYear = number("dayOfYear_d", 1, 366, 172);

/** The sun at an instant, and its radiation hour by hour. */
export const skyCatalogue: readonly ScienceFunction[] = [
  describe("julianDay_d", single(julianDay_d), {
    what: "Julian day of an instant: days since noon of 1 January 4713 BC, universal time.",
    source: "Meeus1998 chapter 7",
    inputs: [instant("instant_ms")],
  }),
  describe("sunCoordinates", single(sunCoordinates), {
    what: "Declination and distance of the sun and the equation of time at an instant.",
    source: "NoaaSolar; Meeus1998 chapters 22, 25, 28",
    inputs: [instant("instant_ms")],
    fields: ["declination_deg", "equationOfTime_min", "distanceRatio"],
  }),
  describe("atmosphericRefraction_deg", single(atmosphericRefraction_deg), {
    what: "How far the air lifts the image of the sun, standard air (1013 mbar, 10 °C).",
    source: "NoaaSolar",
    inputs: [number("elevation_deg", -90, 90, 10)],
  }),
  describe("sunFromHourAngle", byName(sunFromHourAngle), {
    what: "Elevation and azimuth of the sun from latitude, declination and hour angle.",
    source: "Meeus1998 chapter 13",
    inputs: [latitude, number("declination_deg", -23.5, 23.5, 10), number("hourAngle_deg", -180, 180, 30)],
    fields: ["elevation_deg", "azimuth_deg"],
  }),
  describe("sunPosition", byName(sunPosition), {
    what: "Where the sun stands at an instant, seen from a place.",
    source: "NoaaSolar; Meeus1998",
    inputs: [instant("instant_ms"), latitude, longitude],
    fields: ["elevation_deg", "apparentElevation_deg", "azimuth_deg", "declination_deg", "hourAngle_deg"],
  }),
  describe("hourAngleAtElevation_rad", byName(hourAngleAtElevation_rad), {
    what: "Hour angle at which the sun stands at a given height, seen from a latitude.",
    source: "Meeus1998 chapter 15",
    inputs: [
      latitude,
      number("declination_deg", -23.5, 23.5, 10),
      optional(number("threshold_deg", -18, 60, -0.833)),
    ],
  }),
  describe("sunDay", byName(sunDay), {
    what: "The day of the sun at a place: highest point, rise, set and length, or the state that there is none.",
    source: "NoaaSolar; Meeus1998 chapter 15",
    inputs: [instant("noon_ms"), latitude, longitude, optional(number("threshold_deg", -18, 60, -0.833))],
    fields: ["state", "transit_ms", "noonElevation_deg", "rise_ms", "set_ms", "daylight_h"],
  }),
  describe("incidenceAngle_deg", byName(incidenceAngle_deg), {
    what: "Angle between the sun's rays and the normal of a surface of any tilt and direction.",
    source: "DuffieBeckman2013 eq. 1.6.3",
    inputs: [
      number("elevation_deg", -90, 90, 30),
      number("azimuth_deg", 0, 360, 180),
      number("tilt_deg", 0, 180, 90),
      number("facing_deg", 0, 360, 180),
    ],
  }),
  describe("clearSkyGlobal_W_m2", single(clearSkyGlobal_W_m2), {
    what: "Global radiation under a clear sky at one moment (Haurwitz).",
    source: "Haurwitz1945",
    inputs: [number("apparentElevation_deg", -90, 90, 30)],
  }),
  describe("normalExtraterrestrial_W_m2", byName(normalExtraterrestrial_W_m2), {
    what: "Solar radiation above the air on a surface that faces the sun, from the day of the year (Spencer).",
    source: "Spencer1971",
    inputs: [dayOfYear, optional(number("solarConstant_W_m2", 1300, 1400, 1361))],
  }),
  describe("normalExtraterrestrialAt_W_m2", single(normalExtraterrestrialAt_W_m2), {
    what: "Solar radiation above the air on a surface that faces the sun, at an instant.",
    source: "NoaaSolar",
    inputs: [instant("instant_ms")],
  }),
  describe("diffuseShare_frac", single(diffuseShare_frac), {
    what: "Share of an hour's global radiation that comes from the sky, not straight from the sun (Erbs, Klein and Duffie).",
    source: "Erbs1982 eq. 1",
    inputs: [number("hourClearness_frac", 0, 1.5, 0.5)],
  }),
  describe("diffuseSplit", byName(diffuseSplit), {
    what: "Split of an hour's global radiation into sky light and direct beam.",
    source: "Erbs1982 eq. 1",
    inputs: [
      number("hourGlobal_W_m2", 0, 1500, 500),
      number("elevation_deg", -90, 90, 40),
      number("normalExtraterrestrial_W_m2", 1250, 1450, 1361),
    ],
    fields: ["hourClearness_frac", "diffuse_W_m2", "direct_W_m2"],
  }),
  describe("globalOfHour_frac", byName(globalOfHour_frac), {
    what: "Share of a day's global radiation that falls in the hour around an hour angle (Collares-Pereira and Rabl).",
    source: "CollaresPereiraRabl1979",
    inputs: [number("hourAngle_rad", -Math.PI, Math.PI, 0.3), number("sunsetHourAngle_rad", 0, Math.PI, 1.6)],
  }),
  describe("diffuseOfHour_frac", byName(diffuseOfHour_frac), {
    what: "Share of a day's diffuse radiation that falls in the hour around an hour angle (Liu and Jordan).",
    source: "LiuJordan1960",
    inputs: [number("hourAngle_rad", -Math.PI, Math.PI, 0.3), number("sunsetHourAngle_rad", 0, Math.PI, 1.6)],
  }),
  describe("hoursOfDay_MJ_m2_h", byName(hoursOfDay_MJ_m2_h), {
    what: "A day's global radiation spread over the 24 hours of sun time, scaled so that they add up to the day.",
    source: "CollaresPereiraRabl1979",
    inputs: [latitude, dayOfYear, number("solar_MJ_m2_d", 0, 50, 20)],
  }),
  describe("usualClearness", byName(usualClearness), {
    what: "Clearness to expect in a month when nothing better is known, with its band.",
    source: "our assumption; bands from memory",
    inputs: [choice("climate", ["dull temperate", "dry sunny"], "dull temperate"), latitude, dayOfYear],
    fields: ["low_frac", "middle_frac", "high_frac"],
  }),
  describe("clearnessOfDays_frac", byName(clearnessOfDays_frac), {
    what: "Clearness of the single days of a month whose mean is known: equally likely days, from dull to bright.",
    source: "Bendt1981, from memory",
    inputs: [number("clearness_frac", 0.2, 0.75, 0.4), number("days_n", 1, 1000, 30)],
  }),
  describe("solarFromKnown", byName(solarFromKnown), {
    what: "Radiation of a day from the best that is known: station hours, the day, sunshine, temperature range or mean clearness.",
    source: "FAO56 eqs 35 and 50; errors our assumption",
    inputs: [
      latitude,
      dayOfYear,
      optional(number("elevation_m", -430, 6000, 100)),
      optional(numbers("hoursGlobal_W_m2", 0, 1500, hoursOfJune_W_m2)),
      optional(number("solar_MJ_m2_d", 0, 50, 20)),
      optional(number("sunshine_h", 0, 24, 8)),
      optional(number("airMax_C", -40, 60, 25)),
      optional(number("airMin_C", -40, 60, 15)),
      optional(number("temperatureRangeCoefficient", 0.1, 0.25, 0.16)),
      // Required here, so that the usual values of what is required suffice for an answer.
      number("clearness_frac", 0.2, 0.75, 0.4),
    ],
    fields: ["solar_MJ_m2_d", "rung", "error_frac"],
  }),
  describe("screenSite", byName(screenSite), {
    what: "Look over a site's coordinates beside its time zone: swapped or with the wrong sign they give a sun of another country.",
    source: "our assumption",
    inputs: [
      anyNumber("latitude_deg", 45),
      anyNumber("longitude_deg", 10),
      number("zoneOffset_h", -14, 14, 1),
    ],
  }),
  describe("screenHourlySolar", byName(screenHourlySolar), {
    what: "Look over an hour of global radiation beside a clear sky.",
    source: "our assumption",
    inputs: [anyNumber("hourGlobal_W_m2", 300), number("apparentElevation_deg", -90, 90, 30)],
  }),
  describe("screenSolarDays", byName(screenSolarDays), {
    what: "Look over daily radiation of some days beside what falls above the air: values and unit.",
    source: "our assumption",
    inputs: [
      numbers("solarDays_MJ_m2_d", -Infinity, Infinity, [8, 12]),
      numbers("extraterrestrialDays_MJ_m2_d", -Infinity, Infinity, [20, 20]),
    ],
  }),
];
