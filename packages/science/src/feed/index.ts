export { type Drift, drifts, feedDrift, potentialAcidity_mg_g, sulphuricAcid } from "./acidity.ts";
export { type Atom, atomicMass_g_mol, elementShare_frac, molarMass_g_mol } from "./atoms.ts";
export {
  CONDUCTIVITY_TRUSTED_TO_mS_cm,
  conductivity_mS_cm,
  conductivityByCations_mS_cm,
  type Ions,
} from "./conductivity.ts";
export { type NutritionSign, nutritionSigns } from "./deficiencies.ts";
export {
  balancedFeed_mg_L,
  DRY_MASS_FOR_WATER_g_L,
  demand_mg,
  demanded,
  fruit_mg_g,
  seldomFeed_mg_L,
  tissue_frac,
} from "./demand.ts";
export {
  doseConcentration_mg_L,
  doseForConcentration_g_L,
  doseSpread_mg_L,
  type InjectorConvention,
  injectorConventions,
  type LabelBasis,
  labelBases,
  liquidContent_mg_mL,
  stockDose_mL_L,
  stockStrength_g_L,
  thinning,
} from "./doses.ts";
export {
  type Label,
  type LabelDoubt,
  type ReadLabel,
  readLabel,
  USUAL_BULK_DENSITY_g_mL,
  USUAL_DENSITY_g_mL,
} from "./label.ts";
export { leastCost } from "./lp.ts";
export {
  conductivityAt25_mS_cm,
  conductivityRead_mS_cm,
  likelySlips,
  METER_BAND_frac,
  type MeterScale,
  meterReading,
  meterScales,
  type Slip,
} from "./meter.ts";
export { bestMix, isMade, type Mix, type MixRefusal, type MixTable } from "./mix.ts";
export { bestLinearMix, type LinearMix, type Shortfall, shortfalls } from "./mix-linear.ts";
export type { MixAim, MixLimits, MixProblem, MixProduct } from "./mix-problem.ts";
export { type RelaxedMix, relaxedMix } from "./mix-relaxed.ts";
export { halfYieldSalt, mixedPotSalt } from "./pot-salts.ts";
export { coatedLife_d, coatedReleased_frac, labelDays } from "./slow-release.ts";
export {
  type Clash,
  clashes,
  dissolved,
  dissolvingSalts,
  gypsumIndex,
  STOCK_OF_SOLUBLE_frac,
  solubility_g_L,
} from "./solubility.ts";
export { sources as feedSources } from "./sources.ts";
export { type Aimed, type Amounts, aimed, amountOf, type Species, species, sumAmounts } from "./species.ts";
export {
  aimWeights,
  type FeedStage,
  feedLimits,
  feedStages,
  microTargets,
  type StageTargets,
  stageTargets,
  type Target,
} from "./targets.ts";
export {
  blendedWater,
  closedIons,
  hardnessOf_mg_L,
  ionImbalance_frac,
  ionsOf,
  pureShare_frac,
  softenerAdds_mg_L,
  USUAL_WATER_SPREAD_frac,
  usualWater,
  type WaterReport,
  waterAmounts_mg_L,
  waterLimits,
} from "./water.ts";
