import { catalogue } from "@sillwood/science/catalogue";
import { describe, expect, it } from "vitest";
import { findSums, readNumbers, reckon } from "./reckon.ts";
import { sumName } from "./sum-name.ts";

const sum = (name: string) => {
  const found = catalogue.find((one) => one.name === name);
  if (!found) throw new Error(`no sum ${name}`);
  return found;
};

describe("reckon", () => {
  it("gives what the function gives, measured when all that went in was", () => {
    const out = reckon(sum("saturationVapourPressure_kPa"), {
      air_C: { value: 20, origin: "measured", from: "" },
    });
    expect(out).toMatchObject({ origin: "measured" });
    expect("fields" in out && out.fields[0]?.value).toBeCloseTo(2.338, 3);
  });
  it("takes the usual for what is left empty, and says that it did", () => {
    for (const each of catalogue) {
      const out = reckon(each, {});
      expect(out, each.name).toHaveProperty("fields");
      if (each.inputs.some(({ optional }) => !optional)) expect(out).toMatchObject({ origin: "assumed" });
    }
  });
  it("refuses what is out of range by field, value, limit and unit", () => {
    const out = reckon(sum("saturationVapourPressure_kPa"), {
      air_C: { value: 95, origin: "measured", from: "" },
    });
    expect(out).toMatchObject({ field: "air_C" });
    expect("problem" in out && out.problem).toMatch(/95.*-40 to 60.*°C/);
  });
});

describe("finding and reading", () => {
  it("finds by words of the sum and of what goes in", () => {
    expect(findSums(catalogue, "dew point").map(({ name }) => name)).toContain("dewPoint_C");
    expect(findSums(catalogue, "no such words at all")).toEqual([]);
    const german = (name: string) => sumName(name, "de");
    expect(findSums(catalogue, "taupunkt", german).map(({ name }) => name)).toContain("dewPoint_C");
  });
  it("reads lists with semicolons, spaces and commas", () => {
    expect(readNumbers("1; 2.5 3")).toEqual([1, 2.5, 3]);
    expect(readNumbers("0.1, 0.4")).toEqual([0.1, 0.4]);
    expect(readNumbers("one")).toBeUndefined();
  });
});
