import type { Ending } from "../book/effects.ts";
import type { EntryId, PlantId, Sha256 } from "../book/entry.ts";
import type { RoundFacts } from "../round/round-facts.ts";
import { whence } from "../words/whence.ts";
import type { Reading } from "../working/reading.ts";
import type { Branches } from "./branches.ts";
import { type Medium, type Pot, rimArea_m2, USUAL_POT } from "./pot.ts";

/** What kind of fruit tree it is, by how the fruit hangs; "unknown" is always an answer. */
export type Habit = "thin" | "fat" | "lantern" | "tiny" | "unknown";

/** A plain fact that somebody measured or looked at. */
export interface Measured<Value = number> {
  readonly value: Value;
  readonly at_ms: number;
  readonly entry: EntryId;
}

/** What the house itself knows of a plant; crafts keep their own slices beside it. */
export interface PlantFacts {
  readonly id: PlantId;
  /** The code on its label, never reused; undefined until one is given. */
  readonly number?: number;
  /** When it got that number, as text that sorts in book order: of two plants with one number the earlier keeps it. */
  readonly numberedAt?: string;
  readonly habit: Habit;
  readonly cultivar?: string;
  readonly batch?: string;
  readonly seedLot?: string;
  readonly mother?: string;
  readonly father?: string;
  readonly rootstock?: string;
  /** YYYY-MM-DD. */
  readonly sownOn?: string;
  readonly broughtAt_ms: number;
  readonly pot?: Pot;
  readonly medium: Medium;
  readonly pottedAt_ms?: number;
  /** Id of the spot on which it stands; see places. */
  readonly spot?: string;
  readonly movedAt_ms?: number;
  readonly height_cm?: Measured;
  readonly caliper_mm?: Measured;
  readonly leaves_n?: Measured;
  readonly leafLength_cm?: Measured;
  readonly leafWidth_cm?: Measured;
  readonly stage?: Measured<string>;
  /** Named by somebody, or traced; none until then. */
  readonly branches?: Branches;
  /** Share of the leaves kept since they were counted, after cuts. */
  readonly leavesKept_frac: number;
  readonly photos: readonly { readonly file: Sha256; readonly at_ms: number; readonly entry: EntryId }[];
  readonly ended?: { readonly how: Ending; readonly at_ms: number };
  readonly notForSale?: boolean;
  readonly rounds: RoundFacts;
}

/** Leaf area above each unit of pot opening for a trained tree in leaf. @source our assumption */
const LEAF_AREA_PER_RIM: Readonly<Record<Habit, number>> = {
  thin: 2.2,
  fat: 2.6,
  lantern: 2.6,
  tiny: 1.3,
  unknown: 2.2,
};
/** A pepper leaf fills about two thirds of the rectangle around it. @source our assumption (usual for ovate leaves) */
const LEAF_FORM_frac = 0.67;
/** Width of a leaf as a share of its length, where only the length was measured. @source our assumption */
const LEAF_WIDTH_PER_LENGTH = 0.5;
const USUAL_LEAF_LENGTH_cm = 5;

/** Length and width of its leaves, as far as they were measured. */
export function leafSize_cm(plant: PlantFacts): { readonly length_cm: number; readonly width_cm: number } {
  const length_cm = plant.leafLength_cm?.value ?? USUAL_LEAF_LENGTH_cm;
  return { length_cm, width_cm: plant.leafWidth_cm?.value ?? length_cm * LEAF_WIDTH_PER_LENGTH };
}

/** Leaf area of such a plant in leaf, by kind and pot alone, m². */
export const fullLeafArea_m2 = (plant: PlantFacts): number =>
  LEAF_AREA_PER_RIM[plant.habit] * rimArea_m2(plant.pot ?? USUAL_POT);

/** One-sided leaf area by leaf count, else by kind and pot. */
export function usualLeafArea(plant: PlantFacts): Reading {
  if (plant.leaves_n) {
    const leaves_n = plant.leaves_n.value;
    const { length_cm, width_cm } = leafSize_cm(plant);
    const value = (leaves_n * plant.leavesKept_frac * length_cm * width_cm * LEAF_FORM_frac) / 10_000;
    return {
      value,
      sd: value * (plant.leafLength_cm ? 0.2 : 0.35),
      origin: plant.leafLength_cm ? "measured" : "assumed",
      from: whence((words) => words.leaves(leaves_n, length_cm, width_cm)),
    };
  }
  const value = fullLeafArea_m2(plant) * plant.leavesKept_frac;
  return { value, sd: value * 0.5, origin: "assumed", from: whence((words) => words.leavesUsual) };
}

/** Width of a leaf, m, for the boundary layer. */
export function leafWidth_m(plant: PlantFacts): number {
  return (
    (plant.leafWidth_cm?.value ??
      (plant.leafLength_cm?.value ?? USUAL_LEAF_LENGTH_cm) * LEAF_WIDTH_PER_LENGTH) / 100
  );
}
