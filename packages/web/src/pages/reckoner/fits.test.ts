import { crafts } from "@sillwood/bench/crafts";
import { createLedger } from "@sillwood/bench/house";
import { assumedSite } from "@sillwood/bench/pages";
import { catalogue } from "@sillwood/science/catalogue";
import { expect, test } from "vitest";
import { isWritable, kindShape } from "../answers/form-shapes.ts";
import { filledFrom, fitsOf, pathOf } from "./fits.ts";
import { sumName } from "./sum-name.ts";
import { sumNamesGerman } from "./sum-names.de.ts";

const ledger = createLedger({ crafts, site: assumedSite("UTC", { language: "en", units: "metric" }) });
const kinds = ledger.kinds.all.map(kindShape).filter(isWritable);
const said = (unit: string, value: number) =>
  fitsOf([{ name: "x", unit, value }], kinds).map(({ kind, field }) => `${kind} ${field.key}`);

test("a result belongs where its unit is counted and its size fits", () => {
  expect(said("g", 182.34)).toContain("watering.watered volume_mL");
  expect(said("g", 182.34)).toContain("watering.weighed weight_g");
  expect(said("mol m⁻² d⁻¹", 12)).toContain("bench.lit dli_mol_m2_d");
  expect(said("°C", 21)).toContain("bench.air dayAir_C");
  expect(said("°C", 900)).toEqual([]);
  expect(said("kPa", 2)).toEqual([]);
  expect(said("", 0.5)).toEqual([]);
});

test("the way to the entry carries the plant and the value, and the form takes only what is a value of its field", () => {
  const fit = fitsOf([{ name: "pour_g", unit: "g", value: 182.345 }], kinds).find(
    ({ field }) => field.key === "volume_mL",
  );
  if (!fit) throw new Error("a pour fits a watering");
  const path = pathOf(fit, "p1");
  expect(path).toBe("/write/watering.watered/p1?volume_mL=182.3");
  expect(pathOf(fit, undefined)).toBe("/write/watering.watered?volume_mL=182.3");
  const fields = kinds.find(({ kind }) => kind === fit.kind)?.fields ?? [];
  const search = (text: string) => filledFrom(new URLSearchParams(text), fields);
  expect(search(path.split("?")[1] ?? "")).toEqual({ volume_mL: 182.3 });
  expect(search("volume_mL=-5")).toEqual({});
  expect(search("volume_mL=none&other=3")).toEqual({});
});

test("every German name is of a sum that is there, and no two sums share one", () => {
  const names = new Set(catalogue.map(({ name }) => name));
  expect(Object.keys(sumNamesGerman).filter((name) => !names.has(name))).toEqual([]);
  const all = Object.values(sumNamesGerman);
  expect(new Set(all).size).toBe(all.length);
});

test("the sums of air, water, chance and units are all named in German", () => {
  const unnamed = catalogue.filter(
    ({ field, name }) =>
      ["air", "water", "chance", "units"].includes(field) && sumNamesGerman[name] === undefined,
  );
  expect(unnamed.map(({ name }) => name)).toEqual([]);
  expect(sumName("dewPoint_C", "de")).toBe("Taupunkt");
  expect(sumName("dewPoint_C")).toBe("dew point");
});
