import { type Chance, chanceOf } from "../nursery/chance.ts";
import { type Colony, colonyOf } from "./colony.ts";
import { type Creature, type CreatureName, creatureNames, drawCreature } from "./creatures.ts";
import { drawEyes, type Eyes, type Way } from "./eyes.ts";

/** Where a plant comes from when it is first watched. */
export const origins = ["quiet", "exposed", "bought", "treated"] as const;
export type Origin = (typeof origins)[number];

export interface WatchedAct {
  readonly day: number;
  readonly way: Way | "spray";
  /** Days that a card hung. */
  readonly out_d?: number;
  /** What was found of each kind; only kinds that were. */
  readonly found: Partial<Record<CreatureName, number>>;
}

/** One plant over some weeks: what its people did and found, and what was truly on it at the end of each day. */
export interface WatchedPlant {
  readonly origin: Origin;
  /** Of a treated plant: what had been found, how many of them, and what the course was. */
  readonly treated?: {
    readonly name: CreatureName;
    readonly counted_n: number;
    readonly sprays_n: number;
    readonly every_d: number;
    readonly kill_frac: number;
  };
  readonly acts: readonly WatchedAct[];
  readonly isOn: Readonly<Record<CreatureName, readonly boolean[]>>;
}

export interface WatchedRun {
  readonly means_C: readonly number[];
  readonly swing_C: number;
  readonly plants: readonly WatchedPlant[];
}

/**
 * Odds that a plant of a quiet room carries anything, and the chance a day that anything comes to it; which it is, by how often
 * each is met on house peppers. One in twenty for every kind apart would be a quarter of a room in which nobody found a thing
 * for months.
 *
 * @source our assumption
 */
const CARRIES = 0.05;
const FLIES_IN_per_d = 0.0005;
const SHARES: Readonly<Record<CreatureName, number>> = {
  aphid: 0.28,
  "spider mite": 0.15,
  "broad mite": 0.07,
  thrips: 0.15,
  whitefly: 0.1,
  "fungus gnat": 0.25,
};

/** The worst a course does to what was there before it; a day of the watch is 0 when the course is over. */
const BEFORE_d = 30;

/**
 * A nursery watched for some weeks after its plants came in. How often plants bring something, how people look, how warm it is
 * and how pests live differ from run to run.
 *
 * @source our assumption: shares of infested plants scatter by half or double from run to run
 */
export function watchedRun(seed: number, plants_n: number, days_n: number): WatchedRun {
  const chance = chanceOf(`pests ${seed}`);
  const room_C = chance.between(16, 25);
  const swing_C = chance.between(0.5, 4);
  const means_C = Array.from({ length: days_n }, () => room_C + chance.normal(0, 0.8));
  const creatures = new Map(creatureNames.map((name) => [name, drawCreature(name, chance)]));
  const usual = new Map(creatureNames.map((name) => [name, chance.logNormal(CARRIES * SHARES[name], 0.5)]));
  const times = { quiet: 1, exposed: chance.logNormal(6, 0.3), bought: chance.logNormal(4, 0.3), treated: 1 };
  const flyIn_per_d = chance.logNormal(FLIES_IN_per_d, 0.5);
  const eyes = drawEyes(chance.under("eyes"));
  const habit = drawHabit(chance);
  const plants = Array.from({ length: plants_n }, (_, i) => {
    const own = chance.under(`plant ${i}`);
    const origin = own.pick(origins);
    const colonies = new Map<CreatureName, Colony>();
    const comes = new Map<CreatureName, number>();
    for (const name of creatureNames) {
      const odds = (usual.get(name) as number) * times[origin];
      const creature = creatures.get(name) as Creature;
      const colony = colonyOf(creature, own.logNormal(1, 0.2), own.under(name));
      colonies.set(name, colony);
      if (own.happens(odds / (1 + odds))) settle(colony, name, own);
      const day = Math.floor(-Math.log(1 - own.uniform()) / (flyIn_per_d * SHARES[name]));
      if (day < days_n) comes.set(name, day);
    }
    const treated = origin === "treated" ? treat(colonies, eyes, room_C, swing_C, own) : undefined;
    return {
      origin,
      ...(treated ? { treated } : {}),
      ...watch({ colonies, comes, eyes, means_C, swing_C, days_n, habit, chance: own }),
    };
  });
  return { means_C, swing_C, plants };
}

interface Habit {
  readonly every_d: number;
  readonly ways: readonly Exclude<Way, "card">[];
  readonly hasCard: boolean;
  readonly misses: number;
}

const drawHabit = (chance: Chance): Habit => ({
  every_d: chance.pick([5, 7, 7, 7, 10]),
  ways: chance.pick([["lens"], ["lens", "tap"], ["lens", "tap", "disc"], ["eye", "tap", "disc"]] as const),
  hasCard: chance.happens(0.8),
  misses: chance.between(0, 0.2),
});

/** A few animals to begin with, of the stage in which they come: on wings, as crawlers, as eggs in the medium. */
function settle(colony: Colony, name: CreatureName, chance: Chance): void {
  const count_n = chance.pick([1, 1, 1, 2, 2, 3, 4, 6, 9]);
  if (name === "fungus gnat") {
    if (chance.happens(0.5)) colony.found("egg", count_n + 2);
    else
      for (const stage of ["egg", "young", "pupa", "adult"] as const)
        colony.found(stage, stage === "young" ? 4 : 1);
  } else {
    colony.found(chance.happens(0.6) ? "adult" : "young", 1);
    colony.found("young", count_n - 1);
  }
}

/** A colony that had its time, was seen, and was sprayed: what is left of it is where the watch begins. */
function treat(
  colonies: ReadonlyMap<CreatureName, Colony>,
  eyes: Eyes,
  room_C: number,
  swing_C: number,
  chance: Chance,
): WatchedPlant["treated"] {
  const name = chance.pick(["aphid", "aphid", "aphid", "spider mite", "thrips", "whitefly"] as const);
  const colony = colonies.get(name) as Colony;
  if (colony.isEmpty()) settle(colony, name, chance);
  let counted_n = 0;
  for (let day = 0; day < BEFORE_d && counted_n === 0; day++) {
    colony.day(room_C, swing_C);
    if (colony.isEmpty()) settle(colony, name, chance);
    if (day % 4 === 3) counted_n = eyes.look("lens", name, colony.counts(), 0);
  }
  const sprays_n = chance.whole(3, 6);
  const every_d = chance.pick([3, 4, 5]);
  const kill_frac = Math.min(0.97, chance.normal(0.8, 0.07));
  for (let spray = 0; spray < sprays_n; spray++) {
    colony.cull(name === "aphid" ? ["young", "adult"] : ["egg", "young", "adult"], kill_frac);
    if (spray < sprays_n - 1) for (let day = 0; day < every_d; day++) colony.day(room_C, swing_C);
  }
  return { name, counted_n: Math.max(1, counted_n), sprays_n, every_d, kill_frac };
}

function watch(given: {
  readonly colonies: ReadonlyMap<CreatureName, Colony>;
  readonly comes: ReadonlyMap<CreatureName, number>;
  readonly eyes: Eyes;
  readonly means_C: readonly number[];
  readonly swing_C: number;
  readonly days_n: number;
  readonly habit: Habit;
  readonly chance: Chance;
}): Pick<WatchedPlant, "acts" | "isOn"> {
  const { colonies, comes, eyes, means_C, swing_C, days_n, habit, chance } = given;
  const acts: WatchedAct[] = [];
  const isOn = Object.fromEntries(creatureNames.map((name) => [name, [] as boolean[]])) as Record<
    CreatureName,
    boolean[]
  >;
  let onCard: WatchedAct["found"] = {};
  let hung_d = 0;
  let damage_d = 0;
  for (let day = 0; day < days_n; day++) {
    for (const [name, colony] of colonies) {
      if (comes.get(name) === day) settle(colony, name, chance);
      colony.day(means_C[day] as number, swing_C);
      if (habit.hasCard && !colony.isEmpty()) onCard = more(onCard, name, eyes.catchOf(name, colony));
    }
    hung_d += 1;
    const mites = (colonies.get("broad mite") as Colony).counts();
    damage_d = mites.young + mites.adult > 8 ? damage_d + 1 : 0;
    if (day % habit.every_d === habit.every_d - 1 && !chance.happens(habit.misses)) {
      for (const way of habit.ways) {
        let found: WatchedAct["found"] = {};
        for (const [name, colony] of colonies)
          if (!colony.isEmpty()) found = more(found, name, eyes.look(way, name, colony.counts(), damage_d));
        acts.push({ day, way, found });
      }
      if (habit.hasCard) acts.push({ day, way: "card", out_d: hung_d, found: onCard });
      onCard = {};
      hung_d = 0;
    }
    for (const [name, colony] of colonies) isOn[name].push(!colony.isEmpty());
  }
  return { acts, isOn };
}

const more = (found: WatchedAct["found"], name: CreatureName, count_n: number): WatchedAct["found"] =>
  count_n === 0 ? found : { ...found, [name]: (found[name] ?? 0) + count_n };
