export { type FruitAssumptionKey, type FruitSettings, fruitAssumptions } from "./assumptions.ts";
export {
  type BranchForFruit,
  fruitsToKeep,
  keepByBranch,
  learnedBudget,
  naturalLoad_n,
  sizeOfLoad,
} from "./capacity.ts";
export {
  type FruitPart,
  fruitCourse_frac,
  fruitParts,
  fruitSink_g_d,
  greenDryMatter_frac,
  potentialDryMass_g,
} from "./demand.ts";
export {
  freshPerDry_frac,
  type HeatBasis,
  type HeatType,
  heatBases,
  heatClass,
  heatClassEnds,
  heatRanges,
  heatTypes,
  onFreshBasis,
  printedHeat,
  scoville,
  scovilleWeighted,
  usualHeat,
} from "./heat.ts";
export {
  type PollenMover,
  pollenMovers,
  pollenRate_frac,
  pollinated_frac,
  setRatio,
  warmthSet_frac,
} from "./pollination.ts";
export {
  type ColourStage,
  colourStages,
  finishOff_d,
  RIPE_LEAST_d,
  RIPE_MOST_d,
  refitRipening,
  ripening,
  wayOfColour_frac,
} from "./ripening.ts";
export {
  type CrossResult,
  crossing,
  crossResult,
  crossResults,
  germinationTest,
  isolationDistances,
  naturalCrossing,
  type SeedIsolation,
  seedIsolations,
  seedLife_d,
} from "./seed.ts";
export { fruitSetRun, setChance_frac, steadySet_frac } from "./set.ts";
export { crownCatch, growthWarmth_frac, lightUse_g_MJ, source_g_d } from "./source.ts";
export { sources as fruitSources } from "./sources.ts";
