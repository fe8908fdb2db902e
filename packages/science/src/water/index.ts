export { absorbedFromLamp_W_m2, absorbedFromSun_W_m2 } from "./absorbed-light.ts";
export { type WaterAssumptionKey, type WaterSettings, waterAssumptions } from "./assumptions.ts";
export {
  adjustedCropCoefficient,
  coefficientWithinStage,
  maximumCropCoefficient,
  sweetPepperCrop,
  sweetPepperStages,
} from "./crop-coefficient.ts";
export {
  type DepletionAfterWatering,
  type Drained,
  depletionAfterWatering,
} from "./depletion-after-watering.ts";
export { depletionStep, type PotBelief } from "./depletion-step.ts";
export { etBySteps } from "./et-by-steps.ts";
export { hargreavesEt_mm_d } from "./hargreaves.ts";
export {
  boundaryConductance_mol_m2_s,
  characteristicDimension_m,
  leafVapourConductance_mol_m2_s,
  radiativeConductance_mol_m2_s,
  stomatalConductance_mol_m2_s,
} from "./leaf-conductance.ts";
export { leafLossOfDay } from "./leaf-loss-of-day.ts";
export { leafTranspiration } from "./leaf-transpiration.ts";
export { mediumEvaporation } from "./medium-evaporation.ts";
export {
  evaporationEquivalent_mm,
  netLongwave_MJ_m2_d,
  netShortwave_MJ_m2,
  soilHeatOfMonth_MJ_m2_d,
} from "./net-radiation.ts";
export {
  crownProjection_m2,
  depthOnSurface_mm,
  outdoorEvaporation_g_d,
  outdoorTranspiration_g_d,
  outdoorTranspirationByLeaf_g_d,
  rainIntoPot,
  surfaceOfDepth_m2,
} from "./outdoor-pot.ts";
export * from "./pot-filter.ts";
export { capturedShare_frac, leachingRequirement_frac, pourFor, type RewettingKind } from "./pour.ts";
export {
  type ReferenceDay,
  referenceEtDaily_mm_d,
  referenceEtDailyArray,
  referenceEtWorking,
  standardisedEtDaily_mm_d,
} from "./reference-et.ts";
export { cloudFactor, type HourlySurface, lowSun_rad, referenceEtHourly } from "./reference-et-hourly.ts";
export { type KnownOfDay, type LadderResult, referenceEtFromKnown } from "./reference-et-ladder.ts";
export { referenceEtOfHours, type StationHour } from "./reference-et-of-hours.ts";
export { hasDryCore, type RewettingPlan, rewettingPlan } from "./rewetting.ts";
export { screenNightShare, screenPour, screenWeight } from "./screening.ts";
export { sources as waterSources } from "./sources.ts";
export { containerCapacity_frac, potStore_g, soilStore, suctionAtHeight_kPa } from "./store.ts";
export {
  adjustedFieldDepletion_frac,
  dryDown,
  isAirless,
  stressCoefficient,
  useDeclineThreshold_frac,
} from "./stress.ts";
export { evaporationCoefficient, evaporationReduction } from "./surface-drying.ts";
export { benchTranspiration, closedRoomResistance_s_m, referenceEtUnderCover_mm_d } from "./under-cover.ts";
export {
  checkQuantile,
  dryWithin,
  visitToWater_n,
  type WateringOutlook,
  wateringDate,
} from "./watering-date.ts";
