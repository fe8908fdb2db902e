import { describe, expect, it } from "vitest";
import { saturationVapourPressure_kPa } from "../air/index.ts";
import * as water from "./index.ts";

const leaf = {
  air_C: 22,
  humidity_frac: 0.5,
  absorbed_W_m2: 45,
  airSpeed_m_s: 0.1,
  dimension_m: 0.03,
  lowerStomata_mol_m2_s: 0.16,
  upperStomata_mol_m2_s: 0.04,
  pressure_kPa: 101.3,
};

/** The same leaf by iterating its energy balance with the exact curve: no linearised slope. */
function iterated(input: typeof leaf, leafAirDifference_C: number): number {
  const boundary_mol_m2_s = water.boundaryConductance_mol_m2_s({ ...input, leafAirDifference_C });
  const vapour = water.leafVapourConductance_mol_m2_s({ ...input, boundary_mol_m2_s });
  const heat = 2 * (boundary_mol_m2_s + water.radiativeConductance_mol_m2_s(input.air_C));
  const ea = input.humidity_frac * saturationVapourPressure_kPa(input.air_C);
  const latent = 45064 - 42.9 * input.air_C;
  let [low, high] = [input.air_C - 15, input.air_C + 15];
  const flux = (leaf_C: number) =>
    (vapour * (saturationVapourPressure_kPa(leaf_C) - ea)) / input.pressure_kPa;
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2;
    const surplus = input.absorbed_W_m2 - latent * flux(middle) - 29.3 * heat * (middle - input.air_C);
    if (surplus > 0) low = middle;
    else high = middle;
  }
  return flux((low + high) / 2);
}

describe("a leaf", () => {
  it("loses within half a percent of what its energy balance says", () => {
    for (const change of [{}, { airSpeed_m_s: 0.5 }, { air_C: 19, humidity_frac: 0.45 }]) {
      const here = { ...leaf, ...change };
      const exact = iterated(here, 1);
      expect(Math.abs(water.leafTranspiration(here).transpiration_mol_m2_s / exact - 1)).toBeLessThan(0.006);
    }
  });
  it("strays no further than its straightened curve lets it, with the leaf well below the air", () => {
    const dark = { ...leaf, absorbed_W_m2: 0 };
    const ratio = water.leafTranspiration(dark).transpiration_mol_m2_s / iterated(dark, 1);
    expect(water.leafTranspiration(dark).leafMinusAirDifference_C).toBeLessThan(-1);
    expect(Math.abs(ratio - 1)).toBeLessThan(0.02);
  });
  it("loses nothing when shut, and never a NaN at any light", () => {
    const shut = water.leafTranspiration({ ...leaf, lowerStomata_mol_m2_s: 0, upperStomata_mol_m2_s: 0 });
    expect(shut.transpiration_g_m2_h).toBe(0);
    expect(shut.leafMinusAirDifference_C).toBeGreaterThan(0);
    expect(
      water.leafTranspiration({ ...leaf, airSpeed_m_s: 0, humidity_frac: 1 }).transpiration_g_m2_h,
    ).toBeGreaterThan(0);
  });
  it("loses more in light, dry air and with open stomata", () => {
    const base = water.leafTranspiration(leaf).transpiration_g_m2_h;
    expect(water.leafTranspiration({ ...leaf, absorbed_W_m2: 90 }).transpiration_g_m2_h).toBeGreaterThan(
      base,
    );
    expect(water.leafTranspiration({ ...leaf, humidity_frac: 0.3 }).transpiration_g_m2_h).toBeGreaterThan(
      base,
    );
    expect(
      water.leafTranspiration({ ...leaf, lowerStomata_mol_m2_s: 0.3 }).transpiration_g_m2_h,
    ).toBeGreaterThan(base);
  });
  it("takes pressure from the height when none is given", () => {
    const { pressure_kPa: _, ...noPressure } = leaf;
    const high = water.leafTranspiration({ ...noPressure, elevation_m: 2000 });
    expect(high.transpiration_g_m2_h).not.toBe(water.leafTranspiration(leaf).transpiration_g_m2_h);
    expect(water.leafTranspiration(noPressure)).toEqual(water.leafTranspiration(leaf));
  });
  it("opens with light, closes with dry air and thirst, and keeps its night leak", () => {
    const gs = (ppfd_umol_m2_s: number, leafDeficit_kPa: number, stressCoefficient = 1) =>
      water.stomatalConductance_mol_m2_s({ ppfd_umol_m2_s, leafDeficit_kPa, stressCoefficient });
    expect(gs(400, 1)).toBeGreaterThan(gs(100, 1));
    expect(gs(400, 1)).toBeGreaterThan(gs(400, 3));
    expect(gs(400, 1, 0)).toBe(gs(0, 1));
    expect(gs(0, 1)).toBe(0.025);
  });
  it("uses what is set in place of what is assumed", () => {
    const light = { ppfd_umol_m2_s: 200 };
    expect(water.absorbedFromLamp_W_m2({ ...light, lampPhotons_umol_J: 5.2 })).toBeLessThan(
      water.absorbedFromLamp_W_m2(light),
    );
    expect(() => water.absorbedFromLamp_W_m2({ ...light, lampPhotons_umol_J: 2 })).toThrow(
      "lamp photons is 2",
    );
    expect(water.absorbedFromSun_W_m2({ solar_W_m2: 0 })).toBe(0);
  });
});

describe("a plant in a room", () => {
  const plant = {
    leafArea_m2: 0.03,
    ppfd_umol_m2_s: 200,
    lit_h: 14,
    airDay_C: 22,
    humidityDay_frac: 0.5,
    airNight_C: 18,
    humidityNight_frac: 0.55,
  };
  it("uses by area, most of it by day", () => {
    const one = water.leafLossOfDay(plant);
    expect(water.leafLossOfDay({ ...plant, leafArea_m2: 0.06 }).use_g_d).toBeCloseTo(2 * one.use_g_d, 9);
    expect(one.day_g_d + one.night_g_d).toBeCloseTo(one.use_g_d, 12);
    expect(one.night_g_d / one.use_g_d).toBeGreaterThan(0.03);
    expect(one.night_g_d / one.use_g_d).toBeLessThan(0.35);
  });
  it("uses less when thirsty and more under a fan", () => {
    const one = water.leafLossOfDay(plant).use_g_d;
    expect(water.leafLossOfDay({ ...plant, stressCoefficient: 0.3 }).use_g_d).toBeLessThan(one);
    expect(water.leafLossOfDay({ ...plant, airSpeed_m_s: 0.5 }).use_g_d).toBeGreaterThan(one);
  });
  it("stands on a medium that dries by its wet, open share", () => {
    const pot = { potDiameter_cm: 12, air_C: 22, humidity_frac: 0.5 };
    const wet = water.mediumEvaporation(pot);
    expect(wet.evaporation_g_d).toBeGreaterThan(15);
    expect(wet.evaporation_g_d).toBeLessThan(25);
    const half = water.mediumEvaporation({ ...pot, evaporationReduction: 0.5, covered_frac: 0.5 });
    expect(half.evaporation_mm_d).toBeCloseTo(wet.evaporation_mm_d / 4, 12);
    expect(water.mediumEvaporation({ ...pot, humidity_frac: 1 }).evaporation_mm_d).toBe(0);
  });
});

describe("outdoors", () => {
  it("uses by the crown, not by the rim", () => {
    const crown_m2 = water.crownProjection_m2({ width_cm: 60, crossWidth_cm: 60 });
    expect(crown_m2).toBeCloseTo(Math.PI * 0.09, 12);
    const use = water.outdoorTranspiration_g_d({ referenceEt_mm_d: 5, crown_m2 });
    expect(use).toBeCloseTo(5000 * 1.3 * crown_m2, 9);
    expect(water.outdoorTranspiration_g_d({ referenceEt_mm_d: 5, crown_m2, isolationFactor: 1 })).toBeCloseTo(
      use / 1.3,
      9,
    );
    expect(water.outdoorTranspirationByLeaf_g_d({ referenceEt_mm_d: 1.44, leafArea_m2: 1 })).toBeCloseTo(
      1000,
      9,
    );
  });
  it("lets rain in under the crown, but not a drizzle", () => {
    const rain = { rim_m2: 0.05, referenceEt_mm_d: 5 };
    expect(water.rainIntoPot({ ...rain, rain_mm: 0.9 })).toEqual({ water_g: 0, sd_g: 0 });
    expect(water.rainIntoPot({ ...rain, rain_mm: 10 }).water_g).toBeCloseTo(250, 9);
    expect(water.rainIntoPot({ ...rain, rain_mm: 10, umbrella_frac: 0.7 }).water_g).toBeCloseTo(150, 9);
  });
  it("dries its surface in two stages", () => {
    const kr = (evaporated_mm: number) =>
      water.evaporationReduction({ evaporated_mm, totalEvaporable_mm: 15, readilyEvaporable_mm: 6 });
    expect([kr(0), kr(6), kr(10.5), kr(15), kr(40)]).toEqual([1, 1, 0.5, 0, 0]);
    const ke = { evaporationReduction: 1, coefficientMax: 1.2, basalCoefficient: 0.2, exposed_frac: 1 };
    expect(water.evaporationCoefficient(ke)).toBeCloseTo(1, 12);
    expect(water.evaporationCoefficient({ ...ke, exposed_frac: 0.1 })).toBeCloseTo(0.12, 12);
    expect(water.evaporationCoefficient({ ...ke, coefficientMax: 0.1, basalCoefficient: 1 })).toBe(0);
    expect(
      water.outdoorEvaporation_g_d({ referenceEt_mm_d: 5, evaporationCoefficient: 1, rim_m2: 0.05 }),
    ).toBe(250);
  });
  it("adjusts crop coefficients to wind and dry air", () => {
    const climate = { wind2m_m_s: 2, humidityMin_frac: 0.45, height_m: 0.7 };
    expect(water.adjustedCropCoefficient({ ...climate, cropCoefficient: 1.05 })).toBe(1.05);
    expect(
      water.adjustedCropCoefficient({ ...climate, wind2m_m_s: 4, cropCoefficient: 1.05 }),
    ).toBeGreaterThan(1.05);
    expect(water.maximumCropCoefficient({ ...climate, basalCoefficient: 1.3 })).toBeCloseTo(1.35, 12);
    expect(water.coefficientWithinStage({ coefficientStart: 0.2, coefficientEnd: 1, stage_frac: 0 })).toBe(
      0.2,
    );
    expect(water.coefficientWithinStage({ coefficientStart: 0.2, coefficientEnd: 1, stage_frac: 1 })).toBe(1);
  });
  it("converts depth and amount both ways", () => {
    const depth_mm = water.depthOnSurface_mm({ water_g: 600, surface_m2: 0.05 });
    expect(water.surfaceOfDepth_m2({ water_g: 600, depth_mm })).toBeCloseTo(0.05, 12);
  });
});
