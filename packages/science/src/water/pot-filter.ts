export {
  type DayAhead,
  type DryDown,
  type DryDownDraws,
  type Drying,
  dryDownDraws,
  equallyLikely,
  quantileOf,
  type SurfaceLayer,
  shareUpTo,
  surfaceWet_frac,
} from "./pot-filter-forecast.ts";
export {
  chancePast,
  EYE_SD_frac,
  type Looker,
  type LookMeaning,
  OTHER_LOOKER,
  USUAL_LOOKER,
  withLook,
  withSign,
} from "./pot-filter-look.ts";
export { type PotDemand, type PotNoise, type PotStep, predictPot } from "./pot-filter-predict.ts";
export {
  type Belief,
  CAPACITY,
  covarianceIndex,
  DEPLETION,
  DRAINED,
  EYE,
  GROWTH,
  LEAF,
  meanOf,
  type PotState,
  potState,
  SURFACE,
  sdOf,
  sdOfSum,
  setAnew,
  shifted,
  VARIANCE,
  withMoreDoubt,
} from "./pot-filter-state.ts";
export { conditioned, expectedOf, type Measured, measured, type Seen } from "./pot-filter-update.ts";
export { type UseAhead, useByDay_g } from "./pot-filter-use.ts";
export {
  drainedBelief,
  mixed,
  notEmpty,
  type Pour,
  type Poured,
  type PourMeaning,
  type UnwrittenHabit,
  USUAL_POUR,
  withPour,
  withUnwrittenPour,
} from "./pot-filter-watering.ts";
