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
  if (isByWeekday(own) || isEveryFewDays(own)) return true;
  const spread = spreadOf(own, ({ since_d }) => Math.log(since_d));
  if (spread < CLOCKWORK_ln) return true;
  // Had they waited for the pot, a day of double demand would have halved the interval.
  return spread < REGULAR_ln && spread < STEADIER_THAN_DEMAND * spreadOf(own, useRate_ln);
}

/** Most pours keep the rule; now and then one is forgotten, late, or not written. @source our assumption */
const MOST_frac = 0.75;
const DAY_ms = 86_400_000;

/** The same weekdays again: one, two, three or four pours later it is a week later. */
function isByWeekday(own: readonly PastPour[]): boolean {
  for (let lag = 1; lag <= 4; lag++) {
    const pairs_n = own.length - lag;
    if (pairs_n < LEAST_INTERVALS_n - 1) return false;
    let weeks_n = 0;
    for (let i = lag; i < own.length; i++) {
      const apart_d = ((own[i] as PastPour).at_ms - (own[i - lag] as PastPour).at_ms) / DAY_ms;
      if (Math.abs(apart_d - 7) < 0.5) weeks_n++;
    }
    if (weeks_n >= MOST_frac * pairs_n) return true;
  }
  return false;
}

/** The same number of days again and again, at least three: a small pot in the sun asks every day or two by itself. */
function isEveryFewDays(own: readonly PastPour[]): boolean {
  const whole = new Set(own.map(({ since_d }) => Math.round(since_d)));
  for (const days_d of whole) {
    if (days_d < 3) continue;
    const kept_n = own.filter(({ since_d }) => Math.abs(since_d - days_d) < 0.3).length;
    if (kept_n >= MOST_frac * own.length) return true;
  }
  return false;
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
