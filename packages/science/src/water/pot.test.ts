import { describe, expect, it } from "vitest";
import { seededGenerator } from "../chance/index.ts";
import { QuantityError } from "../errors/index.ts";
import * as water from "./index.ts";

describe("the store", () => {
  it("is wetter in a shallower pot", () => {
    const curve = { suctions_kPa: [0, 0.5, 1, 2, 5], waters_frac: [0.9, 0.75, 0.6, 0.5, 0.4] };
    const deep = water.containerCapacity_frac({ ...curve, height_cm: 20 });
    const shallow = water.containerCapacity_frac({ ...curve, height_cm: 5 });
    expect(shallow).toBeGreaterThan(deep);
    expect(
      water.containerCapacity_frac({ height_cm: 20, suctions_kPa: [1], waters_frac: [0.6] }),
    ).toBeCloseTo(0.6, 12);
    expect(() =>
      water.containerCapacity_frac({ ...curve, suctions_kPa: [0, 2, 1, 3, 5], height_cm: 5 }),
    ).toThrow(QuantityError);
  });
  it("is what lies between drained and wilted", () => {
    expect(water.potStore_g({ medium_mL: 700, drainedWater_frac: 0.6, wiltingWater_frac: 0.6 })).toBe(0);
    expect(() =>
      water.potStore_g({ medium_mL: 700, drainedWater_frac: 0.1, wiltingWater_frac: 0.2 }),
    ).toThrow(QuantityError);
    const soil = {
      fieldCapacity_frac: 0.3,
      wiltingWater_frac: 0.1,
      rootDepth_m: 0.5,
      depletionFreely_frac: 0.5,
    };
    expect(water.soilStore(soil).freely_mm).toBeCloseTo(50, 9);
  });
  it("slows its plant flat, then along a line, to nothing", () => {
    const ks = (depletion_frac: number) => water.stressCoefficient({ depletion_frac, threshold_frac: 0.6 });
    expect([ks(0), ks(0.6), ks(0.8), ks(1), ks(1.2)].map((each) => Number(each.toFixed(9)))).toEqual([
      1, 1, 0.5, 0, 0,
    ]);
  });
  it("never dries below empty", () => {
    const { depletions, stressCoefficients } = water.dryDown({
      store: 100,
      depletionStart: 0,
      usePerDay: 40,
      threshold_frac: 0.5,
      days_n: 30,
    });
    for (let i = 1; i < depletions.length; i += 1) {
      expect(depletions[i]).toBeGreaterThanOrEqual(depletions[i - 1] ?? NaN);
      expect(stressCoefficients[i]).toBeLessThanOrEqual(stressCoefficients[i - 1] ?? NaN);
    }
    expect(depletions.at(-1)).toBeLessThanOrEqual(100);
  });
  it("is airless when full and low, or full of roots", () => {
    const pot = { depletion_frac: 0.05, height_cm: 12, rootbound: false };
    expect(water.isAirless(pot)).toBe(false);
    expect(water.isAirless({ ...pot, rootbound: true })).toBe(true);
    expect(water.isAirless({ ...pot, height_cm: 8.9 })).toBe(true);
    expect(water.isAirless({ ...pot, height_cm: 8.9, depletion_frac: 0.1 })).toBe(false);
  });
  it("has thresholds that fall with demand, inside their limits", () => {
    const p = (cropEt_mm_d: number) =>
      water.adjustedFieldDepletion_frac({ depletionTable_frac: 0.3, cropEt_mm_d });
    expect(p(2)).toBeGreaterThan(p(8));
    expect(p(20)).toBe(0.1);
    expect(() =>
      water.useDeclineThreshold_frac({ fullWater_frac: 0.5, declineWater_frac: 0.5, stopWater_frac: 0.5 }),
    ).toThrow(QuantityError);
  });
});

describe("a step of drying", () => {
  const belief = {
    mean: [40, 3, 850],
    covariance: [
      [16, 0.1, 0],
      [0.1, 0.04, 0],
      [0, 0, 9],
    ],
  };
  it("adds the same day's error in two halves as in one", () => {
    const quiet = { lnUseWalk_sqrtd: 0, drainedWalk_g_sqrtd: 0 };
    const certain = {
      mean: [40, 3, 850],
      covariance: [
        [16, 0, 0],
        [0, 0, 0],
        [0, 0, 9],
      ],
    };
    const whole = water.depletionStep({ belief: certain, driver_g_d: 1, length_d: 1, ...quiet });
    const first = water.depletionStep({ belief: certain, driver_g_d: 1, length_d: 0.5, ...quiet });
    const second = water.depletionStep({ belief: first.belief, driver_g_d: 1, length_d: 0.5, ...quiet });
    expect(second.belief.mean[0]).toBeCloseTo(whole.belief.mean[0] ?? NaN, 10);
    expect(second.belief.covariance[0]?.[0]).toBeCloseTo(whole.belief.covariance[0]?.[0] ?? NaN, 10);
  });
  it("carries the rain in, and grows less sure each day", () => {
    const dry = water.depletionStep({ belief, driver_g_d: 1, length_d: 1 });
    const rained = water.depletionStep({ belief, driver_g_d: 1, length_d: 1, rain_g: 10 });
    expect((dry.belief.mean[0] ?? 0) - (rained.belief.mean[0] ?? 0)).toBeCloseTo(10, 10);
    for (let i = 0; i < 3; i += 1) {
      expect(dry.belief.covariance[i]?.[i]).toBeGreaterThan(belief.covariance[i]?.[i] ?? NaN);
    }
  });
});

describe("a watering", () => {
  const pot = { depletion_g: 100, variance_g2: 400, store_g: 200, poured_mL: 150 } as const;
  it("that ran out leaves the pot full and the past forgotten", () => {
    const after = water.depletionAfterWatering({ ...pot, drained: "yes" });
    expect(after).toMatchObject({ mean_g: 4, forgets: true, bypass: 0 });
    expect(after.variance_g2).toBeCloseTo(36, 9);
  });
  it("that ran out of a dry medium may have run past it", () => {
    const dry = water.depletionAfterWatering({ ...pot, depletion_g: 190, drained: "yes" });
    expect(dry.bypass).toBeCloseTo(0.5, 9);
    expect(dry.mean_g).toBeGreaterThan(40);
    expect(dry.variance_g2).toBeGreaterThan(36);
  });
  it("with measured leachate closes the balance", () => {
    const after = water.depletionAfterWatering({ ...pot, drained: "yes", leachate_mL: 60 });
    expect(after.mean_g).toBe(10);
    expect(after.forgets).toBe(false);
  });
  it("that did not run out says that the pot was drier than the pour, as drawing says too", () => {
    const after = water.depletionAfterWatering({ ...pot, poured_mL: 100, drained: "no" });
    const { normal } = seededGenerator("watering without leachate");
    const left: number[] = [];
    for (let i = 0; i < 200_000; i += 1) {
      const depletion = 100 + 20 * normal();
      if (depletion > 100 + 8 * normal()) left.push(depletion - 100);
    }
    const mean = left.reduce((sum, each) => sum + each, 0) / left.length;
    expect(after.mean_g).toBeCloseTo(mean, 0);
    expect(after.mean_g).toBeGreaterThan(0);
  });
  it("that nobody looked at lies between both", () => {
    const yes = water.depletionAfterWatering({ ...pot, poured_mL: 100, drained: "yes" });
    const no = water.depletionAfterWatering({ ...pot, poured_mL: 100, drained: "no" });
    const unknown = water.depletionAfterWatering({ ...pot, poured_mL: 100, drained: "unknown" });
    expect(unknown.drained).toBeCloseTo(0.5, 9);
    expect(unknown.mean_g).toBeCloseTo((yes.mean_g + no.mean_g) / 2, 9);
    expect(
      water.depletionAfterWatering({ ...pot, poured_mL: 400, drained: "unknown" }).drained,
    ).toBeGreaterThan(0.99);
  });
});

describe("the date", () => {
  const outlook = { remaining_g: 60, use_g_d: 20, sdLnUse: 0.2 };
  it("is a range around remaining over use, wider when less sure", () => {
    const sure = water.wateringDate(outlook);
    const unsure = water.wateringDate({ ...outlook, sdLnDriver: 0.3 });
    expect(sure.median_d).toBe(unsure.median_d);
    expect(unsure.q10_d).toBeLessThan(sure.q10_d);
    expect(unsure.q90_d).toBeGreaterThan(sure.q90_d);
    const averaged = water.wateringDate({ ...outlook, sdLnDriver: 0.3, effectiveDays_d: 5 });
    expect(averaged.q90_d).toBeLessThan(unsure.q90_d);
  });
  it("agrees with its own probability", () => {
    const { q10_d, q90_d } = water.wateringDate(outlook);
    expect(water.dryWithin({ ...outlook, within_d: q10_d })).toBeCloseTo(0.1, 12);
    expect(water.dryWithin({ ...outlook, within_d: q90_d })).toBeCloseTo(0.9, 12);
    expect(water.dryWithin({ ...outlook, sdLnUse: 0, within_d: 2.9 })).toBe(0);
    expect(water.dryWithin({ ...outlook, sdLnUse: 0, within_d: 3 })).toBe(1);
  });
  it("falls on the last visit that is soon enough", () => {
    const dryBy = [0.01, 0.1, 0.3, 0.8];
    expect(water.visitToWater_n({ dryBy, quantile: 0.2 })).toBe(1);
    expect(water.visitToWater_n({ dryBy, quantile: 0.05 })).toBe(0);
    expect(water.visitToWater_n({ dryBy, quantile: 0.001 })).toBe(0);
    expect(water.visitToWater_n({ dryBy, quantile: 0.9 })).toBe(-1);
    expect(() => water.visitToWater_n({ dryBy: [0.3, 0.1], quantile: 0.2 })).toThrow(QuantityError);
    expect(() => water.checkQuantile({ costEarly: 0, costLate: 0 })).toThrow(QuantityError);
  });
});

describe("a pour", () => {
  it("closes its own balance", () => {
    const { pour_g, leachate_g } = water.pourFor({ depletion_g: 200, leaching_frac: 0.15 });
    expect(pour_g - leachate_g).toBeCloseTo(200, 12);
    expect(leachate_g / pour_g).toBeCloseTo(0.15, 12);
    expect(water.pourFor({ depletion_g: 200, leaching_frac: 0, target_g: 200 }).pour_g).toBe(0);
  });
  it("cannot hold a threshold with water that is too salty", () => {
    expect(water.leachingRequirement_frac({ waterEc_mS_cm: 0 })).toBe(0);
    expect(water.leachingRequirement_frac({ waterEc_mS_cm: 8 })).toBe(1);
    expect(water.leachingRequirement_frac({ waterEc_mS_cm: 2 })).toBeGreaterThan(
      water.leachingRequirement_frac({ waterEc_mS_cm: 1 }),
    );
  });
  it("is kept less the drier the medium, peat least", () => {
    const kept = (depletion_frac: number, rewetting: water.RewettingKind) =>
      water.capturedShare_frac({ depletion_frac, rewetting });
    expect(kept(0.6, "peat")).toBe(0.95);
    expect(kept(0.8, "peat")).toBeCloseTo(0.7, 12);
    expect(kept(1.4, "peat")).toBe(kept(1, "peat"));
    expect(kept(1, "wood fibre, coir or mineral")).toBe(0.75);
  });
  it("is one when moist and several with waits when dry, and fills the pot", () => {
    const pot = { store_g: 200, leaching_frac: 0, rewetting: "peat" } as const;
    expect(water.rewettingPlan({ ...pot, depletion_g: 110 })).toMatchObject({
      wait_min: 0,
      soakInstead: false,
    });
    expect(water.rewettingPlan({ ...pot, depletion_g: 0 }).pours_g).toEqual([]);
    for (const depletion_g of [130, 160, 190, 200, 240]) {
      const plan = water.rewettingPlan({ ...pot, depletion_g });
      expect(plan.pours_g.length).toBeGreaterThanOrEqual(2);
      expect(plan.wait_min).toBe(15);
      let left = depletion_g;
      for (const pour of plan.pours_g) {
        left -= pour * water.capturedShare_frac({ depletion_frac: left / 200, rewetting: "peat" });
      }
      expect(left).toBeCloseTo(0, 9);
    }
  });
  it("shows a dry core by what stays", () => {
    const pours = { firstPour_g: 50, firstGain_g: 25, secondPour_g: 50, secondGain_g: 25 };
    expect(water.hasDryCore(pours)).toBe(false);
    expect(water.hasDryCore({ ...pours, secondGain_g: 24.9 })).toBe(true);
  });
});

describe("screening of pots", () => {
  it("asks when a weight or pour is odd, and is silent otherwise", () => {
    const weighing = { weight_g: 786, expected_g: 790, sd_g: 5, wateredSince: false };
    expect(water.screenWeight(weighing)).toEqual([]);
    expect(water.screenWeight({ ...weighing, weight_g: 0 })[0]?.level).toBe("refuse");
    expect(water.screenWeight({ ...weighing, weight_g: 811 })[0]?.level).toBe("look");
    expect(water.screenWeight({ ...weighing, weight_g: 769 })[0]?.what).toContain("below");
    expect(water.screenPour({ poured_mL: 150, store_g: 200, gain_g: 140 })).toEqual([]);
    expect(water.screenPour({ poured_mL: 601, store_g: 200 })[0]?.level).toBe("refuse");
    expect(water.screenPour({ poured_mL: 0, store_g: 200 })[0]?.level).toBe("refuse");
    expect(water.screenPour({ poured_mL: 150, store_g: 200, gain_g: -5 })[0]?.level).toBe("look");
    expect(water.screenNightShare(0.35)).toEqual([]);
    expect(water.screenNightShare(0.36)).toHaveLength(1);
  });
});

describe("assumptions", () => {
  it("lie inside their own ranges, once each, and own what they are", () => {
    const keys = water.waterAssumptions.map((each) => each.key);
    expect(new Set(keys).size).toBe(keys.length);
    for (const { value, min, max, source } of water.waterAssumptions) {
      expect(value).toBeGreaterThanOrEqual(min);
      expect(value).toBeLessThanOrEqual(max);
      expect(source).not.toBe("");
    }
  });
});
