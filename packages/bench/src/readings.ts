import { usualCapacity } from "./plants/capacity.ts";
import { type PlantFacts, usualLeafArea } from "./plants/facts.ts";
import type { Reading } from "./working/reading.ts";

export type { Reading } from "./working/reading.ts";

export interface ReadingKind {
  readonly what: string;
  readonly unit: string;
  readonly min: number;
  readonly max: number;
  /** The default when no craft offers it, shown as assumed (or measured, where a plain fact settles it). */
  usual(plant: PlantFacts, at_ms: number): Reading;
}

/**
 * Every reading, declared once. A craft offers one by the same name; the last craft in the registry that offers wins.
 */
export const readingKinds = {
  leafArea_m2: { what: "one-sided area of all leaves", unit: "m²", min: 0, max: 20, usual: usualLeafArea },
  capacityPrior_g: {
    what: "water between just drained and first lasting wilt, by pot and medium",
    unit: "g",
    min: 1,
    max: 200_000,
    usual: usualCapacity,
  },
  capacity_g: {
    what: "water between just drained and first lasting wilt, as learned",
    unit: "g",
    min: 1,
    max: 200_000,
    usual: usualCapacity,
  },
  waterHeld_g: {
    what: "water above first lasting wilt",
    unit: "g",
    min: 0,
    max: 200_000,
    usual: (plant, at_ms) => {
      const capacity = usualCapacity(plant, at_ms);
      return {
        value: capacity.value / 2,
        sd: capacity.value * 0.3,
        origin: "assumed",
        from: "nothing known of its water: taken as half full",
      };
    },
  },
  openFlowers_n: {
    what: "open flowers",
    unit: "",
    min: 0,
    max: 5000,
    usual: () => ({ value: 0, sd: 3, origin: "assumed", from: "no flowers written" }),
  },
} as const satisfies Record<string, ReadingKind>;

export type ReadingName = keyof typeof readingKinds;
export type Read = (name: ReadingName) => Reading;
