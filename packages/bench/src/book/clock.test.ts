import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  ClockError,
  clockText,
  DRIFT_TOLD_ms,
  EARLIEST_ms,
  FIRST_CLOCK,
  LATEST_ms,
  parseClock,
  seeClock,
  tickClock,
} from "./clock.ts";

const instant = fc.integer({ min: EARLIEST_ms, max: LATEST_ms - 1 });
const counter = fc.integer({ min: 0, max: 0xffff });

describe("hybrid logical clock", () => {
  it("as text sorts as (time, counter) and comes back", () => {
    fc.assert(
      fc.property(instant, counter, instant, counter, (a, i, b, j) => {
        const order = Math.sign(a - b || i - j);
        const [x, y] = [clockText(a, i), clockText(b, j)];
        expect(x < y ? -1 : x > y ? 1 : 0).toBe(order);
        expect(parseClock(x)).toEqual({ at_ms: a, counter: i });
      }),
    );
  });

  it("never goes back and moves past anything seen, however the device's time jumps", () => {
    const step = fc.oneof(
      fc.record({ now_ms: fc.integer({ min: -1e12, max: LATEST_ms * 2 }) }),
      fc.record({
        now_ms: instant,
        seen: fc.integer({ min: EARLIEST_ms, max: LATEST_ms - 400 * 86_400_000 }),
        counter,
      }),
    );
    fc.assert(
      fc.property(fc.array(step, { maxLength: 30 }), (steps) => {
        let clock = FIRST_CLOCK;
        for (const { now_ms, ...rest } of steps) {
          if ("seen" in rest) {
            const other = clockText(rest.seen, rest.counter);
            clock = seeClock(clock, other, now_ms).clock;
            expect(tickClock(clock, now_ms) > other).toBe(true);
          }
          // The end of time itself can't be passed; a device there says so and does not lie.
          if (clock.startsWith("2199-12-31T23:59:59.999Z/ffff")) break;
          const next = tickClock(clock, now_ms);
          expect(next > clock).toBe(true);
          clock = next;
        }
      }),
    );
  });

  it("follows a clock that is ahead, and tells", () => {
    const now_ms = 1_790_000_000_000;
    const near = seeClock(FIRST_CLOCK, clockText(now_ms + DRIFT_TOLD_ms, 0), now_ms);
    expect(near).toMatchObject({ ahead_ms: DRIFT_TOLD_ms, drifted: false });
    const far = seeClock(FIRST_CLOCK, clockText(now_ms + DRIFT_TOLD_ms + 1, 0), now_ms);
    expect(far).toMatchObject({ drifted: true, clock: clockText(now_ms + DRIFT_TOLD_ms + 1, 0) });
  });

  it("does not follow a clock that stands at the end of time", () => {
    const now_ms = 1_790_000_000_000;
    const seen = seeClock(FIRST_CLOCK, clockText(LATEST_ms - 1, 0xffff), now_ms);
    expect(seen.drifted).toBe(true);
    expect(tickClock(seen.clock, now_ms)).toBe(clockText(now_ms, 0));
  });

  it.each([
    "",
    "2026-02-30T00:00:00.000Z/0000",
    "1999-12-31T23:59:59.999Z/0000",
    "2200-01-01T00:00:00.000Z/0000",
    "2026-11-25T13:45:38.123Z/004",
  ])("%j is no clock", (text) => {
    expect(parseClock(text)).toBeUndefined();
    expect(() => tickClock(text, 0)).toThrow(ClockError);
  });
});
