export { tracedOf } from "./traced-of.ts";
export {
  branches_n,
  isEnough,
  lineInSide,
  nudged,
  type Phase,
  type Photo,
  phaseOf,
  placedPoint,
  START,
  type Tap,
  type Tracing,
  type Trouble,
  takenBack,
  tapped,
  withPhoto,
} from "./tracing.ts";
