import { expect, it } from "vitest";
import { plantId, seeded } from "../../test/toy.ts";
import type { Case } from "./cases.ts";
import { scoreOf } from "./score.ts";

const DAY_ms = 86_400_000;
const even = (from_d: number, to_d: number, at_ms = 0) =>
  Array.from({ length: 20 }, (_, i) => at_ms + (from_d + ((i + 0.5) / 20) * (to_d - from_d)) * DAY_ms);
const one = (due_d: number, more: Partial<Case> = {}): Case => ({
  plant: plantId(1),
  work: "water",
  issued_ms: 0,
  dates_ms: even(4, 6),
  due_ms: due_d * DAY_ms,
  sd_ms: 0.2 * DAY_ms,
  how: "weighed",
  ...more,
});

it("counts a date at the end of its range as held, and one past it not", () => {
  // Twenty values 4.05 ... 5.95: each stands for the middle of its share, so that p10 is 4.2 and p90 5.8.
  expect(scoreOf([one(4.2), one(5.8)])).toMatchObject({ n: 2, held_n: 2, held_frac: 1 });
  expect(scoreOf([one(4.19), one(5.81), one(5)])).toMatchObject({ n: 3, held_n: 1 });
  expect(scoreOf([])).toBeUndefined();
});

it("gives error, lateness and score in days; the plain guess is scored by its distance, over the same waits", () => {
  const score = scoreOf([
    one(4, { sameAgain_ms: 7 * DAY_ms }),
    one(4.5, { sameAgain_ms: 4 * DAY_ms, how: "looked" }),
    one(9),
  ]);
  expect(score?.off_d).toBeCloseTo((1 + 0.5 + 4) / 3, 9);
  expect(score?.late_d).toBeCloseTo((1 + 0.5 - 4) / 3, 9);
  expect(score?.range_d).toBeCloseTo(1.6, 9);
  expect(score?.truthSd_d).toBeCloseTo(0.2, 9);
  expect(score).toMatchObject({ weighed_n: 2, sameAgain: { n: 2, crps_d: 1.75, late_d: 1.25 } });
  expect(score?.sameAgain?.oursOff_d).toBeCloseTo(0.75, 9);
  // By hand for twenty even values on 4 to 6: mean |x - 9| = 4, half the mean |x - x'| = 1/3 less 1/1200.
  const far = scoreOf([one(9)]);
  expect(far?.crps_d).toBeCloseTo(4 - (1 / 3 - 1 / 1200), 6);
  expect(far?.sameAgain).toBeUndefined();
});

it("tells how many hold by chance, as the binomial distribution has it", () => {
  const usual = (n: number) => scoreOf(Array.from({ length: n }, () => one(5)))?.usual;
  // Binomial 12, 0.8: up to 7 0.073, up to 8 0.205, up to 10 0.725, up to 11 0.931 (computed from the definition).
  expect(usual(12)).toEqual({ low_n: 8, high_n: 11 });
  expect(usual(1)).toEqual({ low_n: 0, high_n: 1 });
  expect(usual(2000)?.low_n).toBeGreaterThan(1570);
  expect(usual(2000)?.high_n).toBeLessThan(1630);
});

it("does not mind the order of its cases", () => {
  const dice = seeded(3);
  const cases = Array.from({ length: 40 }, (_, i) =>
    one(3 + 4 * dice(), {
      issued_ms: i * DAY_ms,
      due_ms: (i + 3 + 4 * dice()) * DAY_ms,
      dates_ms: even(i + 4, i + 6),
    }),
  );
  const shuffled = cases.map((each) => ({ each, key: dice() })).sort((a, b) => a.key - b.key);
  expect(scoreOf(shuffled.map(({ each }) => each))).toEqual(scoreOf(cases));
});
