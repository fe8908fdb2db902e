import { skillRuns } from "@sillwood/simulator/skill-runs";
import { beforeAll, describe, expect, it } from "vitest";
import { baselines, dress } from "./baselines.ts";
import { forecastRun, type Scored } from "./forecasts.ts";
import { scoreOf } from "./score.ts";

/** A small sample of what `npm run skill` runs in full: enough to see a planted bug, too small to boast with. */
describe("forecasts of simulated pots", () => {
  let cases: readonly Scored[] = [];
  beforeAll(() => {
    cases = skillRuns({ seed: 11, pots: 20, days: 45 }).flatMap((run) => forecastRun(run));
  });

  it("are dated, in order, and hold the truth about as often as they say", () => {
    expect(cases.length).toBeGreaterThan(150);
    for (const { dates_d } of cases) {
      expect(dates_d).toHaveLength(20);
      expect(
        dates_d.every((day, i) => Number.isFinite(day) && (i === 0 || day >= (dates_d[i - 1] as number))),
      ).toBe(true);
    }
    const { coverage_frac, crps_d } = scoreOf(cases);
    expect(coverage_frac).toBeGreaterThan(0.6);
    expect(coverage_frac).toBeLessThan(0.97);
    expect(crps_d).toBeLessThan(2.5);
  });

  it("beat a fixed week, dressed with its own errors", () => {
    const week = dress(baselines[0] as (typeof baselines)[number], cases);
    expect(scoreOf(cases).crps_d).toBeLessThan(scoreOf(cases, week).crps_d);
  });

  it("would be seen to be wrong if they came three days late, or were far too sure", () => {
    const good = scoreOf(cases);
    const late = scoreOf(cases, ({ dates_d }) => dates_d.map((day) => day + 3));
    const sure = scoreOf(cases, ({ dates_d }) => dates_d.map(() => dates_d[9] as number));
    expect(late.crps_d).toBeGreaterThan(good.crps_d + 0.5);
    expect(late.coverage_frac).toBeLessThan(good.coverage_frac - 0.1);
    expect(sure.coverage_frac).toBeLessThan(0.6);
    expect(sure.crps_d).toBeGreaterThan(good.crps_d);
  });
});
