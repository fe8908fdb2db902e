import { expect, test } from "vitest";
import { doubtful, typedVolume_mL } from "./amount-typed.ts";

test("typed digits are mL, or US fluid ounces", () => {
  expect(typedVolume_mL("160", "metric")).toBe(160);
  expect(typedVolume_mL("6.5", "us")).toBe(192);
});

test("nothing, zero and a lone point are no amount", () => {
  for (const text of ["", "0", "."]) expect(typedVolume_mL(text, "metric")).toBeUndefined();
});

test("a digit too many is doubted, and a tenth is what was meant", () => {
  expect(doubtful(900, 470)).toEqual({ most_mL: 470, meant_mL: 90 });
});

test("a pour that runs through is no slip, and an unknown pot is not argued with", () => {
  expect(doubtful(600, 470)).toBeUndefined();
  expect(doubtful(900, undefined)).toBeUndefined();
});
