export type { Batch, Batches } from "./batches.ts";
export { AVAILABLE_frac, CAPACITY_SD_frac, usualCapacity } from "./capacity.ts";
export { type Habit, leafWidth_m, type Measured, type PlantFacts, usualLeafArea } from "./facts.ts";
export { HIGHEST_NUMBER, habitSchema, plantKinds } from "./kinds.ts";
export {
  type Medium,
  mediumDepth_cm,
  mediumSchema,
  mediumVolume_mL,
  type Pot,
  potSchema,
  rimArea_m2,
  rimDiameter_cm,
  USUAL_POT,
} from "./pot.ts";
export { HABIT_WORDS, MEDIUM_WORDS, potSaid } from "./sentences.ts";
