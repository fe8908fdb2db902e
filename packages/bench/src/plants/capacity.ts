import { whence } from "../words/whence.ts";
import type { Reading } from "../working/reading.ts";
import type { PlantFacts } from "./facts.ts";
import { type Medium, mediumVolume_mL, USUAL_POT } from "./pot.ts";

/**
 * Share of the medium's volume that the plant can draw: container capacity less the water left at lasting wilt, for
 * a pot about 9 cm deep. Peat at -1 kPa holds 0.58 new and wilts at 0.12 to 0.20 (air-water sheet S2, after Cannavo
 * et al. 2011); bark and grit are our assumption until a porosity test or a dry-down says more.
 */
export const AVAILABLE_frac: Readonly<Record<Medium, number>> = {
  spongy: 0.42,
  bark: 0.32,
  gritty: 0.22,
  unknown: 0.39,
};

/**
 * Relative sd of a capacity that was only estimated from pot and medium: 0.25 for a fresh one (air-water sheet S2), more for one
 * that somebody has packed, rooted through and aged. @source our assumption for the latter
 */
export const CAPACITY_SD_frac = 0.42;
/** The same where the pot, or the medium, is not written; where neither is, both doubts add up. @source our assumption */
const CAPACITY_SD_UNKNOWN_frac = 0.6;
const CAPACITY_SD_NOTHING_frac = 0.7;

/** Water between just drained and first lasting wilt by pot and medium, g. */
export function usualCapacity(plant: PlantFacts): Reading {
  const pot = plant.pot ?? USUAL_POT;
  const value = mediumVolume_mL(pot) * AVAILABLE_frac[plant.medium];
  const unknown_n = Number(plant.pot === undefined) + Number(plant.medium === "unknown");
  return {
    value,
    sd: value * ([CAPACITY_SD_frac, CAPACITY_SD_UNKNOWN_frac, CAPACITY_SD_NOTHING_frac][unknown_n] as number),
    origin: "assumed",
    from: whence((words) => words.capacity(plant.medium, mediumVolume_mL(pot), AVAILABLE_frac[plant.medium])),
  };
}
