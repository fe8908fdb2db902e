export {
  agedAir_frac,
  agedBark,
  potBound,
  rewettedWater_frac,
  rootVolume_frac,
} from "./ageing.ts";
export { airless_h, airlessBand, oxygenSpread, sharesOfFirst, waterloggingLoss } from "./air.ts";
export { blendAir, blendDensity_g_mL, blendShrinkage_frac } from "./blend.ts";
export {
  alphaFromAir_per_cm,
  curveFromTwoFills,
  type MeasuredAir,
  porosityTest,
} from "./calibrate.ts";
export { conductivityOf_mS_cm } from "./conductivity.ts";
export { drainedPot, tiltedAir_frac, type Underneath } from "./drained.ts";
export { metricRate_kg_m3, starterCharge } from "./lime.ts";
export {
  blendsSeen,
  curveEnsemble,
  curveOf,
  type MediumName,
  media,
  mediumNames,
  type Porosity,
  type PorosityOrigin,
} from "./media.ts";
export {
  availableOfPores_frac,
  potsFromBag_L,
  quickPorosity,
  screenPorosity,
  totalPorosity_frac,
} from "./porosity.ts";
export {
  biomassRatio,
  largestPot_mL,
  smallestPot_mL,
  standsFirm,
  unrestrictedMass_g,
} from "./pot-size.ts";
export {
  type RetentionCurve,
  waterAtSuction_frac,
  waterClasses,
  wetLayer_cm,
} from "./retention.ts";
export {
  leavesToLeave_frac,
  rootLimitedUse_frac,
  rootRegrowth_d,
  rootsCarry_d,
  survivalDifference,
  unwateredPotential_kPa,
} from "./root-work.ts";
export { pouredTemperature_C, rootZoneClass, rootZoneGrowth, standingTime_min } from "./root-zone.ts";
export {
  convertedSalt_mS_cm,
  dissolved_mg_L,
  pasteRatio,
  pourThroughRatio,
  type SaltClass,
  type SaltMethod,
  saltClass,
  saltMethods,
  saltRating,
} from "./salt-methods.ts";
export {
  appliedWithLeaching_mm,
  leachedShare_frac,
  saltAtDecline_mS_cm,
  saltYield_frac,
  waterForExtract_mS_cm,
} from "./salt-response.ts";
export {
  freeboardRoom,
  type PotForm,
  type PotShape,
  potArea_cm2,
  potForms,
  potVolume_mL,
  usualFreeboard_cm,
} from "./shape.ts";
export {
  type Displaced,
  type FlushPlan,
  flushedSalt_mS_cm,
  flushPlan,
  leachByRule_mL,
  type Solutes,
  steadySalt,
  watered,
  wateringsFromBelow_n,
} from "./solutes.ts";
export { sources as mediumSources } from "./sources.ts";
