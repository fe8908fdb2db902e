export { guessedSillLightSpread, sunAssumptions } from "./assumptions.ts";
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
export {
  clearSkyRadiation_MJ_m2,
  solarFromSunshine_MJ_m2_d,
  solarFromTemperatureRange_MJ_m2_d,
} from "./radiation-at-ground.ts";
export { sources as sunSources } from "./sources.ts";
