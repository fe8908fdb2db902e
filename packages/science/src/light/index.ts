export { lightAssumptions } from "./assumptions.ts";
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
export {
  type PlaneDay,
  type WindowDays,
  windowDay,
  windowDay_n,
  windowDays_mol_m2_d,
} from "./window-days.ts";
export { windowLight } from "./window-light.ts";
