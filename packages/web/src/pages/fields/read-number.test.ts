import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readNumber } from "./read-number.ts";

describe("readNumber", () => {
  it("reads point, comma, minus and fractions", () => {
    expect(readNumber("12.5")).toBe(12.5);
    expect(readNumber(" 12,5 ")).toBe(12.5);
    expect(readNumber("−3")).toBe(-3);
    expect(readNumber("6½")).toBe(6.5);
    expect(readNumber("¼")).toBe(0.25);
  });
  it("takes nothing that is no number", () => {
    for (const text of ["", " ", ".", "-", "12 cm", "1.2.3", "1e5", "½½"])
      expect(readNumber(text)).toBeUndefined();
  });
  it("never gives NaN or infinity, whatever is typed", () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const value = readNumber(text);
        expect(value === undefined || Number.isFinite(value)).toBe(true);
      }),
    );
  });
});
