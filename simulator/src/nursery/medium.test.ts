import { describe, expect, test } from "vitest";
import { chanceOf } from "./chance.ts";
import { drawVessel } from "./draw-plant.ts";
import {
  available_g,
  depletion_g,
  dry,
  type MediumTraits,
  openness_frac,
  pour,
  surfaceWetness_frac,
  type Water,
} from "./medium.ts";

const vessel = (seed: number) =>
  drawVessel({ form: "round", top_cm: 12, depth_cm: 9 }, "spongy", chanceOf(seed));
const full = (medium: MediumTraits): Water => ({
  surface_g: medium.surfaceFull_g,
  root_g: medium.rootFull_g,
  saucer_g: 0,
});
const held_g = (water: Water) => water.surface_g + water.root_g + water.saucer_g;

describe("the two stores of a pot", () => {
  test("lose no water and make none over a thousand random hours and pours", () => {
    for (let seed = 0; seed < 20; seed++) {
      const chance = chanceOf(`mass ${seed}`);
      const { medium } = vessel(seed);
      const water = full(medium);
      const start_g = held_g(water);
      let in_g = 0;
      let out_g = 0;
      for (let hour = 0; hour < 1000; hour++) {
        const flow = dry(water, medium, chance.between(0, 4), chance.between(0, 12), chance.between(0.01, 1));
        out_g += flow.evaporated_g + flow.drunk_g;
        if (chance.happens(0.02)) {
          const volume_mL = chance.between(5, 500);
          const leached_g = pour(water, medium, volume_mL);
          expect(leached_g).toBeGreaterThanOrEqual(-1e-12);
          water.saucer_g += leached_g * 0.5;
          in_g += volume_mL;
          out_g += leached_g * 0.5;
        }
        expect(water.surface_g).toBeGreaterThanOrEqual(medium.surfaceDry_g - 1e-9);
        expect(water.surface_g).toBeLessThanOrEqual(medium.surfaceFull_g + 1e-9);
        expect(water.root_g).toBeLessThanOrEqual(medium.rootFull_g + 1e-9);
      }
      expect(Math.abs(start_g + in_g - out_g - held_g(water)) / in_g).toBeLessThan(1e-9);
    }
  });

  test("the surface dries before the root zone", () => {
    const { medium } = vessel(1);
    const water = full(medium);
    for (let hour = 0; hour < 72; hour++) dry(water, medium, 1.2, 1, 1);
    const root_frac = (water.root_g - medium.rootWilt_g) / (medium.rootFull_g - medium.rootWilt_g);
    expect(surfaceWetness_frac(water, medium)).toBeLessThan(root_frac);
  });

  test("water rises from the roots to a surface that dries without a plant", () => {
    const { medium } = vessel(2);
    const water = full(medium);
    for (let hour = 0; hour < 48; hour++) dry(water, medium, 2, 0, 1);
    expect(water.root_g).toBeLessThan(medium.rootFull_g);
  });

  test("dry medium lets more of a pour run past than moist medium, with room for all of it in both", () => {
    const { medium } = vessel(3);
    const moist = { ...full(medium), root_g: medium.rootFull_g * 0.75 };
    const parched = { ...full(medium), root_g: medium.rootWilt_g * 1.02 };
    const small_mL = medium.rootFull_g * 0.1;
    expect(pour(parched, medium, small_mL)).toBeGreaterThan(pour(moist, medium, small_mL) * 1.5);
  });

  test("a great pour fills both stores, and depletion is then nought", () => {
    const { medium } = vessel(4);
    const water = { ...full(medium), root_g: medium.rootFull_g * 0.6 };
    for (let i = 0; i < 6; i++) pour(water, medium, 2000);
    expect(depletion_g(water, medium)).toBeCloseTo(0, 9);
    expect(available_g(medium)).toBeGreaterThan(100);
  });

  test("stomata shut as the root zone dries", () => {
    const { medium } = vessel(5);
    const at = (frac: number) =>
      openness_frac(
        { ...full(medium), root_g: medium.rootWilt_g + (medium.rootFull_g - medium.rootWilt_g) * frac },
        medium,
      );
    expect(at(1)).toBe(1);
    expect(at(0.5)).toBeGreaterThan(0.9);
    expect(at(0)).toBeLessThan(at(0.1));
    expect(at(0)).toBeLessThan(0.55);
  });
});
