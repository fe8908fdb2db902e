export { leafAssumptions, lightAssumptions } from "./assumptions.ts";
export { meterGain, overcastShare_frac, type SpotCalibration, spotCalibration } from "./calibration.ts";
export { bestTurn_n, lightAfterTurns_mol_m2, oneSidedness } from "./crown.ts";
export {
  combinedError,
  type ErrorBudget,
  type ErrorTerm,
  errorBudget,
  type LightErrorName,
  lightErrors_frac,
  windowErrors,
} from "./error-budget.ts";
export { eyeSensitivity } from "./eye-sensitivity.ts";
export {
  diffuseTransmittance_frac,
  type Glazing,
  glazingTransmittance_frac,
  incidenceModifier,
  paneAtAngle,
  usualGlazings,
  veils,
  veilTransmittance_frac,
} from "./glass.ts";
export { fitLamp, fittedLamp_umol_m2_s, type LampFit, roughLamp } from "./lamp-fit.ts";
export { fixedTimerQuantile_frac, type LampHours, lampHours, lampTimes, resetTimer } from "./lamp-hours.ts";
export { leastMapReadings_n, type MapReading, mapError, mapRatio } from "./lamp-map.ts";
export {
  cabinetRise_C,
  costOfPots_minor,
  hottestLeaf_C,
  lampClearances_m,
  lampCost,
  lampEfficacies,
  lampFlux_umol_s,
  photonsPerEnergy_mol_kWh,
} from "./lamp-power.ts";
export {
  beamExponent,
  discLamp_umol_m2_s,
  inverseSquareShare_frac,
  pointLamp_umol_m2_s,
  rectangleLamp_umol_m2_s,
  stripLamp_umol_m2_s,
} from "./lamp-shapes.ts";
export {
  type Lamp,
  type LampPlanes,
  type LampShape,
  type LampSpot,
  lampsLevel_umol_m2_s,
  lampsPlanes,
  lampUtilisation_frac,
} from "./lamps.ts";
export {
  compensationLight_umol_m2_s,
  creditedLight_umol_m2_s,
  leafPhotosynthesis_umol_m2_s,
} from "./leaf.ts";
export { lightCaught_mol_d } from "./light-caught.ts";
export { type LightSource, lightSourceRatios, standardSpectra } from "./light-sources.ts";
export {
  dailyLight_mol_m2_d,
  fluxFromLumens_umol_s,
  lightOfSpectrum,
  lightOfSteps_mol_m2_d,
  luxFromPpfd_lx,
  photonsOfDaylight_mol_MJ,
  ppfdFromLux_umol_m2_s,
} from "./light-units.ts";
export { meterErrors_frac, screenFlatTop, screenLightReading } from "./meters.ts";
export {
  dayBegins_umol_m2_s,
  dayLengthCap,
  dayLengthCaps,
  type LightStage,
  lightNeedError_frac,
  lightNeeds,
  lightVerdict,
  publishedDayLengths,
  yieldPerLight,
} from "./needs.ts";
export { openSkyViews } from "./open-sky.ts";
export { type PlaneLight, paneLight } from "./pane-light.ts";
export {
  type LightPlane,
  lightPlanes,
  type NamedFactors,
  type PaneGeometry,
  type PaneView,
  paneFactors,
  paneView,
} from "./pane-view.ts";
export { sources as lightSources } from "./sources.ts";
export {
  openPaneFactors,
  parallelCornerFactor_frac,
  uprightOverLevel_frac,
  wallCornerFactor_frac,
} from "./view-factor.ts";
export { windowBand } from "./window-band.ts";
export {
  type PlaneDay,
  type WindowDays,
  windowDay,
  windowDay_n,
  windowDays_mol_m2_d,
} from "./window-days.ts";
export { windowLight } from "./window-light.ts";
