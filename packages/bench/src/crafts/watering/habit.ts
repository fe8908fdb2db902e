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
  const own = pours.filter((pour) => pour.by === by && pour.since_d > 0.3);
  if (own.length < LEAST_INTERVALS_n) return false;
  const spread = spreadOf(own, ({ since_d }) => Math.log(since_d));
  if (spread < CLOCKWORK_ln) return true;
  // Had they waited for the pot, a day of double demand would have halved the interval.
  return spread < REGULAR_ln && spread < STEADIER_THAN_DEMAND * spreadOf(own, useRate_ln);
}

const useRate_ln = ({ demand_g, since_d }: PastPour) => Math.log(Math.max(0.1, demand_g) / since_d);

function spreadOf(pours: readonly PastPour[], of: (pour: PastPour) => number): number {
  const values = pours.map(of);
  let sum = 0;
  for (const value of values) sum += value;
  const mean = sum / values.length;
  let squares = 0;
  for (const value of values) squares += (value - mean) ** 2;
  return Math.sqrt(squares / (values.length - 1));
}
