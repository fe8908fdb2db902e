import type { PersonId } from "../../book/entry.ts";
import type { PastPour } from "./slice.ts";

/** Intervals needed before anybody is called regular. */
const LEAST_INTERVALS_n = 4;
/** As regular as a clock, whatever the weather. */
const CLOCKWORK_ln = 0.06;
/** Regular while the pot's demand was not. */
const REGULAR_ln = 0.2;
const STEADIER_THAN_DEMAND = 0.6;

/**
 * Whether a person waters this pot by the calendar: the days between pours vary less than a pot's demand would make
 * them. Who waters by habit says nothing about how dry the pot is (air-water sheet, F6b).
 */
export function isHabit(pours: readonly PastPour[], by: PersonId): boolean {
  const days: number[] = [];
  const demands: number[] = [];
  for (const pour of pours) {
    if (pour.by !== by || !(pour.since_d > 0.3)) continue;
    days.push(Math.log(pour.since_d));
    demands.push(Math.log(Math.max(0.1, pour.demand_g) / pour.since_d));
  }
  if (days.length < LEAST_INTERVALS_n) return false;
  const spread = spreadOfList(days);
  if (spread < CLOCKWORK_ln) return true;
  // Had they waited for the pot, a day of double demand would have halved the interval.
  return spread < REGULAR_ln && spread < STEADIER_THAN_DEMAND * spreadOfList(demands);
}

function spreadOfList(values: readonly number[]): number {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1));
}
