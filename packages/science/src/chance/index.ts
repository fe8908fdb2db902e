export { type Generator, seededGenerator } from "./generator.ts";
export { type Belief, carryToOthers, type LinearUpdate, linearUpdate } from "./linear-update.ts";
export { momentMatch, type NormalPart } from "./mixture.ts";
export { inverseMillsRatio, normalDensity, normalProbability, normalQuantile } from "./normal.ts";
export { type ProbitUpdate, probitUpdate } from "./probit-update.ts";
export { blockBootstrapIndices, groupBootstrapMean, sampleQuantile, sampleQuantiles } from "./sample.ts";
export {
  coverage_frac,
  crpsOfNormal,
  crpsOfSample,
  crpsOfSampleCut,
  pinballLoss,
  probabilityTransform,
} from "./scores.ts";
export { sources as chanceSources } from "./sources.ts";
