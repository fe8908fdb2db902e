import { afterUnwrittenPour, type Otherwise, wateredToday_frac } from "@sillwood/science/water";
import type { Outward } from "../craft.ts";
import { isHabit } from "./habit.ts";
import { waterSettings } from "./settings.ts";
import type { PastPour, WaterSlice } from "./slice.ts";

/** A pour of today that may have happened and stands in no book yet. */
export interface UnheardPour extends Otherwise {
  /** So many of so many past pours were made earlier in the day than it is now and written later. */
  readonly later_n: number;
  readonly pours_n: number;
}

const DAY_ms = 86_400_000;
/** Beside the pours of the book one that was written at once: a first slip is no habit. @source our assumption */
const AT_ONCE_n = 1;
/** Less likely than this is not worth another start of the draws. */
const UNLIKELY_frac = 0.02;
/** An interval ends today when it ended within so many days of it. @source our assumption */
const SAME_DAY_d = 0.5;
/** Of those who water by habit, when no interval of theirs ever lasted so long; and nobody is as sure as never to miss. @source our assumption */
const LONGER_THAN_EVER_frac = 0.5;
const SUREST_frac = 0.97;

/**
 * Who writes in the evening has watered in the morning, and whoever asks at noon is told of a pot that nobody has watered. Entries hold
 * when something happened, and their ids when it was written; so the book itself knows which share of its pours would not have been in it
 * at this hour. That share of today's pour, if there was one, is silent:
 *
 * p = u h / (u h + 1 − h), with h the chance that it was watered today and u that this would not be written yet
 */
export function unheardPour(slice: WaterSlice, sight: Outward): UnheardPour | undefined {
  const { pours } = slice;
  const { now_ms } = sight;
  const { from_ms } = sight.airAt(sight.plant.spot, sight.dateOf(now_ms));
  const last = pours.at(-1);
  if (!last || last.at_ms >= from_ms) return undefined;
  const later_n = writtenLater_n(pours, from_ms, now_ms - from_ms);
  if (later_n === 0) return undefined;
  const watered_frac = isHabit(pours, last.by)
    ? dueByHabit_frac(pours, (now_ms - last.at_ms) / DAY_ms)
    : wateredToday_frac(slice.state, waterSettings(sight).unwritten);
  const silent = (later_n / (pours.length + AT_ONCE_n)) * watered_frac;
  const chance_frac = silent / (silent + 1 - watered_frac);
  if (!(chance_frac > UNLIKELY_frac)) return undefined;
  return { state: afterUnwrittenPour(slice.state), lost_mm: 0, chance_frac, later_n, pours_n: pours.length };
}

/** Pours made earlier in their day than this and written later than this; counted in whole days back, an hour off where clocks changed. */
function writtenLater_n(pours: readonly PastPour[], midnight_ms: number, sinceMidnight_ms: number): number {
  let later_n = 0;
  for (const { at_ms, entry } of pours) {
    const hour_ms = (((at_ms - midnight_ms) % DAY_ms) + DAY_ms) % DAY_ms;
    if (hour_ms < sinceMidnight_ms && hour_ms + (writtenAt_ms(entry) - at_ms) > sinceMidnight_ms) later_n++;
  }
  return later_n;
}

/** An id of version 7 begins with the instant at which it was given, in milliseconds. @source RFC 9562, section 5.7 */
const writtenAt_ms = (id: string): number => Number.parseInt(id.slice(0, 8) + id.slice(9, 13), 16);

/** Of the intervals that lasted until today the share that ended today. */
function dueByHabit_frac(pours: readonly PastPour[], since_d: number): number {
  let lasted_n = 0;
  let ended_n = 0;
  for (const pour of pours) {
    if (!(pour.since_d > since_d - SAME_DAY_d)) continue;
    lasted_n++;
    if (pour.since_d <= since_d + SAME_DAY_d) ended_n++;
  }
  return lasted_n === 0 ? LONGER_THAN_EVER_frac : Math.min(SUREST_frac, ended_n / lasted_n);
}
