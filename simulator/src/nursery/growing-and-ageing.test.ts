import { describe, expect, test } from "vitest";
import { drawRun } from "../skill/draw-run.ts";
import { type Ageing, age, renew, salt, saltOpenness_frac } from "./ageing.ts";
import { chanceOf } from "./chance.ts";
import { type Growing, grow, trim } from "./growth.ts";
import { copyOf, type Pot, potAvailable_g } from "./potted-plant.ts";

const drawn = drawRun(0, 3, 30, 40, chanceOf("growing"));
const tree = (): Pot & { ageing: Ageing; growing: Growing } => {
  const pot = copyOf(drawn.tended[0]?.pot as Pot);
  const { rootFull_g, surfaceFull_g } = pot.vessel.medium;
  return {
    ...pot,
    root_g: rootFull_g,
    surface_g: surfaceFull_g,
    plant: { ...pot.plant, growth_frac_d: 0, swelling_g_d: 0 },
    ageing: { ...(pot.ageing as Ageing), day: 0 },
    growing: { owed_m2: 0, wait_Cd: 0, light_mol_m2_d: 10 },
  };
};
const forDays = (pot: Pot, days_n: number, light_umol: number, air_C: number) => {
  for (let hour = 0; hour < days_n * 24; hour++) grow(pot, light_umol * 0.6, light_umol, air_C, 1, 1);
};

describe("leaves", () => {
  test("come back after a cut, not before the buds break, sooner in warmth, never more than is owed", () => {
    const grown = (days_n: number, air_C: number) => {
      const pot = tree();
      const before_m2 = pot.leafArea_m2;
      trim(pot, 0.4);
      forDays(pot, days_n, 250, air_C);
      return pot.leafArea_m2 / before_m2;
    };
    expect(grown(2, 20)).toBeCloseTo(0.6, 6);
    expect(grown(60, 20)).toBeGreaterThan(0.65);
    expect(grown(40, 24)).toBeGreaterThan(grown(40, 17));
    const { regrows_frac } = tree().plant.vigour as { regrows_frac: number };
    expect(grown(2000, 24)).toBeLessThanOrEqual(0.6 + 0.4 * regrows_frac + 1e-9);
  });

  test("fall in the dark after some days and stay in good light", () => {
    const [dim, bright] = [tree(), tree()];
    const before_m2 = dim.leafArea_m2;
    forDays(dim, 30, 1, 20);
    forDays(bright, 30, 200, 20);
    expect(dim.leafArea_m2).toBeLessThan(before_m2 * 0.98);
    expect(bright.leafArea_m2).toBe(before_m2);
  });
});

describe("the filling of a pot", () => {
  test("holds less as it slumps and fills with roots, and what finds no room drains into the ledger", () => {
    const pot = tree();
    const traits = { ...pot.ageing.traits, slumps_frac_y: 0.25, rootsMost_frac: 0.5, rootsPace_per_d: 0.02 };
    const ageing = { ...pot.ageing, traits };
    const before_g = potAvailable_g(pot);
    const held_g = pot.surface_g + pot.root_g;
    for (let day = 1; day <= 120; day++) age(pot, ageing, day);
    expect(potAvailable_g(pot)).toBeLessThan(0.95 * before_g);
    expect(ageing.roots_frac).toBeGreaterThan(pot.ageing.roots_frac);
    expect(held_g - pot.surface_g - pot.root_g).toBeCloseTo(pot.lost_g, 9);
    expect(pot.lost_g).toBeGreaterThan(0);
  });

  test("is as good as new after potting", () => {
    const pot = tree();
    for (let day = 1; day <= 200; day++) age(pot, pot.ageing, day);
    renew(pot.ageing, pot.vessel.medium);
    expect(pot.ageing).toMatchObject({ age_d: 0, salt_g: 0, fresh: pot.vessel.medium });
  });

  test("gathers salt where nothing runs out, loses it where much does, and salt shuts leaves", () => {
    const pot = tree();
    const salty = { ...pot.ageing, traits: { ...pot.ageing.traits, salt_g_L: 0.3 } };
    const flushed = { ...salty };
    for (let i = 0; i < 200; i++) {
      salt(salty, 300, 100, 0);
      salt(flushed, 300, 200, 100);
    }
    expect(salty.salt_g).toBeCloseTo(6, 6);
    expect(flushed.salt_g).toBeLessThan(1);
    expect(saltOpenness_frac(pot, { ...pot.ageing, salt_g: 0 })).toBe(1);
    expect(saltOpenness_frac(pot, { ...pot.ageing, salt_g: 50 })).toBeLessThan(0.9);
  });
});
