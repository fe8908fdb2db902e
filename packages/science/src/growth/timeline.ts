import { valuesOf } from "../assumption.ts";
import { growthAssumptions } from "./assumptions.ts";
import { isSlow, type Pepper, phaseSums } from "./phases.ts";

/** A stretch of development: from one code of the scale to another, evenly over its thermal time since sowing. */
type Stretch = {
  readonly bbchFrom: number;
  readonly bbchTo: number;
  readonly start_Cd: number;
  readonly end_Cd: number;
};

export type Timeline = {
  readonly stretches: readonly Stretch[];
  /** ends of the three phases since sowing, and their spreads */
  readonly phases: readonly { readonly end_Cd: number; readonly spread_frac: number }[];
  readonly emergence_Cd: number;
  readonly emergenceSpread_frac: number;
};

/** Last code that a clock can know; what comes later is seen, not computed. */
export const lastBbch = 81;

/**
 * When each code of the scale falls on the clock of a plant, counted from sowing.
 *
 * @source our assumption; codes Feller1995, sums as in phaseSums
 */
export function timelineOf(plant: Pepper): Timeline {
  const set = valuesOf(growthAssumptions, plant);
  const sums = phaseSums(plant);
  const flower_Cd = sums.transplant_Cd + sums.flower_Cd;
  const ends: readonly (readonly [number, number, number])[] = [
    [0, 5, sums.radicle_Cd],
    [5, 9, sums.emergence_Cd],
    [9, 10, sums.emergence_Cd + sums.cotyledon_Cd],
    [10, 15, sums.transplant_Cd],
    [15, 19, sums.transplant_Cd + set.budShare_frac * sums.flower_Cd],
    [51, 59, flower_Cd],
    [61, 69, flower_Cd + sums.fullSize_Cd],
    [71, 79, flower_Cd + sums.ripe_Cd],
  ];
  let start_Cd = 0;
  const stretches = ends.map(([bbchFrom, bbchTo, wanted_Cd]): Stretch => {
    // Each sum is set by itself; where two contradict one another the later stage waits for the earlier one.
    const stretch = { bbchFrom, bbchTo, start_Cd, end_Cd: Math.max(start_Cd, wanted_Cd) };
    start_Cd = stretch.end_Cd;
    return stretch;
  });
  const endOf = (bbch: number): number => stretches.find((each) => each.bbchTo === bbch)?.end_Cd ?? start_Cd;
  return {
    stretches,
    phases: [
      { end_Cd: endOf(15), spread_frac: set.transplantSpread_frac },
      { end_Cd: endOf(59), spread_frac: set.flowerSpread_frac },
      { end_Cd: endOf(79), spread_frac: set.ripeSpread_frac },
    ],
    emergence_Cd: endOf(9),
    emergenceSpread_frac: isSlow(plant.species) ? set.emergenceSlowSpread_frac : set.emergenceSpread_frac,
  };
}

/**
 * Thermal time since sowing at which a code is reached. Side shoots (21 to 29) come while the main shoot makes its last leaves
 * before the first bud; codes that no clock knows fall to the next one that it does.
 *
 * @source our assumption
 */
export function whenReached_Cd({ stretches }: Timeline, bbch: number): number {
  const onMainShoot = bbch >= 20 && bbch < 30 ? Math.max(15, bbch - 10) : bbch;
  let last_Cd = 0;
  for (const { bbchFrom, bbchTo, start_Cd, end_Cd } of stretches) {
    if (onMainShoot <= bbchFrom) return start_Cd;
    const along = (onMainShoot - bbchFrom) / (bbchTo - bbchFrom);
    if (along <= 1) return start_Cd + along * (end_Cd - start_Cd);
    last_Cd = end_Cd;
  }
  return last_Cd;
}

/**
 * Code reached at a thermal time since sowing, whole.
 *
 * @source our assumption
 */
export function bbchAt({ stretches }: Timeline, since_Cd: number): number {
  for (const { bbchFrom, bbchTo, start_Cd, end_Cd } of stretches) {
    if (since_Cd >= end_Cd) continue;
    const along = (since_Cd - start_Cd) / (end_Cd - start_Cd);
    // A hair is added so that a code reached to the last digit counts as reached.
    return Math.floor(bbchFrom + along * (bbchTo - bbchFrom) + 1e-9);
  }
  return lastBbch;
}

/**
 * Standard deviation of the thermal time from one moment to another: spreads of the phases between, independent.
 *
 * @source our assumption; independent errors of the phases
 */
export function sdBetween_Cd(timeline: Timeline, from_Cd: number, to_Cd: number): number {
  const shared = (start_Cd: number, end_Cd: number): number =>
    Math.max(0, Math.min(to_Cd, end_Cd) - Math.max(from_Cd, start_Cd));
  let start_Cd = 0;
  let variance = 0;
  timeline.phases.forEach(({ end_Cd, spread_frac }, phase) => {
    const whole = spread_frac * shared(start_Cd, end_Cd);
    // Seed is less even than what grows from it: until then its own spread holds.
    const seed = phase === 0 ? timeline.emergenceSpread_frac * shared(0, timeline.emergence_Cd) : 0;
    variance += Math.max(whole, seed) ** 2;
    start_Cd = end_Cd;
  });
  return Math.sqrt(variance);
}
