import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { potOf } from "./pot-text.ts";
import { readNumber } from "./read-number.ts";
import { slipOf } from "./slip.ts";

const value = (text: string, suffix: string, units: "metric" | "us" | "own" = "metric") => {
  const read = readNumber(text, suffix, units);
  return "value" in read ? read.value : read.wrong;
};

describe("numbers as people type them", () => {
  it("takes units of the same kind and keeps the unit of the field", () => {
    expect(value("6.5floz", "mL")).toBeCloseTo(192.2279, 4);
    expect(value("180 mL", "mL")).toBe(180);
    expect(value("0.2L", "mL")).toBe(200);
    expect(value("70F", "C")).toBeCloseTo(21.1111, 4);
    expect(value("5in", "cm")).toBeCloseTo(12.7, 10);
    expect(value("5in", "mm")).toBeCloseTo(127, 10);
    expect(value("45%", "frac")).toBe(0.45);
    expect(value("1h", "min")).toBeCloseTo(60, 10);
    expect(value("2lb", "g")).toBeCloseTo(907.18474, 5);
  });

  it("reads a bare number in the units asked for, unless the unit stood in the key", () => {
    expect(value("6", "mL")).toBe(6);
    expect(value("6", "mL", "us")).toBeCloseTo(177.4412, 4);
    expect(value("6", "mL", "own")).toBe(6);
    expect(value("70", "C", "us")).toBeCloseTo(21.1111, 4);
    expect(value("0.4", "frac", "us")).toBe(0.4);
  });

  it("reads commas, true minus and written fractions, and asks where a comma has two meanings", () => {
    expect(value("1,5", "L")).toBe(1.5);
    expect(value("−3", "C")).toBe(-3);
    expect(value("7½", "cm")).toBe(7.5);
    expect(value("½", "cm")).toBe(0.5);
    expect(value("1,200", "mL")).toBe("could be 1200 or 1.2; expected one of them, written without a comma");
  });

  it("names what fits when the unit does not", () => {
    expect(value("7oz", "C")).toBe('is in "oz"; expected °C, °F or K');
    expect(value("7 plants", "n")).toContain("expected a number without a unit");
    expect(value("much", "mL")).toBe("is no number");
  });

  it("gives a finite number or a reason for any text, and never hangs", () => {
    fc.assert(
      fc.property(fc.string(), fc.constantFrom("mL", "C", "frac", "n", "", "x_per_y"), (text, suffix) => {
        const read = readNumber(text, suffix, "us");
        if ("value" in read) expect(Number.isFinite(read.value)).toBe(true);
        else expect(read.wrong.length).toBeGreaterThan(5);
      }),
      { seed: 5 },
    );
  });
});

it("offers the likely slip: another scale, a digit too many, per cent, a sign", () => {
  const range = (min: number, max: number, suffix: string) => ({ min, max, suffix });
  expect(slipOf(70, range(-10, 50, "C"))).toBeCloseTo(21.11, 2);
  expect(slipOf(90, range(2, 60, "cm"))).toBe(9);
  expect(slipOf(45, range(0, 1, "frac"))).toBe(0.45);
  expect(slipOf(-5, range(0, 100, "mL"))).toBe(5);
  expect(slipOf(50, range(0, 100, "mL"))).toBeUndefined();
});

it("reads pots by their measures in any unit", () => {
  expect(potOf("12x9", "metric")).toEqual({ pot: { form: "round", top_cm: 12, depth_cm: 9 } });
  expect(potOf("oval 18 x 12 x 6", "metric")).toEqual({
    pot: { form: "oval", length_cm: 18, width_cm: 12, depth_cm: 6 },
  });
  expect(potOf("20x10x6", "metric")).toMatchObject({ pot: { form: "rectangular" } });
  const inches = potOf("5x4", "us");
  expect("pot" in inches && inches.pot["top_cm"]).toBeCloseTo(12.7, 10);
  expect(potOf("12", "metric")).toMatchObject({ wrong: expect.stringContaining("expected 12x9") });
  expect(potOf("12xdeep", "metric")).toMatchObject({ wrong: expect.stringContaining("is no number") });
});
