export { guessedSillLightSpread, sunAssumptions } from "./assumptions.ts";
export {
  clearSkyGlobal_W_m2,
  normalExtraterrestrial_W_m2,
  normalExtraterrestrialAt_W_m2,
  solarConstant_W_m2,
} from "./clear-sky.ts";
export { diffuseShare_frac, diffuseSplit, lowestBeam_deg } from "./diffuse-split.ts";
export { julianDay_d, sunCoordinates } from "./ephemeris.ts";
export {
  daylight_h,
  extraterrestrialRadiation_MJ_m2_d,
  sunDeclination_rad,
  sunDistanceFactor,
  sunsetHourAngle_rad,
} from "./geometry.ts";
export { guessedSillLight_mol_m2_d } from "./guessed-sill-light.ts";
export {
  hourlyExtraterrestrialRadiation_MJ_m2,
  seasonalCorrection_h,
  solarHourAngle_rad,
  sunElevation_rad,
} from "./hours.ts";
export { diffuseOfHour_frac, globalOfHour_frac, hoursOfDay_MJ_m2_h } from "./hours-of-day.ts";
export { incidenceAngle_deg } from "./incidence.ts";
export { atmosphericRefraction_deg, sunFromHourAngle, sunPosition } from "./position.ts";
export {
  clearSkyRadiation_MJ_m2,
  solarFromSunshine_MJ_m2_d,
  solarFromTemperatureRange_MJ_m2_d,
} from "./radiation-at-ground.ts";
export {
  civilElevation_deg,
  hourAngleAtElevation_rad,
  type SunDay,
  sunDay,
  sunriseElevation_deg,
} from "./rise-and-set.ts";
export { screenHourlySolar, screenSite, screenSolarDays } from "./screening.ts";
export { type KnownOfSolar, type SolarOfDay, solarErrors_frac, solarFromKnown } from "./solar-ladder.ts";
export { sources as sunSources } from "./sources.ts";
export { clearnessOfDays_frac, usualClearness, usualClearnessBands } from "./usual-clearness.ts";
