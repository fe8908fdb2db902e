import { expect, test } from "vitest";
import { isOutside, typedWeight_g, typeOn } from "./weight-typed.ts";

test("grams as typed, ounces turned into grams", () => {
  expect(typedWeight_g("412", "metric")).toBe(412);
  expect(typedWeight_g("14.5", "us")).toBe(411.1);
  expect(typedWeight_g("0,5", "metric")).toBe(0.5);
});

test("nothing, zero and letters are no weight", () => {
  for (const text of ["", "0", "."]) expect(typedWeight_g(text, "metric")).toBeUndefined();
});

test("a scale that types point and digits builds one number", () => {
  expect([..."412.5"].reduce(typeOn, "")).toBe("412.5");
  expect([...".5"].reduce(typeOn, "")).toBe("0.5");
  expect([..."4.1.2"].reduce(typeOn, "")).toBe("4.12");
  expect(typeOn("1234567", "8")).toBe("1234567");
});

test("both ends of the band belong to it", () => {
  const band = { low_g: 395, high_g: 450 };
  expect([394, 395, 450, 451].map((weight_g) => isOutside(weight_g, band))).toEqual([
    true,
    false,
    false,
    true,
  ]);
});
