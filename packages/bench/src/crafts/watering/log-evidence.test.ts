import { DEPLETION, LEAF, meanOf, sdOf } from "@sillwood/science/water";
import { describe, expect, it } from "vitest";
import type { Happening } from "../craft.ts";
import { isHabit } from "./habit.ts";
import type { PastPour } from "./slice.ts";
import {
  DAY_ms,
  GROWER,
  HELPER,
  HOUR_ms,
  looked,
  other,
  potKit,
  poured,
  START_ms,
  weighed,
} from "./test-kit.ts";

const kit = potKit();
const morning = (day: number) => START_ms + day * DAY_ms + 8 * HOUR_ms;
const depletion_g = (happenings: readonly Happening[], day: number) =>
  meanOf(kit.live(kit.start(), happenings, START_ms + day * DAY_ms).state, DEPLETION);
const first = poured(morning(0), { volume_mL: 250, drained: "yes" });
const visit = (day: number, by = GROWER) => other(morning(day), { effect: "visited" }, by);

describe("the log as evidence", () => {
  it("walked past without a pour: not dry", () => {
    const days = [visit(6), visit(7), visit(8)];
    expect(depletion_g([first, ...days], 10)).toBeLessThan(depletion_g([first], 10));
  });

  it("counts a visit only when the day is over and nobody poured on it", () => {
    const sameDay = kit.live(kit.start(), [first, visit(8)], morning(8) + HOUR_ms);
    expect(sameDay.visits).toHaveLength(1);
    const thenPoured = kit.live(
      sameDay,
      [poured(morning(8) + 2 * HOUR_ms, { volume_mL: 200, drained: "no" })],
      morning(9),
    );
    expect(thenPoured.visits).toHaveLength(0);
    expect(thenPoured.visitsSincePour_n).toBe(0);
  });

  it("poured without a look: dry; after a look of that day it says nothing more", () => {
    const pour = poured(morning(3), { volume_mL: 100, drained: "unknown" });
    const plain = kit.live(kit.start(), [first, pour], morning(3));
    const seen = kit.live(
      kit.start(),
      [first, looked(morning(3) - HOUR_ms, { look: "dry", yes: true }), pour],
      morning(3),
    );
    expect(plain.lookDays[GROWER]).toBeDefined();
    expect(seen.tendedBy).toBe(GROWER);
    const twice = kit.live(
      kit.start(),
      [
        first,
        looked(morning(3), { look: "dry", yes: false }),
        looked(morning(3), { look: "moist", yes: false }),
      ],
      morning(3),
    );
    const once = kit.live(kit.start(), [first, looked(morning(3), { look: "dry", yes: false })], morning(3));
    expect(twice.state).toEqual(once.state);
  });

  it("another person's look counts beside it", () => {
    const once = kit.live(kit.start(), [first, looked(morning(3), { look: "dry", yes: false })], morning(3));
    const both = kit.live(once, [looked(morning(3), { look: "dry", yes: false }, HELPER)], morning(3));
    expect(meanOf(both.state, DEPLETION)).toBeLessThan(meanOf(once.state, DEPLETION));
  });

  it("noon droop says nothing, morning droop says dry", () => {
    const wet = [first];
    const at = (hour: number) => [
      ...wet,
      looked(START_ms + 9 * DAY_ms + hour * HOUR_ms, { look: "drooping", yes: true }),
    ];
    // The same cut of time without a look.
    const cut = (hour: number) => [
      ...wet,
      other(START_ms + 9 * DAY_ms + hour * HOUR_ms, { effect: "turned", clockwise_deg: 90 }),
    ];
    expect(depletion_g(at(12), 10)).toBeCloseTo(depletion_g(cut(12), 10), 9);
    expect(depletion_g(at(7), 10)).not.toBeCloseTo(depletion_g(cut(7), 10), 0);
  });
});

const pours = (days: readonly number[], demands: readonly number[], by = GROWER): readonly PastPour[] =>
  days.map((since_d, i) => ({
    entry: `e${i}` as PastPour["entry"],
    at_ms: i,
    by,
    volume_mL: 100,
    drained: "yes",
    since_d,
    demand_g: demands[i] as number,
  }));

describe("habit", () => {
  it("every seven days to the hour is a habit", () => {
    expect(isHabit(pours([7, 7, 7, 7, 7], [200, 200, 200, 200, 200]), GROWER)).toBe(true);
  });
  it("steady intervals while the demand swings are a habit; intervals that follow it are not", () => {
    expect(isHabit(pours([6, 7, 7, 6, 7], [120, 300, 180, 320, 110]), GROWER)).toBe(true);
    expect(isHabit(pours([10, 4, 7, 3, 9], [200, 210, 190, 205, 200]), GROWER)).toBe(false);
  });
  it("the same weekdays are a habit also where the pot is left out now and then; days that go round the week are not", () => {
    const on = (days: readonly number[]) =>
      pours(
        days.map((day, i) => day - (days[i - 1] ?? day - 3)),
        days.map(() => 200),
      ).map((pour, i) => ({ ...pour, at_ms: (days[i] as number) * DAY_ms }));
    // Mondays and Thursdays, three left out; as many pours by feel.
    expect(isHabit(on([0, 3, 10, 14, 17, 21, 28, 31]), GROWER)).toBe(true);
    expect(isHabit(on([0, 3, 8, 13, 17, 20, 26, 31]), GROWER)).toBe(false);
    // Few weekdays alone are no rule: who comes on two days a week and pours on half of them goes by the pot.
    expect(isHabit(on([0, 7, 17, 21, 31, 42, 45]), GROWER)).toBe(false);
  });
  it("their dry is why they water and says nothing of the pot; their not dry does", () => {
    const weekly = Array.from({ length: 6 }, (_, week) =>
      poured(morning(7 * week), { volume_mL: 220, drained: "yes" }),
    );
    const look = (yes: boolean, by = GROWER) =>
      depletion_g([...weekly, looked(morning(42), { look: "dry", yes }, by)], 43);
    const cut = depletion_g([...weekly, other(morning(42), { effect: "turned", clockwise_deg: 90 })], 43);
    expect(look(true)).toBeCloseTo(cut, 9);
    expect(look(false)).toBeLessThan(cut);
    expect(look(true, HELPER)).not.toBeCloseTo(cut, 1);
  });
  it("once it shows, what earlier pours taught of thirst goes; what weights taught stays", () => {
    // Every third day a pot that lasts a week seems thirsty to who takes that for thirst.
    const every3rd = (pours_n: number) =>
      Array.from({ length: pours_n }, (_, i) => poured(morning(3 * i), { volume_mL: 220, drained: "yes" }));
    const leaf = (happenings: readonly Happening[], pours_n: number) => {
      const { state } = kit.live(kit.start(), happenings, morning(3 * (pours_n - 1)));
      return { mean: meanOf(state, LEAF), sd: sdOf(state, LEAF) };
    };
    const [before, after] = [leaf(every3rd(4), 4), leaf(every3rd(5), 5)];
    expect(before.mean).toBeGreaterThan(0.02);
    expect(after.mean).toBe(0);
    expect(after.sd).toBeGreaterThan(before.sd);
    const weight = weighed(morning(5), { weight_g: 520, state: "as found" });
    const scaled = [...every3rd(2), weight, ...every3rd(5).slice(2)];
    expect(leaf(scaled, 5).mean).not.toBe(0);
  });
  it("takes four intervals of the same person", () => {
    expect(isHabit(pours([7, 7, 7], [200, 200, 200]), GROWER)).toBe(false);
    expect(isHabit(pours([7, 7, 7, 7, 7], [1, 1, 1, 1, 1]), HELPER)).toBe(false);
  });
  it("switches the rule off: a visit of a habitual person moves nothing", () => {
    const weekly = Array.from({ length: 6 }, (_, week) =>
      poured(morning(7 * week), { volume_mL: 220, drained: "yes" }),
    );
    const with_g = depletion_g([...weekly, visit(40)], 42);
    const cut = other(morning(40), { effect: "turned", clockwise_deg: 90 });
    expect(with_g).toBeCloseTo(depletion_g([...weekly, cut], 42), 9);
    expect(depletion_g([...weekly, visit(40, HELPER)], 42)).toBeLessThan(with_g);
  });
});
