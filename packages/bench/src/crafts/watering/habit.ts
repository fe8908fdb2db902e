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

/** More weekdays than this are no rule. @source our assumption */
const WEEKDAYS_n = 4;
const WEEK_d = 7;
const LEAST_WEEKS_n = 2;

/**
 * On the same few days of the week and on nearly all of them; a pot may be left out because it is plainly wet, so that intervals differ
 * while the days do not. Days are counted from the first pour: no calendar need be asked.
 */
function isByWeekday(own: readonly PastPour[]): boolean {
  const first_ms = (own[0] as PastPour).at_ms;
  const weekdays = new Set<number>();
  let last_d = 0;
  for (const { at_ms } of own) {
    last_d = Math.round((at_ms - first_ms) / DAY_ms);
    weekdays.add(last_d % WEEK_d);
  }
  if (weekdays.size > WEEKDAYS_n || last_d < LEAST_WEEKS_n * WEEK_d) return false;
  let occasions_n = 0;
  for (let day = 0; day <= last_d; day++) if (weekdays.has(day % WEEK_d)) occasions_n++;
  return own.length >= MOST_frac * occasions_n;
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
