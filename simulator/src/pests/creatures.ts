import type { Chance } from "../nursery/chance.ts";

/** The pests that live in the simulated nursery. */
export const creatureNames = [
  "aphid",
  "spider mite",
  "broad mite",
  "thrips",
  "whitefly",
  "fungus gnat",
] as const;
export type CreatureName = (typeof creatureNames)[number];

/** How one kind of pest lives in one run: drawn around what people reported, so that no engine can have it by heart. */
export interface Creature {
  readonly name: CreatureName;
  /** Juvenile stages in order; the last of them becomes an adult. */
  readonly stages: readonly {
    readonly name: "egg" | "young" | "pupa";
    readonly at20_d: number;
    readonly survives: number;
  }[];
  readonly still_C: number;
  readonly fastest_C: number;
  /** Life of an adult at 20 °C, and young a female bears in a day there. */
  readonly adult_d: number;
  readonly young_per_d: number;
  readonly females: number;
  /** How far one animal's pace lies from another's. */
  readonly pace: number;
  /** More than so many on a small plant and it stops: no room, no sap. */
  readonly room_n: number;
}

type Sketch = Omit<Creature, "name">;
const stage = (name: "egg" | "young" | "pupa", at20_d: number, survives: number) => ({
  name,
  at20_d,
  survives,
});

/**
 * Middles of what is drawn. They are in the order of magnitude of life tables on peppers and other house crops, rounded and
 * from memory; each run moves every one of them.
 *
 * @source our assumption
 */
const SKETCHES: Readonly<Record<CreatureName, Sketch>> = {
  aphid: {
    stages: [stage("young", 7.3, 0.85)],
    still_C: 3.5,
    fastest_C: 27,
    adult_d: 17,
    young_per_d: 3,
    females: 1,
    pace: 0.1,
    room_n: 260,
  },
  "spider mite": {
    stages: [stage("egg", 6.8, 0.92), stage("young", 8.2, 0.85)],
    still_C: 10.5,
    fastest_C: 32,
    adult_d: 17,
    young_per_d: 3.2,
    females: 0.75,
    pace: 0.12,
    room_n: 400,
  },
  "broad mite": {
    stages: [stage("egg", 2.9, 0.9), stage("young", 3.5, 0.85)],
    still_C: 9.5,
    fastest_C: 30,
    adult_d: 13,
    young_per_d: 2.2,
    females: 0.75,
    pace: 0.12,
    room_n: 400,
  },
  thrips: {
    stages: [stage("egg", 5.4, 0.8), stage("young", 7.4, 0.7), stage("pupa", 6.2, 0.8)],
    still_C: 9.2,
    fastest_C: 30,
    adult_d: 22,
    young_per_d: 1.5,
    females: 0.65,
    pace: 0.12,
    room_n: 300,
  },
  whitefly: {
    stages: [stage("egg", 9.5, 0.9), stage("young", 16, 0.65), stage("pupa", 7.5, 0.85)],
    still_C: 8.3,
    fastest_C: 28,
    adult_d: 20,
    young_per_d: 2.2,
    females: 0.5,
    pace: 0.1,
    room_n: 300,
  },
  "fungus gnat": {
    stages: [stage("egg", 4.5, 0.8), stage("young", 13.8, 0.75), stage("pupa", 4.5, 0.8)],
    still_C: 4.5,
    fastest_C: 26,
    adult_d: 4.8,
    young_per_d: 14,
    females: 0.45,
    pace: 0.12,
    room_n: 300,
  },
};

/** One run's pest of that name. Populations, cultivars and laboratories differ by tens of per cent. */
export function drawCreature(name: CreatureName, chance: Chance): Creature {
  const sketch = SKETCHES[name];
  const slow = chance.logNormal(1, 0.1);
  return {
    name,
    stages: sketch.stages.map((each) => ({
      name: each.name,
      at20_d: each.at20_d * slow * chance.logNormal(1, 0.06),
      survives: Math.min(0.98, each.survives * chance.logNormal(1, 0.05)),
    })),
    still_C: sketch.still_C + chance.normal(0, 0.7),
    fastest_C: sketch.fastest_C + chance.normal(0, 1),
    adult_d: sketch.adult_d * chance.logNormal(1, 0.15),
    young_per_d: sketch.young_per_d * chance.logNormal(1, 0.25),
    females: sketch.females,
    pace: sketch.pace,
    room_n: sketch.room_n,
  };
}

/**
 * Pace of life against that at 20 °C. Rises a little faster than a straight line, bends over near the warmth it likes best and
 * falls to nothing 9 °C above: no line through two points, and none of the engine's tables.
 */
export function paceAt(
  air_C: number,
  { still_C, fastest_C }: Pick<Creature, "still_C" | "fastest_C">,
): number {
  const end_C = fastest_C + 9;
  const shape = (at_C: number): number =>
    at_C <= still_C || at_C >= end_C ? 0 : at_C * (at_C - still_C) * Math.sqrt(end_C - at_C);
  return shape(air_C) / shape(20);
}
