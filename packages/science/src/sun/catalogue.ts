import { byName, describeField, single } from "../catalogue/describe.ts";
import { assumed, number, optional } from "../catalogue/input.ts";
import type { ScienceFunction } from "../catalogue/types.ts";
import {
  clearSkyRadiation_MJ_m2,
  daylight_h,
  extraterrestrialRadiation_MJ_m2_d,
  guessedSillLight_mol_m2_d,
  hourlyExtraterrestrialRadiation_MJ_m2,
  seasonalCorrection_h,
  solarFromSunshine_MJ_m2_d,
  solarFromTemperatureRange_MJ_m2_d,
  solarHourAngle_rad,
  sunAssumptions,
  sunDeclination_rad,
  sunDistanceFactor,
  sunElevation_rad,
  sunsetHourAngle_rad,
} from "./index.ts";

const describe = describeField("sun");

export const sunCatalogue: readonly ScienceFunction[] = [
  describe("sunDistanceFactor", single(sunDistanceFactor), {
    what: "Squared inverse of the relative distance between earth and sun.",
    source: "FAO56 eq. 23",
    inputs: [number("dayOfYear_d", 1, 366, 172)],
  }),
  describe("sunDeclination_rad", single(sunDeclination_rad), {
    what: "Declination of the sun (daily formula, good to about 0.4°).",
    source: "FAO56 eq. 24",
    inputs: [number("dayOfYear_d", 1, 366, 172)],
  }),
  describe("sunsetHourAngle_rad", byName(sunsetHourAngle_rad), {
    what: "Hour angle of the sun at sunset.",
    source: "FAO56 eq. 25",
    inputs: [number("latitude_deg", -90, 90, 45), number("dayOfYear_d", 1, 366, 172)],
  }),
  describe("daylight_h", byName(daylight_h), {
    what: "Length of the day, sun's centre above a level horizon, without refraction.",
    source: "FAO56 eq. 34",
    inputs: [number("latitude_deg", -90, 90, 45), number("dayOfYear_d", 1, 366, 172)],
  }),
  describe("extraterrestrialRadiation_MJ_m2_d", byName(extraterrestrialRadiation_MJ_m2_d), {
    what: "Solar radiation of a day on a level surface above the air.",
    source: "FAO56 eq. 21",
    inputs: [number("latitude_deg", -90, 90, 45), number("dayOfYear_d", 1, 366, 172)],
  }),
  describe("guessedSillLight_mol_m2_d", byName(guessedSillLight_mol_m2_d), {
    what: "Guess of the daily light on an unobstructed window sill, from compass direction and season alone.",
    source: "our assumption",
    inputs: [
      number("latitude_deg", -90, 90, 45),
      number("dayOfYear_d", 1, 366, 172),
      number("azimuth_deg", 0, 360, 180),
      ...assumed(
        sunAssumptions,
        "clearness_frac",
        "skySeen_frac",
        "glass_frac",
        "sill_frac",
        "direct_frac",
        "photonsOfSolar_mol_MJ",
      ),
    ],
  }),
  describe("seasonalCorrection_h", single(seasonalCorrection_h), {
    what: "Seasonal correction between clock and sun (equation of time).",
    source: "FAO56 eqs 32 and 33",
    inputs: [number("dayOfYear_d", 1, 366, 172)],
  }),
  describe("solarHourAngle_rad", byName(solarHourAngle_rad), {
    what: "Hour angle of the sun at a moment of standard clock time.",
    source: "FAO56 eq. 31",
    inputs: [
      number("standardClock_h", 0, 24, 12),
      number("longitude_deg", -180, 180, 10),
      number("zoneMeridian_deg", -180, 180, 15),
      number("dayOfYear_d", 1, 366, 172),
    ],
  }),
  describe("sunElevation_rad", byName(sunElevation_rad), {
    what: "Height of the sun above a level horizon, without refraction.",
    source: "ASCE2005 eq. 62",
    inputs: [
      number("latitude_deg", -90, 90, 45),
      number("dayOfYear_d", 1, 366, 172),
      number("hourAngle_rad", -7, 7, 0.3),
    ],
  }),
  describe("hourlyExtraterrestrialRadiation_MJ_m2", byName(hourlyExtraterrestrialRadiation_MJ_m2), {
    what: "Solar radiation of a period of up to a day on a level surface above the air.",
    source: "FAO56 eq. 28",
    inputs: [
      number("latitude_deg", -90, 90, 45),
      number("dayOfYear_d", 1, 366, 172),
      number("hourAngle_rad", -7, 7, 0.3),
      optional(number("length_h", 0.1, 24, 1)),
    ],
  }),
  describe("clearSkyRadiation_MJ_m2", byName(clearSkyRadiation_MJ_m2), {
    what: "Solar radiation under a clear sky, of a day or an hour.",
    source: "FAO56 eq. 37",
    inputs: [number("extraterrestrial_MJ_m2", 0, 50, 40), number("elevation_m", -430, 6000, 100)],
  }),
  describe("solarFromSunshine_MJ_m2_d", byName(solarFromSunshine_MJ_m2_d), {
    what: "Solar radiation of a day from its hours of sunshine (Ångström).",
    source: "FAO56 eq. 35",
    inputs: [
      number("extraterrestrial_MJ_m2_d", 0, 50, 40),
      number("sunshine_h", 0, 24, 8),
      number("daylight_h", 0, 24, 15),
    ],
  }),
  describe("solarFromTemperatureRange_MJ_m2_d", byName(solarFromTemperatureRange_MJ_m2_d), {
    what: "Solar radiation of a day from its temperature range, when nothing else is known; better as a mean of three days or more.",
    source: "FAO56 eq. 50",
    inputs: [
      number("extraterrestrial_MJ_m2_d", 0, 50, 40),
      number("clearSky_MJ_m2_d", 0, 50, 30),
      number("airMax_C", -40, 60, 25),
      number("airMin_C", -40, 60, 15),
      optional(number("temperatureRangeCoefficient", 0.1, 0.25, 0.16)),
    ],
  }),
];
