import type { Said } from "../words/said.ts";
import type { Origin } from "./working.ts";

/** A named quantity that one craft offers to the others, with its doubt and where it comes from. */
export interface Reading {
  readonly value: number;
  /** Standard deviation in the reading's unit; relative errors are turned into it. */
  readonly sd: number;
  readonly origin: Origin;
  /** In words for the working: "24 leaves of about 5 x 2.5 cm". */
  readonly from: Said;
}
