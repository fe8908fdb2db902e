import { describe, expect, it } from "vitest";
import { DEPLETION, meanOf, potState, sdOf, withUnwrittenPour } from "./pot-filter.ts";

const pot = (depletion: { readonly mean: number; readonly sd: number }) =>
  potState([
    depletion,
    { mean: 0, sd: 0.4 },
    { mean: 0, sd: 0.3 },
    { mean: 600, sd: 5 },
    { mean: 0.01, sd: 0.005 },
    { mean: 300, sd: 50 },
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
});
