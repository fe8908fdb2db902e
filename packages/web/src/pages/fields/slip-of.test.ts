import { describe, expect, it } from "vitest";
import { slipOf } from "./slip-of.ts";

const air = { min: -40, max: 60, unit: "°C" };

describe("slipOf", () => {
  it("takes 95 for degrees Fahrenheit", () => {
    const slip = slipOf(95, air, "metric");
    expect(slip?.why).toBe("fahrenheit");
    expect(slip?.value).toBeCloseTo(35, 9);
  });
  it("takes a digit too many for one", () => {
    expect(slipOf(90, { min: 2, max: 60, unit: "cm" }, "metric")).toEqual({ value: 9, why: "digit" });
  });
  it("takes 55 for per cent where a share is wanted", () => {
    expect(slipOf(55, { min: 0, max: 1, unit: "" }, "metric")).toEqual({ value: 0.55, why: "percent" });
  });
  it("has nothing to say of a value in range, or of one that nothing explains", () => {
    expect(slipOf(20, air, "metric")).toBeUndefined();
    expect(slipOf(100_000, { min: 2, max: 60, unit: "cm" }, "metric")).toBeUndefined();
  });
});
