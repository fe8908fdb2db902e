import { CAPACITY, LEAF, sdOf } from "@sillwood/science/water";
import type { Origin } from "../../working/working.ts";
import { hasWeight } from "./events.ts";
import type { WaterSlice } from "./slice.ts";

/** How much of the first doubt must be gone before something counts as learned. @source our assumption */
const LEARNED_frac = 0.75;
const USUAL_LEAF_SD = 0.6;

/** Whether the demand of this plant is the model's or its own. */
export function demandOrigin(slice: WaterSlice): Origin {
  return sdOf(slice.state, LEAF) < LEARNED_frac * USUAL_LEAF_SD ? "learned" : "assumed";
}

export function capacityOrigin(slice: WaterSlice): Origin {
  if (slice.capacityFrom === "dry-down") return "measured";
  return sdOf(slice.state, CAPACITY) < LEARNED_frac * slice.prior.capacitySd_g ? "learned" : "assumed";
}

/** Where the belief of the present wetness comes from. */
export function heldOrigin(slice: WaterSlice): Origin {
  if (slice.seen === undefined && slice.pours.length === 0 && slice.looks.length === 0) return "assumed";
  return "learned";
}

/** The last thing that told how wet it is, for the working. */
export function lastSeen(
  slice: WaterSlice,
): { readonly what: "weighed" | "watered"; readonly at_ms: number } | undefined {
  const weight = slice.weights.filter((each) => each.used).at(-1);
  const pour = slice.pours.at(-1);
  if (weight && hasWeight(slice) && (!pour || weight.at_ms >= pour.at_ms)) {
    return { what: "weighed", at_ms: weight.at_ms };
  }
  return pour ? { what: "watered", at_ms: pour.at_ms } : undefined;
}
