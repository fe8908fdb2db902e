import { type SkillRun, skillRuns } from "@sillwood/simulator/skill-runs";
import { beforeAll, describe, expect, it } from "vitest";
import { type LightDay, lightOfRun, lightRows, lightScore } from "./light-score.ts";

const NOTHING = { written: false, window: false, pair: false, lamp: false, direction: false };
const day = (spot: string, said: number, truth: number, more: Partial<LightDay> = {}): LightDay => ({
  spot,
  truth_mol_m2_d: truth,
  said_mol_m2_d: said,
  median_mol_m2_d: said,
  sd_ln: 0.3,
  rests: NOTHING,
  ...more,
});

describe("the score of light", () => {
  it("weighs all that was said of a spot against all that came, and days by their middle", () => {
    // Unlike days whose sum is right are no bias; a spot that is told double is one of ln 2.
    const right = [day("a", 4, 2), day("a", 4, 6)];
    const double = [day("b", 6, 3), day("b", 2, 1)];
    expect(lightScore(right).bias_ln).toBeCloseTo(0, 12);
    expect(lightScore(right).error_ln).toBeCloseTo((Math.log(2) + Math.log(1.5)) / 2, 12);
    const both = lightScore([...right, ...double]);
    expect(both).toMatchObject({ days_n: 4, spots_n: 2 });
    expect(both.bias_ln).toBeCloseTo(Math.log(2) / 2, 12);
  });

  it("holds a day at the edge of the range and none beyond it, and survives darkness", () => {
    const at = (sds: number) => day("a", 5 * Math.exp(0.3 * sds), 5);
    expect(lightScore([at(1.281), at(-1.281)]).coverage_frac).toBe(1);
    expect(lightScore([at(1.282), at(-1.282)]).coverage_frac).toBe(0);
    expect(lightScore([day("a", 0, 0)])).toMatchObject({ bias_ln: 0, error_ln: 0, coverage_frac: 1 });
  });

  it("leaves out groups of which there is no day, and puts a written light in no other", () => {
    const names = (rests: Partial<LightDay["rests"]>) =>
      lightRows([day("a", 4, 4, { rests: { ...NOTHING, ...rests } })])
        .map(({ figure }) => /range holds the truth, (.*)/.exec(figure)?.[1])
        .filter((name) => name !== undefined);
    expect(names({})).toEqual(["all spots", "nothing told"]);
    expect(names({ direction: true })).toEqual(["all spots", "only a direction known"]);
    expect(names({ direction: true, window: true, pair: true })).toEqual([
      "all spots",
      "a window drawn",
      "a pair read",
    ]);
    expect(names({ lamp: true, written: true })).toEqual(["all spots", "a daily light written"]);
  });
});

describe("light of simulated spots", () => {
  let runs: readonly SkillRun[] = [];
  let days: readonly LightDay[] = [];
  beforeAll(() => {
    runs = skillRuns({ seed: 11, pots: 40, days: 30 });
    days = runs.flatMap(lightOfRun);
  });

  it("is said for the same days and spots whose truth is known, with a doubt", () => {
    expect(days).toHaveLength(runs.length * 2 * 4 * 5);
    for (const one of days) {
      expect(Number.isFinite(one.said_mol_m2_d) && one.said_mol_m2_d >= 0).toBe(true);
      expect(one.sd_ln).toBeGreaterThan(0.05);
      expect(one.sd_ln).toBeLessThan(2);
    }
  });

  it("rests on what the book told by that day", () => {
    for (const [run_n, run] of runs.entries()) {
      const told = (kind: string) => run.lines.some((line) => line.kind === kind);
      const own = days.filter(({ spot }) => spot.startsWith(`${run_n} `));
      expect(own.some(({ rests }) => rests.window)).toBe(told("bench.window"));
      expect(own.some(({ rests }) => rests.lamp)).toBe(told("bench.lamp"));
      expect(own.some(({ rests }) => rests.written)).toBe(told("bench.lit"));
    }
    const pairs = days.filter(({ rests }) => rests.pair);
    expect(pairs.length).toBeGreaterThan(0);
    expect(pairs.every(({ spot }) => spot.includes("sill"))).toBe(true);
  });

  it("would be seen to be wrong if all of it were said threefold, or too surely", () => {
    const good = lightScore(days);
    const threefold = lightScore(
      days.map((one) => ({
        ...one,
        said_mol_m2_d: 3 * one.said_mol_m2_d,
        median_mol_m2_d: 3 * one.median_mol_m2_d,
      })),
    );
    expect(threefold.bias_ln).toBeCloseTo(good.bias_ln + Math.log(3), 2);
    const sure = lightScore(days.map((one) => ({ ...one, sd_ln: one.sd_ln / 10 })));
    expect(sure.coverage_frac).toBeLessThan(good.coverage_frac - 0.2);
  });
});
