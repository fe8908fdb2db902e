import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { QuantityError } from "../errors/index.ts";
import * as growth from "./index.ts";

const anySpecies = fc.constantFrom(...growth.speciesGroups);
const anyFruit = fc.constantFrom(...growth.fruitClasses);

describe("phases", () => {
  it("hold the sums of the sheet on the common clock", () => {
    const sums = growth.phaseSums({ species: "annuum" });
    expect(sums).toMatchObject({
      transplant_Cd: 460,
      flower_Cd: 420,
      set_Cd: 110,
      fullSize_Cd: 420,
      ripe_Cd: 690,
    });
    expect(growth.phaseSums({ species: "annuum", fruit: "small" }).ripe_Cd).toBe(640);
    expect(growth.phaseSums({ species: "frutescens", fruit: "bell" }).ripe_Cd).toBe(640);
  });
  it("keep the days at 25 °C when a base is set", () => {
    const days = (plant: growth.Pepper): number => {
      const { base_C } = growth.developmentClock(plant);
      return growth.daysForSum_d({ thermalTime_Cd: growth.phaseSums(plant).ripe_Cd, air_C: 25, base_C });
    };
    expect(days({ species: "annuum", baseAnnuum_C: 6 })).toBeCloseTo(days({ species: "annuum" }), 9);
    expect(days({ species: "chinense" })).toBeCloseTo(50, 9);
  });
});

describe("stages", () => {
  it("come in order, and later with doubt than without", () => {
    fc.assert(
      fc.property(anySpecies, anyFruit, fc.integer({ min: 0, max: 80 }), (species, fruit, bbch) => {
        const at = (code: number, probability: number): number =>
          growth.stageSum_Cd({ species, fruit, bbch: code, probability });
        expect(at(bbch, 0.9)).toBeGreaterThanOrEqual(at(bbch, 0.5));
        const side = bbch + 1 >= 20 && bbch <= 30;
        if (!side) expect(at(bbch + 1, 0.5)).toBeGreaterThanOrEqual(at(bbch, 0.5));
      }),
    );
  });
  it("are reached at their sum, at even odds", () => {
    fc.assert(
      fc.property(
        anySpecies,
        anyFruit,
        fc.constantFrom(5, 9, 10, 15, 51, 61, 71, 81),
        (species, fruit, bbch) => {
          const plant = { species, fruit };
          const thermalTime_Cd = growth.stageSum_Cd({ ...plant, bbch });
          expect(growth.stageReached_frac({ ...plant, bbch, thermalTime_Cd })).toBeCloseTo(0.5, 9);
          expect(growth.expectedStage({ ...plant, thermalTime_Cd: thermalTime_Cd + 1e-6 }).bbch).toBe(bbch);
        },
      ),
    );
  });
  it("have the spread of independent phases", () => {
    const ripe = { species: "annuum", bbch: 81 } as const;
    const sd = Math.hypot(0.15 * 460, 0.18 * 420, 0.12 * 690);
    const ratio = Math.log(growth.stageSum_Cd({ ...ripe, probability: 0.9 }) / growth.stageSum_Cd(ripe));
    expect(ratio / 1.2815515655).toBeCloseTo(Math.sqrt(Math.log(1 + (sd / 1570) ** 2)), 9);
  });
  it("start from what was seen: nearer, and surer", () => {
    const plant = { species: "annuum", bbch: 61, probability: 0.9 } as const;
    const fromLeaves = growth.stageSum_Cd({ ...plant, bbchStart: 15 });
    expect(fromLeaves).toBeLessThan(growth.stageSum_Cd(plant) - 400);
    expect(growth.stageSum_Cd({ ...plant, bbchStart: 65 })).toBe(0);
    expect(growth.stageReached_frac({ species: "annuum", bbch: 61, bbchStart: 61, thermalTime_Cd: 0 })).toBe(
      1,
    );
    const seen = growth.expectedStage({ species: "annuum", bbchStart: 25, thermalTime_Cd: 0 });
    expect(seen).toMatchObject({ bbch: 25, bbchLow: 25, stage: "side shoots" });
    expect(growth.expectedStage({ species: "annuum", bbchStart: 25, thermalTime_Cd: 220 }).stage).toBe(
      "flower buds",
    );
  });
  it("spread further where the thermal time itself is in doubt", () => {
    const plant = { species: "annuum", thermalTime_Cd: 700 } as const;
    const sure = growth.expectedStage(plant);
    const unsure = growth.expectedStage({ ...plant, thermalTimeSd_Cd: 200 });
    expect(unsure.bbch).toBe(sure.bbch);
    expect(unsure.bbchLow).toBeLessThan(sure.bbchLow);
    expect(unsure.flowering_frac).toBeGreaterThan(sure.flowering_frac);
    const reached = { ...plant, bbch: 61, thermalTimeSd_Cd: 200 };
    expect(growth.stageReached_frac(reached)).toBeCloseTo(unsure.flowering_frac, 12);
    expect(() => growth.expectedStage({ ...plant, thermalTimeSd_Cd: -1 })).toThrow(QuantityError);
  });
  it("have no chance at the first instant after the start, and no error", () => {
    const plant = { species: "annuum", thermalTime_Cd: Number.MIN_VALUE } as const;
    expect(growth.expectedStage(plant)).toMatchObject({ bbch: 0, flowering_frac: 0 });
  });
  it("go from dry seed to ripening and no further", () => {
    const at = (thermalTime_Cd: number) => growth.expectedStage({ species: "annuum", thermalTime_Cd });
    expect(at(0)).toMatchObject({
      bbch: 0,
      bbchHigh: 0,
      stage: "germination",
      flowering_frac: 0,
      ripe_frac: 0,
    });
    expect(at(20_000)).toMatchObject({ bbch: 81, stage: "ripening", flowering_frac: 1 });
    const young = at(400);
    expect(young.stage).toBe("leaf development");
    expect(young.bbchLow).toBeLessThanOrEqual(young.bbch);
    expect(young.bbchHigh).toBeGreaterThanOrEqual(young.bbch);
    expect(
      growth.bbchStages.every(({ bbch }) => growth.principalStages[Math.floor(bbch / 10)] !== "none"),
    ).toBe(true);
  });
  it("stay in order when sums are set against one another", () => {
    const odd = {
      species: "annuum",
      transplant_Cd: 250,
      emergence_Cd: 250,
      fullSize_Cd: 600,
      ripeLong_Cd: 400,
    } as const;
    for (const [earlier, later] of [
      [9, 15],
      [15, 61],
      [71, 81],
    ] as const) {
      const sum = (bbch: number): number => growth.stageSum_Cd({ ...odd, bbch });
      expect(sum(later)).toBeGreaterThanOrEqual(sum(earlier));
    }
    for (let sum_Cd = 0; sum_Cd < 2000; sum_Cd += 50)
      expect(Number.isFinite(growth.expectedStage({ ...odd, thermalTime_Cd: sum_Cd }).bbch)).toBe(true);
  });
});

describe("seed", () => {
  it("comes as the table says, and not at all in cold or heat", () => {
    expect([10, 15, 20, 25, 30, 35, 40].map(growth.germinatedShare_frac)).toEqual([
      0.01, 0.7, 0.96, 0.98, 0.95, 0.7, 0,
    ]);
    expect([0, 5, 45].map(growth.germinatedShare_frac)).toEqual([0, 0, 0]);
    for (const medium_C of [4, 10, 10.4, 40]) {
      expect(growth.emergence({ medium_C })).toMatchObject({ emerges: false, days_d: null, rate_per_d: 0 });
    }
  });
  it("is fastest from the plateau on; chinense is slower and less even", () => {
    const days = (medium_C: number): number => growth.emergence({ medium_C }).days_d ?? Infinity;
    expect(days(15)).toBeGreaterThan(days(20));
    expect(days(25)).toBe(days(33));
    const [quick, slow] = (["annuum", "chinense"] as const).map((species) =>
      growth.emergence({ medium_C: 25, species }),
    );
    expect(slow?.days_d).toBeGreaterThan(quick?.days_d ?? Infinity);
    expect((slow?.high_d ?? 0) / (slow?.low_d ?? 1)).toBeGreaterThan(
      (quick?.high_d ?? 0) / (quick?.low_d ?? 1),
    );
    const clock = growth.emergenceClock({});
    expect(days(20)).toBeCloseTo(118 / growth.thermalRate_Cd_per_d({ air_C: 20, ...clock }), 9);
  });
  it("has emerged by half at its sum and never more than will come", () => {
    const share = (thermalTime_Cd: number): number =>
      growth.emergedShare_frac({ thermalTime_Cd, germinated_frac: 0.8 });
    expect(share(0)).toBe(0);
    expect(share(118)).toBeCloseTo(0.4, 9);
    expect(share(5000)).toBeCloseTo(0.8, 9);
  });
  it("is sown in the smallest number that does", () => {
    const chance = (n: number, wanted: number, p: number): number => {
      let below = 0;
      let term = (1 - p) ** n;
      for (let k = 0; k < wanted; k += 1) {
        below += term;
        term *= ((n - k) / (k + 1)) * (p / (1 - p));
      }
      return 1 - below;
    };
    const some = [fc.integer({ min: 1, max: 40 }), fc.double({ min: 0.1, max: 0.95, noNaN: true })] as const;
    fc.assert(
      fc.property(...some, (wanted_n, success_frac) => {
        const seeds = growth.seedsToSow_n({ wanted_n, success_frac });
        expect(chance(seeds, wanted_n, success_frac)).toBeGreaterThanOrEqual(0.9 - 1e-9);
        if (seeds > wanted_n) expect(chance(seeds - 1, wanted_n, success_frac)).toBeLessThan(0.9 + 1e-9);
      }),
    );
    expect(growth.seedsToSow_n({ wanted_n: 7, success_frac: 1 })).toBe(7);
    expect(
      growth.seedsToSow_n({ wanted_n: 10_000, success_frac: 0.01, certainty_frac: 0.999 }),
    ).toBeGreaterThan(1e6);
    expect(() => growth.seedsToSow_n({ wanted_n: 5, success_frac: 0 })).toThrow(QuantityError);
  });
});

describe("nodes", () => {
  it("come every 2.9 days in annuum at its optimum, slower in fruit, and hardly in a cool chinense", () => {
    const rate = (species: growth.SpeciesGroup, air_C: number, fruiting = false): number =>
      growth.nodeRate_per_d({ species, air_C, fruiting });
    expect(rate("annuum", 24)).toBeCloseTo(0.35, 9);
    expect(rate("annuum", 24, true)).toBeCloseTo(0.35 * 0.67, 9);
    expect(rate("chinense", 18)).toBeLessThan(0.03);
    expect(rate("chinense", 16.8)).toBe(0);
    expect(rate("pubescens", 24)).toBe(rate("annuum", 24));
  });
  it("are counted on their own clock, with a range", () => {
    const made = growth.nodesMade({ species: "chinense", fruiting: true, thermalTime_Cd: 644 });
    expect(made.nodes_n).toBeCloseTo(10, 9);
    expect(made.low_n).toBeLessThan(10);
    expect(made.high_n * made.low_n).toBeCloseTo(100, 6);
  });
});

describe("leaves", () => {
  it("refuse what is no pepper leaf", () => {
    expect(() => growth.leafArea_cm2({ length_cm: 5, width_cm: 6.1 })).toThrow(
      "width is 6.1 cm; expected 0.05 to 6 cm",
    );
    expect(() => growth.leafArea_cm2({ length_cm: 25, width_cm: 12 })).toThrow("rectangle is 300 cm²");
    expect(() => growth.leafAreaWithIntercept_cm2({ length_cm: 1.5, width_cm: 0.6 })).toThrow(QuantityError);
    expect(growth.leafAreaWithIntercept_cm2({ length_cm: 2, width_cm: 0.5 })).toBeCloseTo(0.02, 9);
    expect(growth.leafArea_cm2({ length_cm: 8, width_cm: 4, leafShape: 0.66 })).toBeCloseTo(21.12, 9);
  });
  it("add up to a plant, the surer the more were measured", () => {
    const plant = (measured: number) =>
      growth.plantLeafArea({
        leaves_n: 60,
        length_cm: Array.from({ length: measured }, (_, i) => 6 + (i % 3)),
        width_cm: Array.from({ length: measured }, (_, i) => 3 + (i % 3) / 2),
      });
    expect(plant(12).sd_m2).toBeLessThan(plant(4).sd_m2);
    expect(plant(3).sd_m2 / plant(3).leafArea_m2).toBeGreaterThan(0.2);
    const all = plant(60);
    expect(all.sd_m2 / all.leafArea_m2).toBeCloseTo(0.05, 9);
    expect(() => growth.plantLeafArea({ leaves_n: 2, length_cm: [5, 5, 5], width_cm: [2, 2, 2] })).toThrow(
      QuantityError,
    );
  });
  it("have an area for their dry mass that is never negative", () => {
    const mass = { leafDryMass_g: 0.1, specificLeafArea_cm2_g: 97.27 };
    expect(growth.leafAreaFromDryMass_cm2({ ...mass, intercept_cm2: -50 })).toBe(0);
    expect(growth.leafMassPerArea_g_m2(151.62)).toBeCloseTo(65.95, 2);
  });
});

describe("growth of leaf area", () => {
  it("is what was remembered of sills and lamps", () => {
    const at = (dli_mol_m2_d: number, air_C = 24): number =>
      growth.expectedRelativeGrowth_per_d({ species: "annuum", dli_mol_m2_d, air_C });
    expect(at(0)).toBe(0);
    for (const sill of [2, 3, 5]) {
      expect(at(sill)).toBeGreaterThan(0.03);
      expect(at(sill)).toBeLessThan(0.08);
    }
    for (const lamp of [10, 12, 15]) {
      expect(at(lamp)).toBeGreaterThan(0.1);
      expect(at(lamp)).toBeLessThan(0.18);
    }
    expect(at(12, 15)).toBeLessThan(at(12, 22));
    expect(at(12, 27)).toBe(at(12, 25));
  });
  it("follows the measured rate while there is room, and stops at the limit", () => {
    const after = (leafArea_m2: number, days_d: number): number =>
      growth.leafAreaAfter_m2({ leafArea_m2, leafAreaMax_m2: 0.2, relativeGrowth_per_d: 0.1, days_d });
    const small = after(0.0001, 7);
    const span = { leafAreaStart_m2: 0.0001, leafAreaEnd_m2: small, days_d: 7 };
    expect(growth.relativeGrowth_per_d(span)).toBeCloseTo(0.1, 3);
    expect(after(0.05, 1000)).toBeCloseTo(0.2, 9);
    expect(after(0.3, 30)).toBe(0.3);
    expect(after(0, 30)).toBe(0);
    expect(after(after(0.01, 5), 9)).toBeCloseTo(after(0.01, 14), 12);
  });
  it("is expected with a range, from open cotyledons unless told more", () => {
    const bench = { species: "annuum", dli_mol_m2_d: 12, air_C: 24, leafAreaMax_m2: 0.1 } as const;
    expect(growth.expectedLeafArea({ ...bench, days_d: 0 }).leafArea_m2).toBeCloseTo(0.0002, 12);
    const month = growth.expectedLeafArea({ ...bench, days_d: 30 });
    expect(month.low_m2).toBeLessThan(month.leafArea_m2);
    expect(month.high_m2).toBeGreaterThan(month.leafArea_m2);
    expect(growth.expectedLeafArea({ ...bench, days_d: 1000 }).low_m2).toBeCloseTo(0.1, 9);
    expect(growth.expectedLeafArea({ ...bench, days_d: 5, leafArea_m2: 0.05 }).leafArea_m2).toBeGreaterThan(
      0.05,
    );
    expect(() => growth.expectedLeafArea({ ...bench, days_d: 5, leafArea_m2: Number.NaN })).toThrow(
      QuantityError,
    );
  });
});
