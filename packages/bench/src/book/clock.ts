import type { Clock } from "./entry.ts";

/**
 * Hybrid logical clock: the later of the device's own time and anything it has seen, plus a counter for ties.
 * An entry made after seeing another sorts after it on every device, however wrong the clocks are.
 * As text: `2026-11-25T13:45:38.123Z/0004` (instant in UTC, counter in four hexadecimal digits). Text order is time order.
 */

const SHAPE = /^(\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z)\/([0-9a-f]{4})$/;
const COUNTER_MAX = 0xffff;

/** Instants that a clock and an entry may name: 2000-01-01 to 2200-01-01. */
export const EARLIEST_ms = 946_684_800_000;
export const LATEST_ms = 7_258_118_400_000;

/** A clock further ahead of ours than this is worth telling the person (our assumption). */
export const DRIFT_TOLD_ms = 5 * 60_000;

/** We never follow a clock beyond this: a device whose clock stands at the end of time must not take ours along. */
const FOLLOWED_UNTIL_ms = LATEST_ms - 366 * 86_400_000;

export class ClockError extends Error {
  override readonly name = "ClockError";
}

export interface Seen {
  /** Our clock after seeing the other. Never earlier than before. */
  readonly clock: Clock;
  /** How far the other clock is ahead of our time [ms]; 0 when it is not. */
  readonly ahead_ms: number;
  /** Whether that is more than DRIFT_TOLD_ms, so that the person should be told. */
  readonly drifted: boolean;
}

/** Before the first entry of a device. */
export const FIRST_CLOCK: Clock = clockText(EARLIEST_ms, 0);

/**
 * @param at_ms epoch milliseconds, 2000 to 2200
 * @param counter 0 to 65,535
 * @throws ClockError outside these
 */
export function clockText(at_ms: number, counter: number): Clock {
  if (!(at_ms >= EARLIEST_ms && at_ms < LATEST_ms))
    throw new ClockError(`clock is ${at_ms} ms; expected the years 2000 to 2200`);
  if (!(counter >= 0 && counter <= COUNTER_MAX))
    throw new ClockError(`counter is ${counter}; expected 0 to ${COUNTER_MAX}`);
  return `${new Date(at_ms).toISOString()}/${counter.toString(16).padStart(4, "0")}`;
}

/** The parts of a clock; undefined when the text is no clock. */
export function parseClock(text: string): { readonly at_ms: number; readonly counter: number } | undefined {
  const match = SHAPE.exec(text);
  if (!match) return undefined;
  const at_ms = Date.parse(match[1] as string);
  // Date.parse accepts the 31st of February in some engines; only a round trip proves the instant.
  if (!(at_ms >= EARLIEST_ms && at_ms < LATEST_ms) || new Date(at_ms).toISOString() !== match[1])
    return undefined;
  return { at_ms, counter: Number.parseInt(match[2] as string, 16) };
}

/**
 * The clock of the next entry of this device.
 *
 * @param last the clock of its last entry, or what it has seen since
 * @param now_ms its own time, epoch milliseconds; may have been set back
 */
export function tickClock(last: Clock, now_ms: number): Clock {
  const before = known(last);
  const now = Math.min(Math.max(Math.floor(now_ms), EARLIEST_ms), LATEST_ms - 1);
  if (now > before.at_ms) return clockText(now, 0);
  return before.counter < COUNTER_MAX
    ? clockText(before.at_ms, before.counter + 1)
    : clockText(before.at_ms + 1, 0);
}

/**
 * Moves our clock past one that came with somebody else's entry.
 *
 * @param last our clock
 * @param other the clock seen
 * @param now_ms our time, epoch milliseconds
 * @throws ClockError when either text is no clock
 */
export function seeClock(last: Clock, other: Clock, now_ms: number): Seen {
  const seen = known(other);
  const ahead_ms = Math.max(0, seen.at_ms - now_ms);
  const clock = other > last && seen.at_ms < FOLLOWED_UNTIL_ms ? other : last;
  return { clock, ahead_ms, drifted: ahead_ms > DRIFT_TOLD_ms };
}

function known(text: Clock) {
  const parts = parseClock(text);
  if (!parts) throw new ClockError(`${JSON.stringify(text)} is no clock`);
  return parts;
}
