import { describe, expect, it } from "vitest";
import { QuantityError } from "../errors/index.ts";
import {
  crossing,
  finishOff_d,
  fruitCourse_frac,
  fruitSetRun,
  fruitsToKeep,
  germinationTest,
  keepByBranch,
  learnedBudget,
  naturalLoad_n,
  pollinated_frac,
  printedHeat,
  refitRipening,
  ripening,
  seedLife_d,
  setChance_frac,
  sizeOfLoad,
  warmthSet_frac,
} from "./index.ts";

const bench = { source_g_d: 0.1407, dryMassFull_g: 0.36, toRipe_d: 45 };
const clock = { base_C: 10, optimumLow_C: 28, optimumHigh_C: 35, max_C: 55 };

describe("what the light feeds", () => {
  it("gives the range of the sheet's section 8.7, and a smaller number for fruit to be shown", () => {
    const { fruits_n, low_n, high_n, show_n } = fruitsToKeep(bench);
    expect(high_n / fruits_n).toBeCloseTo(1.75, 1);
    expect(low_n).toBeLessThan(show_n);
    expect(show_n).toBeLessThan(fruits_n);
  });
  it("keeps less than a plant left alone would set, by the sheet's 2.7", () => {
    expect(naturalLoad_n(bench) / fruitsToKeep(bench).fruits_n).toBeCloseTo(2.67, 1);
  });
  it("fills what it keeps, and pays for it in ripe mass", () => {
    const kept = sizeOfLoad({ ...bench, fruits_n: fruitsToKeep(bench).fruits_n });
    const left = sizeOfLoad({ ...bench, fruits_n: naturalLoad_n(bench) });
    expect(kept.size_frac).toBeCloseTo(1, 6);
    expect(left.size_frac).toBeCloseTo(0.5, 6);
    expect(left.dryMass_g).toBeGreaterThan(kept.dryMass_g);
  });
  it("learns from a harvest and narrows its range by it", () => {
    const { learned, learnedSpread_frac } = learnedBudget({ pickedOverReckoned: 2, weighed_n: 12 });
    expect(learned).toBeGreaterThan(1.5);
    expect(fruitsToKeep({ ...bench, learned, learnedSpread_frac }).spread_frac).toBeLessThan(
      fruitsToKeep(bench).spread_frac,
    );
  });
  it("carries fractions of flowers without losing any", () => {
    const run = { source_g_d: 2.4, vegetative_g_d: 1.9, dryMassFull_g: 8, toRipe_d: 60, flowering_d: 100 };
    for (const flowers_per_d of [0.1, 0.3, 1 / 3, 2.5])
      expect(fruitSetRun({ ...run, flowers_per_d }).flowers_n).toBe(Math.round(100 * flowers_per_d - 0.001));
  });
});

describe("which stay on which branch", () => {
  const branch = (leaf_frac: number, bears_n: number, has_n: number) => ({ leaf_frac, bears_n, has_n });
  it("shares by leaf, holds to what a branch bears and has, and passes on what it can't take", () => {
    expect(keepByBranch(6, [branch(0.5, 9, 9), branch(0.5, 9, 9)])).toEqual([3, 3]);
    expect(keepByBranch(6, [branch(0.5, 2, 9), branch(0.5, 9, 9)])).toEqual([2, 4]);
    expect(keepByBranch(6, [branch(0.8, 9, 1), branch(0.2, 0, 9)])).toEqual([1, 0]);
  });
  it("never keeps more than it was told", () => {
    const kept = keepByBranch(5.9, [branch(0.4, 9, 9), branch(0.3, 9, 9), branch(0.3, 9, 9)]);
    expect(kept.reduce((sum, each) => sum + each, 0)).toBe(5);
  });
});

describe("set", () => {
  const flower = { sourceOverDemand: 2, pollinated_frac: 1, warmthSet_frac: 1 };
  it("never reaches one, and is clearly lower in still air", () => {
    expect(setChance_frac(flower)).toBeLessThan(0.9);
    const still = pollinated_frac({ moved: "still air" });
    expect(setChance_frac({ ...flower, pollinated_frac: still })).toBeLessThan(0.3);
    expect(pollinated_frac({ moved: "by hand", visits_n: 3 })).toBeGreaterThan(
      pollinated_frac({ moved: "by hand", visits_n: 1 }),
    );
  });
  it("falls with hunger, heat, cold days and cold nights", () => {
    expect(setChance_frac({ ...flower, sourceOverDemand: 0.3 })).toBeLessThan(0.1);
    expect(warmthSet_frac({ airDay_C: 29, airMax_C: 34 })).toBe(0.3);
    expect(warmthSet_frac({ airDay_C: 17 })).toBeLessThan(0.4);
    expect(warmthSet_frac({ airDay_C: 27, airNight_C: 10 })).toBe(0.4);
  });
});

describe("ripening", () => {
  it("says where it cannot ripen, and from which air on it can", () => {
    const cold = ripening({ air_C: 11.5, toRipe_Cd: 690, ...clock });
    expect(cold).toMatchObject({ ripens: false, days_d: null, floor_C: 12 });
    expect(ripening({ air_C: 16, toRipe_Cd: 690, ...clock }).days_d).toBeCloseTo(115, 6);
  });
  it("narrows as warmth lies behind", () => {
    const width = (behind_Cd: number) => {
      const { low_d, high_d } = ripening({ air_C: 22, toRipe_Cd: 690, behind_Cd, ...clock });
      return (high_d as number) - (low_d as number);
    };
    expect(width(600)).toBeLessThan(width(0) / 2);
  });
  it("is drawn towards own fruit by how many plants bore it", () => {
    const own = { own_Cd: new Array<number>(12).fill(560), default_Cd: 690, spread_frac: 0.12 };
    expect(refitRipening({ ...own, plants_n: 1 }).toRipe_Cd).toBeGreaterThan(refitRipening(own).toRipe_Cd);
    expect(refitRipening(own).spread_frac).toBeLessThan(0.12);
  });
  it("finishes fruit that shows colour, never green fruit", () => {
    expect(finishOff_d({ coloured_frac: 0.3, air_C: 20 })).toBe(5);
    expect(finishOff_d({ coloured_frac: 0.02, air_C: 20 })).toBeNull();
    expect(finishOff_d({ coloured_frac: 0.5, air_C: 10 })).toBeNull();
  });
  it("grows in the windows that were published", () => {
    expect(fruitCourse_frac({ thermalTime_Cd: 200, part: "volume" })).toBeCloseTo(0.1, 1);
    expect(fruitCourse_frac({ thermalTime_Cd: 1200, part: "dry mass" })).toBeCloseTo(0.9, 1);
  });
});

describe("heat and seed", () => {
  it("flags a printed heat that its own content contradicts, and lets others pass", () => {
    expect(printedHeat({ shu: 67_984.6, content_ug_g: 4249 }).flag).toBe(false);
    expect(printedHeat({ shu: 142_931, content_ug_g: 70_728 }).flag).toBe(true);
    expect(() => printedHeat({ shu: -1, content_ug_g: 10 })).toThrow(QuantityError);
  });
  it("crosses less from afar, in a bag, and between species that do not take", () => {
    const beside = { mother: "annuum", father: "annuum", distance_m: 0, kept: "none" } as const;
    const at = (change: object) => crossing({ ...beside, ...change }).fruit_frac;
    expect(at({})).toBe(0.108);
    expect(at({ distance_m: 400 })).toBeLessThan(0.001);
    expect(at({ kept: "bagged" })).toBeLessThan(0.003);
    expect(at({ father: "pubescens" })).toBe(0);
  });
  it("keeps longer cold and dry", () => {
    expect(seedLife_d({ air_C: 5 })).toBeGreaterThan(4 * seedLife_d({ air_C: 21 }));
    expect(seedLife_d({ air_C: 21, water_frac: 0.1 })).toBeLessThan(200);
  });
  it("narrows a germination by seeds tested and refuses more than were laid out", () => {
    const range = (tested_n: number) => {
      const { low_frac, high_frac } = germinationTest({ tested_n, germinated_n: tested_n / 2 });
      return high_frac - low_frac;
    };
    expect(range(100)).toBeLessThan(range(20));
    expect(() => germinationTest({ tested_n: 20, germinated_n: 21 })).toThrow(QuantityError);
  });
});
