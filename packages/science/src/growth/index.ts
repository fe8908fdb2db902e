export { type GrowthAssumptionKey, type GrowthSettings, growthAssumptions } from "./assumptions.ts";
export { bbchStages, type PrincipalStage, principalStages } from "./bbch.ts";
export type { Cutoff } from "./day-excess.ts";
export {
  cutoffs,
  type DegreeDayMethod,
  degreeDayMethods,
  degreeDays_Cd,
  degreeDaysSum_Cd,
} from "./degree-days.ts";
export { fitThermalTime, fitThermalTimeRange } from "./fit-thermal-time.ts";
export { emergedShare_frac, emergence, emergenceClock, germinatedShare_frac } from "./germination.ts";
export {
  leafArea_cm2,
  leafAreaFromDryMass_cm2,
  leafAreaWithIntercept_cm2,
  leafMassPerArea_g_m2,
  plantLeafArea,
} from "./leaf-area.ts";
export {
  expectedLeafArea,
  expectedRelativeGrowth_per_d,
  leafAreaAfter_m2,
  relativeGrowth_per_d,
  relativeGrowthOf,
} from "./leaf-growth.ts";
export { type NodeClock, nodeClock, nodeRate_per_d, nodesMade } from "./nodes.ts";
export { type FruitClass, fruitClasses, type Pepper, type PhaseSums, phaseSums } from "./phases.ts";
export { compactPepperRates, saturatingRate_per_d, shortestTime_d } from "./saturating-rate.ts";
export { seedsToSow_n } from "./seeds.ts";
export { sources as growthSources } from "./sources.ts";
export { developmentClock, type SpeciesGroup, speciesGroups, thermalTimeOfDay } from "./species.ts";
export { type ExpectedStage, expectedStage, stageReached_frac, stageSum_Cd } from "./stages.ts";
export {
  degreeDaysHourly_Cd,
  type ThermalClock,
  thermalPaceOf,
  thermalRate_Cd_per_d,
  thermalRate_frac,
} from "./thermal-rate.ts";
export { daysForSum_d, meanTemperatureOfSum_C, sumOnOtherBase_Cd } from "./thermal-sum.ts";
