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
 * Remembers the last plant asked about: a history asks the same at every midnight, and wording where a value comes from costs
 * more than the value. Facts never change in place.
 */
function lastAsked(of: (plant: PlantFacts) => Reading): ReadingKind["usual"] {
  let asked: PlantFacts | undefined;
  let answer: Reading | undefined;
  return (plant) => {
    if (answer === undefined || asked !== plant) {
      answer = of(plant);
      asked = plant;
    }
    return answer;
  };
}
const leafArea = lastAsked(usualLeafArea);
const capacity = lastAsked(usualCapacity);

/**
 * Every reading, declared once. A craft offers one by the same name; the last craft in the registry that offers wins.
 */
export const readingKinds = {
  leafArea_m2: { what: "one-sided area of all leaves", unit: "m²", min: 0, max: 20, usual: leafArea },
  capacityPrior_g: {
    what: "water between just drained and first lasting wilt, by pot and medium",
    unit: "g",
    min: 1,
    max: 200_000,
    usual: capacity,
  },
  capacity_g: {
    what: "water between just drained and first lasting wilt, as learned",
    unit: "g",
    min: 1,
    max: 200_000,
    usual: capacity,
  },
  waterHeld_g: {
    what: "water above first lasting wilt",
    unit: "g",
    min: 0,
    max: 200_000,
    usual: (plant, at_ms) => {
      const { value } = capacity(plant, at_ms);
      return {
        value: value / 2,
        sd: value * 0.3,
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
