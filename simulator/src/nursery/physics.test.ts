import { describe, expect, test } from "vitest";
import { type LeafTraits, leafLoss_g_m2_h, wetSurfaceLoss_g_m2_h } from "./leaf.ts";
import { medium_mL, opening_cm2 } from "./pot-shape.ts";
import { sunAt } from "./sky.ts";
import { pressure_kPa, saturation_kPa, saturationSlope_kPa_per_C } from "./vapour.ts";

const leaf: LeafTraits = {
  assimilationMax_umol_m2_s: 15,
  halfLight_umol_m2_s: 220,
  g1: 4.5,
  g0_mol_m2_s: 0.02,
  width_m: 0.028,
};
const air = {
  air_C: 22,
  vapour_kPa: 1.32,
  wind_m_s: 0.08,
  pressure_kPa: 101.3,
  ppfd_umol_m2_s: 200,
  absorbed_W_m2: 37,
};

describe("vapour", () => {
  test("saturation at 20 °C is 2.339 kPa as in steam tables", () =>
    expect(saturation_kPa(20)).toBeCloseTo(2.339, 1));
  test("slope is the slope", () => {
    const by_C = (saturation_kPa(20.001) - saturation_kPa(19.999)) / 0.002;
    expect(saturationSlope_kPa_per_C(20)).toBeCloseTo(by_C, 6);
  });
  test("air thins with height", () => expect(pressure_kPa(1800)).toBeCloseTo(81.8, 0));
});

describe("water lost by a leaf", () => {
  const loss = (change: Partial<typeof air> = {}, open = 1) =>
    leafLoss_g_m2_h({ ...air, ...change }, leaf, open);
  test("is of the order that lamp-lit pepper leaves lose, 40 to 200 g m⁻² h⁻¹", () => {
    expect(loss()).toBeGreaterThan(40);
    expect(loss()).toBeLessThan(200);
  });
  test("rises with light, dry air, wind and warmth; falls with shut stomata; small in the dark", () => {
    expect(loss({ ppfd_umol_m2_s: 400, absorbed_W_m2: 74 })).toBeGreaterThan(loss());
    expect(loss({ vapour_kPa: 0.9 })).toBeGreaterThan(loss());
    expect(loss({ wind_m_s: 0.5 })).toBeGreaterThan(loss());
    expect(loss({ air_C: 26 })).toBeGreaterThan(loss());
    expect(loss({}, 0.2)).toBeLessThan(0.6 * loss());
    expect(loss({ ppfd_umol_m2_s: 0, absorbed_W_m2: 0 })).toBeLessThan(0.35 * loss());
  });
  test("dew is no loss", () =>
    expect(loss({ air_C: 10, vapour_kPa: 1.4, ppfd_umol_m2_s: 0, absorbed_W_m2: 0 })).toBe(0));
});

describe("a wet surface", () => {
  test("loses 1 to 3 mm a day in a still, dim room", () => {
    const mm_d = (wetSurfaceLoss_g_m2_h({ ...air, ppfd_umol_m2_s: 0, absorbed_W_m2: 5 }, 0.12) * 24) / 1000;
    expect(mm_d).toBeGreaterThan(1);
    expect(mm_d).toBeLessThan(3);
  });
});

describe("the sun", () => {
  test("above 20° S on 3 September brings 32.2 MJ m⁻² to the top of the air, as FAO-56 example 8 prints", () => {
    let sum_MJ = 0;
    for (let minute = 0; minute < 1440; minute += 5) {
      sum_MJ += sunAt(Date.UTC(2015, 8, 3, 0, minute), -20, 0).extraterrestrial_W_m2 * 300e-6;
    }
    // The example takes 1367 W m⁻² where we take 1361, and a plain sine for the sun's declination (0.120 for 0.131 rad that day).
    expect(sum_MJ).toBeGreaterThan(32.2 * 0.98);
    expect(sum_MJ).toBeLessThan(32.2 * 1.01);
  });
  test("stands due south at noon in the north, and highest at midsummer", () => {
    const noon = sunAt(Date.UTC(2026, 5, 21, 12, 2), 47.6, 0);
    expect(noon.azimuth_deg).toBeGreaterThan(178);
    expect(noon.azimuth_deg).toBeLessThan(182);
    expect((Math.asin(noon.sinHeight) * 180) / Math.PI).toBeCloseTo(90 - 47.6 + 23.44, 0);
    expect(sunAt(Date.UTC(2026, 11, 21, 12), 47.6, 0).sinHeight).toBeLessThan(noon.sinHeight);
    expect(sunAt(Date.UTC(2026, 5, 21, 0), 47.6, 0).extraterrestrial_W_m2).toBe(0);
  });
});

describe("pot shapes", () => {
  test("a straight round pot is a cylinder, a tapered one holds what the frustum formula says", () => {
    expect(medium_mL({ form: "round", top_cm: 10, base_cm: 10, depth_cm: 10 }, 1, 0.7)).toBeCloseTo(785.4, 0);
    const frustum_mL = ((Math.PI * 9) / 12) * (12 ** 2 + 12 * 9 + 9 ** 2);
    expect(medium_mL({ form: "round", top_cm: 12, base_cm: 9, depth_cm: 9 }, 1, 0.7)).toBeCloseTo(
      frustum_mL,
      0,
    );
    expect(opening_cm2({ form: "oval", length_cm: 20, width_cm: 10, depth_cm: 5 })).toBeCloseTo(157.08, 1);
  });
});
