import { describe, expect, it } from "vitest";
import {
  aimed,
  amountOf,
  bestMix,
  blendedWater,
  clashes,
  conductivity_mS_cm,
  elementShare_frac,
  gypsumIndex,
  hardnessOf_mg_L,
  ionImbalance_frac,
  isMade,
  type Label,
  likelySlips,
  meterReading,
  molarMass_g_mol,
  readLabel,
  softenerAdds_mg_L,
  stageTargets,
  thinning,
  usualWater,
} from "./index.ts";

describe("formulas", () => {
  it("count groups and waters, and refuse what is no element", () => {
    expect(molarMass_g_mol("5Ca(NO3)2.NH4NO3.10H2O")).toBeCloseTo(1080.62, 1);
    expect(molarMass_g_mol("(NH4)2SO4")).toBeCloseTo(132.134, 2);
    expect(() => elementShare_frac({ formula: "Xx2", atom: "K" })).toThrow("formula is Xx2");
    expect(elementShare_frac({ formula: "KCl", atom: "Ca" })).toBe(0);
  });
});

const label: Label = {
  form: "liquid",
  basis: "by mass",
  density_g_mL: 1.2,
  N_frac: 0.06,
  nitrateN_frac: 0.04,
  ammoniumN_frac: 0.02,
  P_frac: 0.07,
  K_frac: 0.08,
  pAs: "oxide",
  kAs: "oxide",
};
const doubtsOf = (change: Partial<Label>) =>
  readLabel({ ...label, ...change }).doubts.map(({ doubt }) => doubt);

describe("a label", () => {
  it("read as it should be raises no doubt", () => {
    const read = readLabel(label);
    expect(read.doubts).toEqual([]);
    expect(read.contents_mg.NO3N).toBeCloseTo(48, 9);
    expect(read.contents_mg.K).toBeCloseTo(79.69, 1);
  });
  it("asks whether K is an oxide, 17 % apart", () => {
    const { kAs: _, ...unsaid } = label;
    const [doubt] = readLabel(unsaid).doubts;
    expect(doubt).toMatchObject({ doubt: "oxide or element", of: "K", firm: true });
    expect(1 - (doubt?.expected_frac ?? 0) / (doubt?.given_frac ?? 1)).toBeCloseTo(0.17, 2);
  });
  it("takes an unknown split as half ammonium and says so", () => {
    const { nitrateN_frac: _, ammoniumN_frac: __, ...unsplit } = label;
    const read = readLabel(unsplit);
    expect(read).toMatchObject({ splitKnown: false, doubts: [{ doubt: "no nitrogen split", firm: false }] });
    expect(read.contents_mg.NH4N).toBeCloseTo(36, 9);
  });
  it("finds a split that is not its total just past the printed rounding", () => {
    expect(doubtsOf({ N_frac: 0.062 })).toEqual([]);
    expect(doubtsOf({ N_frac: 0.0621 })).toEqual(["split is not the total"]);
  });
  it("finds more than there is, a missing density and a missing basis", () => {
    expect(doubtsOf({ K_frac: 0.9 })).toContain("more than all");
    const { density_g_mL: _, basis: __, ...bare } = label;
    expect(readLabel(bare).doubts.map(({ doubt }) => doubt)).toContain("no basis");
    expect(readLabel({ ...bare, basis: "by mass" }).doubts.map(({ doubt }) => doubt)).toEqual(["no density"]);
  });
  it("by volume has its density in it already", () => {
    expect(readLabel({ ...label, basis: "by volume" }).contents_mg.NO3N).toBeCloseTo(40, 9);
  });
  it("is refused beyond its ranges by name", () => {
    expect(() => readLabel({ ...label, N_frac: 1.51 })).toThrow("1.51");
    expect(() => readLabel({ ...label, density_g_mL: 0.69 })).toThrow("0.69");
  });
});

describe("water", () => {
  it("of a usual kind is in balance, and out of it without its alkalinity", () => {
    expect(ionImbalance_frac(usualWater)).toBeLessThan(0.05);
    const { alkalinity_mg_L: _, ...bare } = usualWater;
    expect(ionImbalance_frac(bare)).toBeGreaterThan(0.1);
    expect(ionImbalance_frac({})).toBe(0);
  });
  it("softened has as much charge of sodium as it lost of hardness", () => {
    expect(softenerAdds_mg_L({ hardness_mg_L: 100 })).toBeCloseTo(45.94, 2);
    expect(softenerAdds_mg_L({ hardness_mg_L: 100, salt: "potassium" })).toBeCloseTo(78.1, 1);
    expect(hardnessOf_mg_L(usualWater)).toBeCloseTo(145.2, 0);
  });
  it("blended lies between the two", () => {
    expect(blendedWater({ Ca_mg_L: 80 }, { Ca_mg_L: 20 }, 0.25).Ca_mg_L).toBe(65);
  });
});

describe("what must not meet", () => {
  it("falls out of a stock and not of a feed", () => {
    expect(clashes({ Ca: 200, S: 64, P: 31 })).toEqual([]);
    expect(clashes({ Ca: 20_000, S: 6400, P: 3100 })).toEqual([
      "calcium and sulphate",
      "calcium and phosphate",
    ]);
    expect(clashes({ Ca: 20_000 })).toEqual([]);
    expect(clashes({ P: 3000, Fe: 100 }, { ironChelated: false })).toEqual(["iron and phosphate"]);
    expect(gypsumIndex({ Ca_mmol_L: 15, SO4_mmol_L: 15 })).toBeLessThan(0.05);
  });
});

describe("conductivity", () => {
  it("rises with every ion and is nothing in pure water", () => {
    expect(conductivity_mS_cm({})).toBe(0);
    let before = 0;
    for (const ions of [1, 2, 4, 8]) {
      const here = conductivity_mS_cm({ Mg_mmol_L: ions, SO4_mmol_L: ions });
      expect(here).toBeGreaterThan(before);
      // Pairs make it less than in proportion.
      if (before > 0) expect(here).toBeLessThan(2 * before);
      before = here;
    }
    expect(() => conductivity_mS_cm({ K_mmol_L: 501 })).toThrow("501");
  });
});

describe("a meter that reads something else", () => {
  const asked = {
    expected_mS_cm: 1.4,
    water_mS_cm: 0.3,
    parts: [
      { part: "bottle A", adds_mS_cm: 0.7 },
      { part: "salt C", adds_mS_cm: 0.4 },
    ],
  };
  it("within the band is nothing to ask", () => {
    expect(likelySlips({ ...asked, read_mS_cm: 1.6 })).toEqual([]);
  });
  it("of 2.1 names the bottle that went in twice", () => {
    expect(likelySlips({ ...asked, read_mS_cm: 2.1 })[0]).toMatchObject({
      slip: "one part twice",
      part: "bottle A",
    });
  });
  it("of 1400 is a unit, of 700 a scale", () => {
    expect(likelySlips({ ...asked, read_mS_cm: 1400 })[0]?.slip).toBe("wrong unit");
    expect(likelySlips({ ...asked, read_mS_cm: 0.3 })[0]?.slip).toBe("water only");
    expect(likelySlips({ ...asked, read_mS_cm: 980 })).toContainEqual(
      expect.objectContaining({ slip: "wrong scale", scale: "ppm 700" }),
    );
    expect(meterReading({ conductivity_mS_cm: 1.4, scale: "uS/cm" })).toBe(1400);
  });
});

describe("targets", () => {
  it("lie within their ranges, and each stage can be met from ordinary salts", () => {
    const salts = {
      calcium: { NO3N: 144, NH4N: 11, Ca: 190 },
      nitre: { NO3N: 138, K: 386 },
      phosphate: { P: 227, K: 287 },
      magnesium: { Mg: 98, S: 130 },
    };
    for (const [stage, { of, conductivity_mS_cm: most }] of Object.entries(stageTargets)) {
      const aims = aimed.flatMap((each) => {
        const target = of[each as keyof typeof of];
        return target
          ? [{ of: each, ...target, low_mg_L: target.low_mg_L, high_mg_L: target.high_mg_L, weight: 1 }]
          : [];
      });
      for (const { aim_mg_L, low_mg_L, high_mg_L } of aims) {
        expect(low_mg_L).toBeLessThanOrEqual(aim_mg_L);
        expect(high_mg_L).toBeGreaterThanOrEqual(aim_mg_L);
      }
      const table = bestMix({
        products: Object.entries(salts).map(([id, contents_mg]) => ({
          id,
          contents_mg,
          step: 0.1,
          most_n: 200,
        })),
        volume_L: 10,
        water_mg_L: {},
        aims,
        limits: { conductivity_mS_cm: most },
      });
      expect(isMade(table) && table.chosen.misfit, stage).toBeLessThan(0.05);
      if (isMade(table)) expect(amountOf(table.chosen.amounts_mg_L, "N")).toBeGreaterThan(0);
    }
  });
  it("count the convention of an injector", () => {
    expect(
      thinning({ injectorParts: 15, convention: "one to" }) / thinning({ injectorParts: 15 }),
    ).toBeCloseTo(1.067, 3);
  });
});
