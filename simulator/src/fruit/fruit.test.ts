import { describe, expect, test } from "vitest";
import { chanceOf } from "../nursery/chance.ts";
import { bearingPlants, liveBearing } from "./index.ts";

const alone = () => undefined;
const DAYS_n = 150;
const plants = bearingPlants(7, 40, DAYS_n);
const lives = plants.map(({ nature, air, name }) => liveBearing(nature, air, alone, chanceOf(name)));
const mean = (values: readonly number[]) => values.reduce((sum, each) => sum + each, 0) / values.length;
const ripe = (life: (typeof lives)[number]) => life.fruits.filter(({ ripe_d }) => ripe_d !== undefined);

describe("plants that bear", () => {
  test("are the same for the same seed, and others for another", () => {
    expect(bearingPlants(7, 3, DAYS_n)).toEqual(bearingPlants(7, 3, DAYS_n));
    expect(bearingPlants(8, 1, DAYS_n)).not.toEqual(bearingPlants(7, 1, DAYS_n));
  });
  test("set more than they fill when nobody thins, and drop many", () => {
    const sizes = lives.flatMap((life) => ripe(life).map(({ dry_g, full_g }) => dry_g / full_g));
    expect(mean(sizes)).toBeLessThan(0.85);
    expect(mean(sizes)).toBeGreaterThan(0.2);
    const dropped = lives.flatMap(({ fruits }) => fruits.filter(({ gone }) => gone === "dropped"));
    expect(dropped.length).toBeGreaterThan(plants.length);
  });
  test("fill their fruit when few are left", () => {
    const few = plants.map(({ nature, air, name }) => liveBearing(nature, air, () => 1, chanceOf(name)));
    const sizes = few.flatMap((life) => ripe(life).map(({ dry_g, full_g }) => dry_g / full_g));
    expect(mean(sizes)).toBeGreaterThan(0.85);
  });
  test("ripen later in the cool, in a time that people have seen", () => {
    const days = lives.flatMap((life) =>
      ripe(life).map(({ ripe_d, opened_d }) => (ripe_d as number) - opened_d),
    );
    expect(Math.min(...days)).toBeGreaterThan(25);
    expect(mean(days)).toBeGreaterThan(40);
    expect(mean(days)).toBeLessThan(90);
  });
  test("make nothing out of nothing: all that hangs was made of light", () => {
    lives.forEach(({ fruits, caught_mol_d }, each) => {
      const made_g =
        (plants[each]?.nature.lightUse_g_MJ as number) *
        0.215 *
        caught_mol_d.reduce((sum, mol) => sum + mol, 0);
      expect(fruits.reduce((sum, { dry_g }) => sum + dry_g, 0)).toBeLessThanOrEqual(made_g);
    });
  });
});
