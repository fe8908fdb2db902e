import { describe, expect, it } from "vitest";
import {
  type Belief,
  CAPACITY,
  DEPLETION,
  meanOf,
  potState,
  predictPot,
  sdOf,
  wateredToday_frac,
  withPour,
  withUnwrittenPour,
} from "./pot-filter.ts";

const pot = (depletion: Belief, capacity: Belief = { mean: 300, sd: 50 }) =>
  potState([
    depletion,
    { mean: 0, sd: 0.4 },
    { mean: 0, sd: 0.3 },
    { mean: 600, sd: 5 },
    { mean: 0.01, sd: 0.005 },
    capacity,
    { mean: 0, sd: 0.11 },
  ]);

describe("days without a word", () => {
  const habit = { pourPerDay_frac: 0.6, unwritten_frac: 0.1, dry: { at_frac: 0.65, spread_frac: 0.2 } };
  const afterDays = (mean: number, days_n: number, more = habit) => {
    let state = pot({ mean, sd: 15 });
    for (let day = 0; day < days_n; day++) state = withUnwrittenPour(state, more);
    return state;
  };

  it("say nothing at a moist pot, and make a dry one likelier watered the longer they last", () => {
    expect(afterDays(60, 10)).toEqual(pot({ mean: 60, sd: 15 }));
    const held = [0, 2, 6, 12].map((days_n) => meanOf(afterDays(260, days_n), DEPLETION));
    for (let i = 1; i < held.length; i++) expect(held[i]).toBeLessThan(held[i - 1] as number);
    expect(sdOf(afterDays(260, 3), DEPLETION)).toBeGreaterThan(sdOf(afterDays(260, 0), DEPLETION));
  });

  it("say nothing where everything is written", () => {
    expect(afterDays(260, 5, { ...habit, unwritten_frac: 0 })).toEqual(pot({ mean: 260, sd: 15 }));
  });

  it("are likelier a day of watering the drier the pot, never at one that cannot be dry", () => {
    const chances = [60, 150, 200, 300].map((mean) => wateredToday_frac(pot({ mean, sd: 15 }), habit));
    expect(chances[0]).toBe(0);
    for (let i = 1; i < chances.length; i++) expect(chances[i]).toBeGreaterThan(chances[i - 1] as number);
    expect(chances.at(-1)).toBeLessThan(habit.pourPerDay_frac);
  });
});

describe("a jug larger than the store is thought to be", () => {
  it("that runs out pour after pour does not shrink it", () => {
    const noise = {
      day_frac: 0.3,
      leaf_per_rootDay: 0,
      surface_per_rootDay: 0,
      fade_d: Number.POSITIVE_INFINITY,
      drained_frac: 0,
      drainedFloor_g: 0,
      capacity_frac: 0.002,
      stressFrom_frac: 0.65,
    };
    let state = pot({ mean: 20, sd: 20 }, { mean: 135, sd: 55 });
    for (let cycle = 0; cycle < 12; cycle++) {
      for (let day = 0; day < 5; day++) {
        state = predictPot(state, { dt_d: 1, leaf_g: 60, surface_g: 5, rain_g: 0 }, noise).state;
      }
      state = withPour(state, { volume_mL: 160, drained: "yes" }).state;
    }
    // Heard only as "no more than this was missing", the same jug leaves 69 g of the store.
    expect(meanOf(state, CAPACITY)).toBeGreaterThan(85);
  });
});
