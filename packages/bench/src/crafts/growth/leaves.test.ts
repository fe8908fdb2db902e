import { describe, expect, it } from "vitest";
import { checkData } from "../../book/index.ts";
import { sayFor } from "../../words/index.ts";
import { growthKinds, LEAVES } from "./kinds.ts";
import { bed, FIRST_DATE } from "./test-kit.ts";

const say = sayFor({ language: "en", units: "metric", zone: "UTC", nameOf: (id) => id });

const rel = (plant: ReturnType<typeof bed>, day: number) => {
  const { value, sd } = plant.read(day, "leafArea_m2");
  return sd / value;
};

describe("leaf area", () => {
  it("is left to the usual where growth knows no better", () => {
    const plant = bed();
    const { origin, from } = plant.read(30, "leafArea_m2");
    expect(origin).toBe("assumed");
    expect(from(say)).toContain("usual");
    expect(plant.outlook(30).figures["leafAreaFrom"]).toBe("usual");
  });

  it("is that of a few leaves measured and all counted: 0.63 × length × width (Salau et al. 2008)", () => {
    const plant = bed();
    plant.write(3, "growth.leaves", { leaves_n: 100, lengths_cm: [6, 7], widths_cm: [3, 3.5] });
    const area = plant.read(3, "leafArea_m2");
    expect(area.value).toBeCloseTo(0.1339, 4);
    expect(area.origin).toBe("measured");
    const flat = bed();
    flat.write(3, "growth.leaves", { leaves_n: 100, leafLength_cm: 6.5, leafWidth_cm: 3.25, measured_n: 2 });
    expect(flat.read(3, "leafArea_m2").value).toBeCloseTo(0.1331, 4);
    const counted = bed();
    counted.write(3, "plant.measured", { leaves_n: 100, leafLength_cm: 6.5, leafWidth_cm: 3.25 });
    expect(counted.read(3, "leafArea_m2").value).toBeCloseTo(0.1331, 4);
    counted.write(4, "plant.measured", { leafLength_cm: 13, leafWidth_cm: 6.5 });
    expect(counted.read(4, "leafArea_m2").value).toBeGreaterThan(0.1331 * 3.9);
  });

  it("grows by light and warmth towards what pot and kind allow, smoothly, and is doubted more from day to day", () => {
    const plant = bed();
    plant.write(1, "plant.measured", { leaves_n: 30, leafLength_cm: 5 });
    let before = plant.read(1, "leafArea_m2").value;
    for (let day = 2; day < 60; day += 2) {
      const { value } = plant.read(day, "leafArea_m2");
      expect(value).toBeGreaterThanOrEqual(before);
      before = value;
    }
    expect(before).toBeLessThanOrEqual(plant.growing(60).leaves.most_m2);
    expect(rel(plant, 30)).toBeGreaterThan(rel(plant, 5));
    expect(rel(plant, 5)).toBeGreaterThan(rel(plant, 1.01));
    const dark = bed({}, { dli_mol_m2_d: 2 });
    dark.write(1, "plant.measured", { leaves_n: 30, leafLength_cm: 5 });
    expect(dark.read(30, "leafArea_m2").value).toBeLessThan(plant.read(30, "leafArea_m2").value);
  });

  it("comes out of seed, stays under the usual while it is young, and is left to it afterwards", () => {
    const plant = bed({ sownOn: FIRST_DATE });
    expect(plant.read(5, "leafArea_m2").value).toBe(0);
    const young = plant.read(30, "leafArea_m2");
    expect(young.value).toBeGreaterThan(0);
    expect(young.value).toBeLessThan(0.01);
    expect(plant.read(150, "leafArea_m2").from(say)).toContain("usual");
  });

  it("is what a cut left, also of a plant that nobody counted", () => {
    const plant = bed();
    const usual = plant.read(1, "leafArea_m2").value;
    plant.write(2, "shears.used", { kept_frac: 0.6, what: "cut" });
    expect(plant.read(2, "leafArea_m2").value).toBeCloseTo(0.6 * usual, 6);
    expect(plant.read(40, "leafArea_m2").value).toBeGreaterThan(0.7 * usual);
  });

  it("is put out of bare wood after a rest", () => {
    const plant = bed();
    plant.write(2, "shears.used", { kept_frac: 0, what: "cut" });
    expect(plant.growing(5).leafArea_m2).toBe(0);
    expect(plant.growing(30).leafArea_m2).toBeGreaterThan(0);
    expect(Number.isFinite(plant.growing(200).leafArea_m2)).toBe(true);
  });
});

describe("an entry of leaves", () => {
  const kind = growthKinds.find((each) => each.kind === LEAVES);
  const problems = (data: unknown) => (kind ? checkData(kind, data).map(({ message }) => message) : []);

  it("is refused with the field, the limit and the unit", () => {
    expect(problems({ leaves_n: 10, leafLength_cm: 6, leafWidth_cm: 3 })).toEqual([]);
    expect(problems({ leaves_n: 10, lengths_cm: [6], widths_cm: [3, 4] })[0]).toContain(
      "one width for each length",
    );
    expect(problems({ leaves_n: 1, lengths_cm: [6, 6], widths_cm: [3, 3] })[0]).toContain(
      "more leaves were measured",
    );
    expect(problems({ leaves_n: 10, leafLength_cm: 3, leafWidth_cm: 6 })[0]).toContain(
      "wider than 1.2 times",
    );
    expect(problems({ leaves_n: 10 })[0]).toContain("either lengths and widths");
    expect(problems({ leaves_n: 10, lengths_cm: [600], widths_cm: [3] })[0]).toContain(
      "expected 0.3 to 40 cm",
    );
  });
});

describe("nodes", () => {
  it("are counted, and made since by warmth: one in 2.9 days at 21 °C and more (DSSAT 4.8 pepper)", () => {
    const plant = bed();
    expect(plant.outlook(5).figures["nodes_n"]).toBeUndefined();
    plant.write(1, "growth.nodes", { nodes_n: 8 });
    expect(plant.read(1, "nodes_n")).toMatchObject({ value: 8, origin: "measured" });
    expect(plant.read(30, "nodes_n").value).toBeCloseTo(8 + 29 * 0.35, 1);
    plant.write(31, "growth.staged", { stage: "in fruit" });
    const made = plant.read(61, "nodes_n").value - plant.read(31, "nodes_n").value;
    expect(made).toBeLessThan(30 * 0.35 * 0.8);
  });
});

describe("the question", () => {
  it("is a look where nobody knows whether it bears, and stops once that was seen", () => {
    const plant = bed({ pot: { form: "round", top_cm: 24, depth_cm: 20 } });
    const asked = plant.outlook(2).question;
    expect(asked?.work).toBe("look");
    plant.write(3, "growth.staged", { stage: "in leaf" });
    plant.write(3, "plant.measured", { leaves_n: 120, leafLength_cm: 6 });
    expect(plant.outlook(4).question).toBeUndefined();
  });
});
