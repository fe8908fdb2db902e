import { describe, expect, it } from "vitest";
import { bentShoot, hangTest, loadSag } from "./beam.ts";
import { branchSag, fruitsBorne_n } from "./sag.ts";

const even = { length_m: 0.15, diameter_m: 0.004, tipDiameter_m: 0.004, lean_deg: 0, stiffness_Pa: 2e8 };
const massFor = (bending: number): number =>
  (bending * 1000 * 2e8 * Math.PI * 0.004 ** 4) / (64 * 0.15 ** 2 * 9.80665);

describe("a branch as a chain", () => {
  it("meets the exact curve at one, two and ten: the sheet's 20 segments gave 0.8117 at ten", () => {
    for (const [bending, within] of [
      [1, 0.003],
      [2, 0.003],
      [10, 0.003],
    ] as const) {
      const { drop_frac } = branchSag(even, [{ at_frac: 1, hung_g: massFor(bending) }]);
      expect(Math.abs(drop_frac - bentShoot(bending).drop_frac)).toBeLessThan(within);
    }
  });
  it("meets the small-angle sum for a light load", () => {
    const hung_g = massFor(0.05);
    const { sag_m } = loadSag({ ...even, load_N: (hung_g / 1000) * 9.80665 });
    expect(branchSag(even, [{ at_frac: 1, hung_g }]).drop_frac * 0.15).toBeCloseTo(sag_m, 4);
  });
  it("hangs straight down at the worst and gives no nonsense", () => {
    const { drop_frac, tip_deg, verdict } = branchSag({ ...even, stiffness_Pa: 1e5 }, [
      { at_frac: 1, hung_g: 500 },
    ]);
    expect(drop_frac).toBeLessThanOrEqual(1.001);
    expect(tip_deg).toBeGreaterThan(-91);
    expect(verdict).toBe("too much");
  });
  it("gives finite drops for any branch that a hand could name", () => {
    for (const lean_deg of [-60, 0, 45, 85])
      for (const diameter_m of [0.0005, 0.002, 0.008])
        for (const hung_g of [0.5, 20, 400]) {
          const { drop_frac, tip_deg } = branchSag(
            { length_m: 0.2, diameter_m, lean_deg, stiffness_Pa: 1e8 },
            [
              { at_frac: 0.7, hung_g },
              { at_frac: 1, hung_g },
            ],
          );
          expect(drop_frac).toBeGreaterThanOrEqual(0);
          expect(drop_frac).toBeLessThanOrEqual(2.001);
          expect(Math.abs(tip_deg)).toBeLessThan(100);
        }
  });
  it("sags more in weeks, less upright, and not at all bare", () => {
    const load = [{ at_frac: 0.8, hung_g: 6 }];
    const level = branchSag(even, load);
    expect(level.dropWeeks_frac).toBeGreaterThan(level.drop_frac);
    expect(branchSag({ ...even, lean_deg: 80 }, load).drop_frac).toBeLessThan(level.drop_frac / 2);
    expect(branchSag(even, [])).toMatchObject({ drop_frac: 0, verdict: "bears it" });
  });
  it("bears more small fruit than large, more when thicker, by the hang test's stiffness", () => {
    const { stiffness_Pa } = hangTest({ hung_g: 20, at_m: 0.12, sag_m: 0.008, diameter_m: 0.005 });
    const branch = { ...even, lean_deg: 30, stiffness_Pa };
    expect(fruitsBorne_n(branch, 3)).toBeGreaterThan(fruitsBorne_n(branch, 20));
    expect(fruitsBorne_n({ ...branch, diameter_m: 0.006 }, 20)).toBeGreaterThan(fruitsBorne_n(branch, 20));
  });
});
