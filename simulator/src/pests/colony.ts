import type { Chance } from "../nursery/chance.ts";
import { type Creature, paceAt } from "./creatures.ts";

/** One animal. Its stage counts up to the number of juvenile stages, which is the adult's. */
interface Animal {
  stage: number;
  done: number;
  readonly pace: number;
  readonly isFemale: boolean;
}

export type StageName = "egg" | "young" | "pupa" | "adult";
export type Counts = Readonly<Record<StageName, number>>;

/** All animals of one kind on one plant, each with a life of its own. */
export interface Colony {
  counts(): Counts;
  isEmpty(): boolean;
  found(stage: StageName, count_n: number): void;
  /** A day of air: the mean, and how far the afternoon lies above it. */
  day(mean_C: number, swing_C: number): void;
  /** Takes animals of these stages away, each with that chance, and says how many. */
  cull(stages: readonly StageName[], chance_frac: number): number;
}

const STEPS_n = 6;

/** @param suits how well this plant feeds them, 1 for the usual */
export function colonyOf(creature: Creature, suits: number, chance: Chance): Colony {
  let animals: Animal[] = [];
  const adult = creature.stages.length;
  const stageOf = (name: StageName): number => {
    if (name === "adult") return adult;
    const at = creature.stages.findIndex((each) => each.name === name);
    return at < 0 ? 0 : at;
  };
  const nameOf = (animal: Animal): StageName => creature.stages[animal.stage]?.name ?? "adult";
  const born = (stage: number, done: number): Animal => ({
    stage,
    done,
    pace: chance.logNormal(1, creature.pace),
    isFemale: chance.happens(creature.females),
  });

  /** Young of a moment: a whole number about the mean, by waiting times. */
  const births = (mean: number): number => {
    let count = 0;
    for (let waited = -Math.log(1 - chance.uniform()); waited < mean; count++)
      waited -= Math.log(1 - chance.uniform());
    return count;
  };

  function step(air_C: number): void {
    const pace = paceAt(air_C, creature) / STEPS_n;
    const young: Animal[] = [];
    const crowd = animals.length / creature.room_n;
    animals = animals.filter((animal) => {
      const stage = creature.stages[animal.stage];
      if (!stage) {
        animal.done += pace / creature.adult_d;
        if (animal.isFemale && crowd < 1) {
          const count_n = births(creature.young_per_d * suits * pace * (1 - crowd));
          for (let i = 0; i < count_n; i++) young.push(born(0, 0));
        }
        // Life is as long as it was cut out to be, and accidents happen: about one in twenty a day.
        return animal.done < animal.pace && !chance.happens(0.05 / STEPS_n);
      }
      const gone = (pace * animal.pace) / stage.at20_d;
      animal.done += gone;
      if (chance.happens(1 - stage.survives ** gone)) return false;
      if (animal.done >= 1) {
        animal.stage += 1;
        animal.done = 0;
      }
      return true;
    });
    animals.push(...young);
  }

  return {
    counts() {
      const counts = { egg: 0, young: 0, pupa: 0, adult: 0 };
      for (const animal of animals) counts[nameOf(animal)] += 1;
      return counts;
    },
    isEmpty: () => animals.length === 0,
    found(stage, count_n) {
      for (let i = 0; i < count_n; i++)
        animals.push({
          ...born(stageOf(stage), chance.uniform() * 0.6),
          ...(stage === "adult" && i === 0 ? { isFemale: true } : {}),
        });
    },
    day(mean_C, swing_C) {
      if (animals.length === 0) return;
      for (let i = 0; i < STEPS_n; i++) step(mean_C + swing_C * Math.sin((2 * Math.PI * (i - 1)) / STEPS_n));
    },
    cull(stages, chance_frac) {
      const before = animals.length;
      animals = animals.filter((animal) => !(stages.includes(nameOf(animal)) && chance.happens(chance_frac)));
      return before - animals.length;
    },
  };
}
