import { describe, expect, it } from "vitest";
import type { CheckRow } from "./row.ts";
import { alias, bindByRules, rule } from "./rules.ts";
import { scoreTable } from "./score.ts";

const row = (rest: Partial<CheckRow>): CheckRow => ({
  id: "toy-001",
  what: "a toy",
  inputs: { side_m: 3 },
  expect: { area_m2: 9 },
  tolerance_abs: 0.5,
  source: "geometry",
  ...rest,
});
const giving = (values: Record<string, unknown>) => ({ field: "toy", compute: () => values });
const passes = (one: CheckRow, values: Record<string, unknown>): boolean =>
  scoreTable([one], giving(values)).passed_n === 1;

describe("scoring", () => {
  it("accepts up to the tolerance and not beyond, absolute or relative, per key or for all", () => {
    expect(passes(row({}), { area_m2: 9.5 })).toBe(true);
    expect(passes(row({}), { area_m2: 9.51 })).toBe(false);
    const relative = { inputs: {}, expect: { area_m2: 9 }, source: "", id: "", what: "", tolerance_rel: 0.1 };
    expect(passes(relative, { area_m2: 9.9 })).toBe(true);
    expect(passes(relative, { area_m2: 9.91 })).toBe(false);
    expect(passes(row({ tolerance_abs: { area_m2: 0.1 } }), { area_m2: 9.2 })).toBe(false);
  });
  it("counts what is not computed, and what fails, as unbound", () => {
    expect(scoreTable([row({})], giving({})).unbound_n).toBe(1);
    const failing = {
      field: "toy",
      compute: () => {
        throw new Error("no");
      },
    };
    expect(scoreTable([row({})], failing)).toMatchObject({ unbound_n: 1, passed_n: 0 });
  });
  it("refuses NaN, other types and lists of another length", () => {
    expect(passes(row({}), { area_m2: Number.NaN })).toBe(false);
    expect(passes(row({}), { area_m2: "9" })).toBe(false);
    expect(passes(row({ expect: { area_m2: [9, 9] } }), { area_m2: [9] })).toBe(false);
    expect(passes(row({ expect: { area_m2: [9, [9]] } }), { area_m2: [9.4, [8.6]] })).toBe(true);
  });
  it("compares text and flags by equality, and times by their unit", () => {
    expect(passes(row({ expect: { kind: "peat" }, tolerance_abs: 0 }), { kind: "peat" })).toBe(true);
    expect(passes(row({ expect: { kind: "peat" }, tolerance_abs: 0 }), { kind: "bark" })).toBe(false);
    expect(passes(row({ expect: { fine: true }, tolerance_abs: 0 }), { fine: false })).toBe(false);
    const date = row({ expect: { on: "9-Apr" }, tolerance_abs: 1, tolerance_unit: "d" });
    expect(passes(date, { on: "10-Apr" })).toBe(true);
    expect(passes(date, { on: "11-Apr" })).toBe(false);
    const clock = row({ expect: { at: "07:08:12" }, tolerance_abs: 15, tolerance_unit: "s" });
    expect(passes(clock, { at: "07:08:27" })).toBe(true);
    expect(passes(clock, { at: "07:08:28" })).toBe(false);
  });
  it("wants the correction of a printed slip, not the print", () => {
    const slip = row({
      slip: true,
      slip_keys: ["area_m2"],
      expect: { area_m2: 8 },
      expect_corrected: { area_m2: 9 },
      tolerance_abs: 5,
    });
    expect(passes(slip, { area_m2: 9 })).toBe(true);
    expect(passes(slip, { area_m2: 8 })).toBe(false);
    expect(passes(slip, { area_m2: 8.4 })).toBe(false);
    const bare = row({ slip: true, slip_keys: ["area_m2"] });
    expect(passes(bare, { area_m2: 9 })).toBe(false);
    expect(passes(bare, { area_m2: 12 })).toBe(true);
  });
  it("wants relations where the row says so", () => {
    const below = row({ compare: { area_m2: "computed < expect" } });
    expect(passes(below, { area_m2: 8 })).toBe(true);
    expect(passes(below, { area_m2: 9.1 })).toBe(false);
  });
  it("holds habits of the trade to their bounds", () => {
    const habit = row({ bounds: { wait_min: [10, 30], pours: [2, null], use_must_cover: [34, 51] } });
    expect(passes(habit, { wait_min: 15, pours: 4, use_must_cover: [20, 60] })).toBe(true);
    expect(passes(habit, { wait_min: 15, pours: 1, use_must_cover: [20, 60] })).toBe(false);
    expect(passes(habit, { wait_min: 15, pours: 2, use_must_cover: [36, 60] })).toBe(false);
  });
  it("reports error in tolerances", () => {
    const score = scoreTable([row({}), row({})], { field: "toy", compute: () => ({ area_m2: 9.25 }) });
    expect(score.meanError).toBeCloseTo(0.5, 12);
    expect(score.maxError).toBeCloseTo(0.5, 12);
  });
});

describe("rules", () => {
  const binding = bindByRules(
    "toy",
    [
      rule("area_m2", ["side_m"], ({ side_m }) => side_m ** 2),
      rule("area_m2", ["side_m", "other_m"], ({ side_m, other_m }) => side_m * other_m),
      rule("volume_m3", ["area_m2", "height_m"], ({ area_m2, height_m }) => area_m2 * height_m),
      rule("height_m", ["volume_m3", "area_m2"], ({ volume_m3, area_m2 }) => volume_m3 / area_m2),
    ],
    [alias("side_m", /^side_cm$/, (cm) => cm / 100)],
  );
  it("take the fullest formula, go through others, and convert", () => {
    expect(binding.compute(row({}))).toEqual({ area_m2: 9 });
    expect(binding.compute(row({ inputs: { side_m: 3, other_m: 4 } }))).toEqual({ area_m2: 12 });
    expect(binding.compute(row({ inputs: { side_cm: 300, height_m: 2 }, expect: { volume_m3: 0 } }))).toEqual(
      { volume_m3: 18 },
    );
  });
  it("never read the answer out of the question, and end where rules go in circles", () => {
    expect(binding.compute(row({ inputs: { area_m2: 9 } }))).toEqual({ area_m2: undefined });
    expect(binding.compute(row({ inputs: { side_m: 3 }, expect: { volume_m3: 1 } }))).toEqual({
      volume_m3: undefined,
    });
  });
});
