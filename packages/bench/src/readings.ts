import { usualCapacity } from "./plants/capacity.ts";
import { type PlantFacts, usualLeafArea } from "./plants/facts.ts";
import { stageSaid } from "./words/stage-names.ts";
import { whence } from "./words/whence.ts";
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
 * Remembers the last plant asked about: a history asks the same at every midnight. Facts never change in place.
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

/** What a person calls a stage, as the BBCH code in its middle. @source BBCH monograph (Meier 2001), fruiting vegetables, from memory */
const STAGE_CODES: Readonly<Record<string, number>> = {
  seedling: 11,
  "in leaf": 19,
  "in bud": 55,
  "in flower": 65,
  "in fruit": 75,
  "at rest": 0,
};
/** Daily light of a place that nobody described, and the share of it an average leaf catches. @source our assumption */
const USUAL_DAILY_LIGHT_mol_m2_d = 8;
const USUAL_CAUGHT_frac = 0.5;

/** Nutrients dissolved in a pot of which nobody keeps a ledger. @source our assumption */
const dissolved = (what: string): ReadingKind => ({
  what: `${what} dissolved in the pot`,
  unit: "mg",
  min: 0,
  max: 1e6,
  usual: () => ({ value: 15, sd: 20, origin: "assumed", from: whence((words) => words.noLedger) }),
});

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
        from: whence((words) => words.waterUnknown),
      };
    },
  },
  openFlowers_n: {
    what: "open flowers",
    unit: "",
    min: 0,
    max: 5000,
    usual: () => ({ value: 0, sd: 3, origin: "assumed", from: whence((words) => words.noFlowers) }),
  },
  stage_bbch: {
    what: "stage of growth, BBCH code of two digits",
    unit: "",
    min: 0,
    max: 99,
    usual: (plant) => {
      const seen = plant.stage;
      return seen
        ? {
            value: STAGE_CODES[seen.value] ?? 19,
            sd: 5,
            origin: "measured",
            from: whence((words, say) => words.seen(stageSaid(seen.value, say))),
          }
        : { value: 19, sd: 20, origin: "assumed", from: whence((words) => words.noStage) };
    },
  },
  thermalTime_Cd: {
    what: "warmth above the base temperature since sowing or since the clock was set again",
    unit: "°C d",
    min: 0,
    max: 100_000,
    usual: () => ({ value: 0, sd: 2000, origin: "assumed", from: whence((words) => words.noWarmth) }),
  },
  nodes_n: {
    what: "nodes on the main stem",
    unit: "",
    min: 0,
    max: 500,
    usual: () => ({ value: 12, sd: 8, origin: "assumed", from: whence((words) => words.noNodes) }),
  },
  lightCaught_mol_d: {
    what: "photons a day that the leaves catch, its one-sidedness counted",
    unit: "mol/d",
    min: 0,
    max: 500,
    usual: (plant, at_ms) => {
      const { value } = leafArea(plant, at_ms);
      return {
        value: value * USUAL_DAILY_LIGHT_mol_m2_d * USUAL_CAUGHT_frac,
        sd: value * USUAL_DAILY_LIGHT_mol_m2_d * USUAL_CAUGHT_frac,
        origin: "assumed",
        from: whence(({ light }) => light.usual),
      };
    },
  },
  saltAtRefill_mS_cm: {
    what: "conductivity of the water in a pot just watered",
    unit: "mS/cm",
    min: 0,
    max: 100,
    usual: () => ({ value: 1.5, sd: 1, origin: "assumed", from: whence((words) => words.noLedger) }),
  },
  saltAtDriest_mS_cm: {
    what: "conductivity of the water in a pot about to be watered",
    unit: "mS/cm",
    min: 0,
    max: 100,
    usual: () => ({ value: 2.5, sd: 2, origin: "assumed", from: whence((words) => words.noLedger) }),
  },
  nitrogen_mg: dissolved("nitrogen"),
  phosphorus_mg: dissolved("phosphorus"),
  potassium_mg: dissolved("potassium"),
  calcium_mg: dissolved("calcium"),
  magnesium_mg: dissolved("magnesium"),
} as const satisfies Record<string, ReadingKind>;

export type ReadingName = keyof typeof readingKinds;
export type Read = (name: ReadingName) => Reading;
