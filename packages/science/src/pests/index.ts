export {
  bestLook,
  causeKeys,
  causePriors_frac,
  type LearnedSigns,
  type RankedCause,
  rankCauses,
  type SignKey,
  signKeys,
  signShare_frac,
  type Trouble,
} from "./causes.ts";
export {
  type ClearancePoint,
  clearancePath,
  EYES,
  hiddenFloor_d,
  PACES,
  type PestWatch,
  type WatchAct,
} from "./clearance.ts";
export {
  type Curve,
  type HiddenStages,
  type PestClock,
  type PestName,
  pestClocks,
  pestNames,
  pestPace,
} from "./clocks.ts";
export {
  meanStageSum_Cd,
  mildewGerminates,
  stageRate_per_d,
  tabledDuration_d,
  temperatureOfDuration_C,
  thermalConstants,
} from "./development.ts";
export {
  type BatchMethod,
  batchMethods,
  batchSensitivity_frac,
  detectableShare_frac,
  exactInterval,
  finds_frac,
  noneSeen,
  riskGroups,
  sampleSensitivity_frac,
  unitMethods,
  unitsForBatch_n,
  unitsForSample_n,
  unitsWithFalseFinds_n,
  waysTogether,
} from "./freedom.ts";
export {
  doublingTime_d,
  intrinsicRate_per_d,
  lifeTableRate,
  multiplication_n,
  simpleRate,
  vitalRate,
} from "./increase.ts";
export { aphidColony, captureToHold_frac, type DailyClasses, gnatsByDay, steadyGnats } from "./leslie.ts";
export {
  arrivalWithin_frac,
  cleanVisits,
  exposureNeeded,
  freeAfterClean_frac,
  freedomReached,
  freeNextPeriod_frac,
  movedBelief_frac,
  releaseNow,
  sensitivityNeeded_frac,
  surveysWorth_n,
} from "./periods.ts";
export { type HiddenResponse, type PestResponse, pestResponse, VERY_MANY_n } from "./response.ts";
export {
  cardRate_n,
  cardsForRoom_n,
  infestedShare_frac,
  leafMiss,
  meanOfInfested_n,
  ownSight_frac,
  sequentialLooks,
  stopCount_n,
  taylorLaw,
  unitsToCount_n,
} from "./sampling.ts";
export { sources as pestsSources } from "./sources.ts";
export { cohortOnCard, growingExposure } from "./steady-exposure.ts";
export {
  agentsPerPot_n,
  breakEvenKill_frac,
  concentrate,
  courseCleared,
  courseLength_n,
  mixStrength,
  treatmentsNeeded_n,
} from "./treatment.ts";
export { cardTrend, silence_frac, twoPeriods } from "./trend.ts";
