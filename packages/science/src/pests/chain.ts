import { at, type HiddenStages } from "./clocks.ts";

/** Substages of each stage that an animal grows through: a spread of 12 % about its mean. */
const SUBSTAGES_n = 70;
/** Egg, young and pupa in substages, then all adults. */
export const CHAIN_n = 3 * SUBSTAGES_n + 1;
/** A larger step would narrow the spread. */
const LARGEST_STEP_n = 0.3;
const HOUR_d = 1 / 24;

/** What one hour does to a chain at its temperature: the same for all chains in that air. */
export type ChainHour = {
  readonly steps_n: number;
  readonly egg_n: number;
  readonly young_n: number;
  readonly pupa_n: number;
  readonly dying_n: number;
  readonly births_n: number;
  readonly hatch_frac: number;
  readonly youngSurvive_frac: number;
  readonly emergence_frac: number;
};

/**
 * The hour of a hidden pest at a temperature, cut into steps that move at most 0.3 substages.
 *
 * a = n v dt for each stage; adults lose 1/life; births = females' eggs over their life
 *
 * @param stages its stages
 * @param air_C temperature [°C] of where they live
 * @returns what each of the steps moves
 * @source Bradysia1998 for gnats; Leslie1945 for counting by stages; the substages are our assumption
 */
export function chainHour(stages: HiddenStages, air_C: number): ChainHour {
  const egg = SUBSTAGES_n * at(stages.egg, air_C) * HOUR_d;
  const young = SUBSTAGES_n * at(stages.young, air_C) * HOUR_d;
  const pupa = SUBSTAGES_n * at(stages.pupa, air_C) * HOUR_d;
  const steps_n = Math.max(1, Math.ceil(Math.max(egg, young, pupa) / LARGEST_STEP_n));
  const dying_per_d = at(stages.dying, air_C);
  return {
    steps_n,
    egg_n: egg / steps_n,
    young_n: young / steps_n,
    pupa_n: pupa / steps_n,
    dying_n: (dying_per_d * HOUR_d) / steps_n,
    births_n: (at(stages.eggs, air_C) * stages.female_frac * dying_per_d * HOUR_d) / steps_n,
    hatch_frac: at(stages.hatch, air_C),
    youngSurvive_frac: stages.youngSurvive_frac,
    emergence_frac: at(stages.emergence, air_C),
  };
}

/** One stage moves on: what comes in enters its first substage, what leaves its last is handed back. */
function moved(chain: Float64Array, from: number, a: number, into: number): number {
  const last = from + SUBSTAGES_n - 1;
  const out = a * (chain[last] as number);
  for (let i = last; i > from; i--) chain[i] = (chain[i] as number) * (1 - a) + a * (chain[i - 1] as number);
  chain[from] = (chain[from] as number) * (1 - a) + into;
  return out;
}

/**
 * Carries a chain through an hour, in place.
 *
 * @param chain animals in substages of egg, young and pupa, then adults
 * @param hour what the hour's temperature does
 * @source our assumption: a chain of substages, explicit steps
 */
export function chainThroughHour(chain: Float64Array, hour: ChainHour): void {
  const adult = CHAIN_n - 1;
  for (let step = 0; step < hour.steps_n; step++) {
    const adults = chain[adult] as number;
    const eggs = adults * hour.births_n;
    const hatched = moved(chain, 0, hour.egg_n, eggs) * hour.hatch_frac;
    const grown = moved(chain, SUBSTAGES_n, hour.young_n, hatched) * hour.youngSurvive_frac;
    const emerged = moved(chain, 2 * SUBSTAGES_n, hour.pupa_n, grown) * hour.emergence_frac;
    chain[adult] = adults * (1 - hour.dying_n) + emerged;
  }
}

/**
 * Animals of one of its stages.
 *
 * @param chain the chain
 * @param stage 0 egg, 1 young, 2 pupa
 * @returns number
 * @source our assumption: a sum
 */
export function inStage_n(chain: Float64Array, stage: 0 | 1 | 2): number {
  let sum = 0;
  for (let i = stage * SUBSTAGES_n; i < (stage + 1) * SUBSTAGES_n; i++) sum += chain[i] as number;
  return sum;
}
