export { type ShapeAssumptionKey, type ShapeSettings, shapeAssumptions } from "./assumptions.ts";
export {
  bentShoot,
  evenSag_m,
  hangTest,
  loadSag,
  sectionMoment_m4,
  stiffnessError,
  taperedSag_m,
} from "./beam.ts";
export { breakTime, budBreak_frac, learntBreak_frac, type Wood, woods } from "./bud-break.ts";
export { type CarveAsk, carvedHull, type Hull, type Silhouette } from "./carve.ts";
export { leafColour, otsuThreshold } from "./colour.ts";
export {
  type CrownLight,
  crowdedShare_frac,
  crownLight,
  leavesToPluck,
  meanLight,
  type Sky,
  skyRays,
} from "./crown-light.ts";
export { budsBelow, type CutLaw, cutLaw, keptRows, topmostOnly } from "./cuts.ts";
export { beamExtinction, passedLight_frac, pathLight_frac } from "./extinction.ts";
export { columnHeight, forkCaliper_mm, forkExponent, leafShares_frac, trainedHeight } from "./girth.ts";
export { distinctDirections_n, hullRatio, threeViewHull } from "./hull-ratio.ts";
export {
  type Corner,
  fitsOutline,
  formOutline,
  type Outline,
  type OutlineForm,
  outlineForms,
} from "./outline.ts";
export { divergence_deg, goldenAngle_deg, leafAzimuth_deg } from "./phyllotaxis.ts";
export {
  type Bench,
  chancesBelow,
  firstDirection,
  mayPlan,
  type PlanTerm,
  type PlanTerms,
  planBench,
  planTerms,
  planValue,
  planWeights,
  takenBy,
} from "./plan-score.ts";
export {
  additivePlan,
  candidateCuts,
  type Plan,
  type PlayedPlan,
  planSearch,
  plansAlike_frac,
  playedPlans,
  type SearchAsk,
  type SearchState,
} from "./plan-search.ts";
export { bestPotAngle } from "./pot-angle.ts";
export {
  type Grower,
  type Growing,
  type GrownShoot,
  type Sprout,
  shootGrower,
  sproutsAfter,
} from "./preview.ts";
export {
  indoorPlastochrons,
  printedAccuracy,
  printedParts,
  printedPlastochrons,
  printedStems,
  printedStemsKept,
} from "./printed.ts";
export { regrowthTime_d, removedShare } from "./removal.ts";
export { resourceSplit } from "./resource-split.ts";
export {
  type Branch,
  branchSag,
  fruitsBorne_n,
  type Hung,
  usualStiffness,
} from "./sag.ts";
export { shadowCells_n } from "./shadow-pyramid.ts";
export { sources as shapeSources } from "./sources.ts";
export {
  armsOf,
  internode_mm,
  plantTree,
  type StemNode,
  sideOf_deg,
  stemDirection,
  type Tree,
} from "./tree.ts";
export { bestCuts, type CutChoice } from "./tree-knapsack.ts";
export { preferredDirection, setAngle_deg, shootAngle_deg } from "./tropism.ts";
export {
  type Camera,
  cardDistance_mm,
  focalLengths,
  type Match,
  matchingLine,
  matchOfPlace,
  matchVerdict,
  placeOfMatch,
} from "./two-view.ts";
export { azimuthOf_deg, type Triple } from "./vector.ts";
export { type TipAhead, type WeekAhead, weeksAhead } from "./weeks-ahead.ts";
export { wireTime } from "./wire.ts";
