import { describe, expect, it } from "vitest";
import { QuantityError } from "../errors/index.ts";
import {
  canonicalSymbol,
  canonicalUnit,
  decimalDegrees_deg,
  findUnit,
  fromCanonical,
  radians_rad,
  toCanonical,
  unitTable,
} from "./index.ts";

describe("units", () => {
  it("come back from every unit unchanged", () => {
    for (const row of unitTable) {
      for (const value of [-12.5, 0, 0.1, 4, 731]) {
        const there = toCanonical({ value, kind: row.kind, unit: row.symbol });
        expect(fromCanonical({ value: there, kind: row.kind, unit: row.symbol })).toBeCloseTo(value, 9);
      }
    }
  });
  it("have one row per kind and spelling", () => {
    const seen = unitTable.flatMap((row) => [row.symbol, ...row.also].map((name) => `${row.kind} ${name}`));
    expect(new Set(seen).size).toBe(seen.length);
  });
  it("keep the canonical unit at factor one", () => {
    for (const [kind, symbol] of Object.entries(canonicalSymbol)) {
      const row = unitTable.find((each) => each.kind === kind && each.symbol === symbol);
      expect(row).toMatchObject({ factor: 1, offset: 0 });
    }
    expect(canonicalUnit("pressure")).toBe("kPa");
  });
  it("know the fixed points of the temperature scales", () => {
    expect(toCanonical({ value: 32, kind: "temperature", unit: "F" })).toBe(0);
    expect(toCanonical({ value: 212, kind: "temperature", unit: "°F" })).toBeCloseTo(100, 12);
    expect(toCanonical({ value: -40, kind: "temperature", unit: "°F" })).toBeCloseTo(-40, 12);
    expect(toCanonical({ value: 0, kind: "temperature", unit: "K" })).toBe(-273.15);
  });
  it("keep US and imperial measures apart", () => {
    expect(toCanonical({ value: 1, kind: "volume", unit: "US gal" })).toBeCloseTo(3785.411784, 9);
    expect(toCanonical({ value: 1, kind: "volume", unit: "imp gal" })).toBe(4546.09);
    expect(toCanonical({ value: 3, kind: "volume", unit: "tsp" })).toBeCloseTo(
      toCanonical({ value: 1, kind: "volume", unit: "tbsp" }),
      12,
    );
    expect(toCanonical({ value: 16, kind: "mass", unit: "oz" })).toBeCloseTo(453.59237, 10);
  });
  it("tell a pot's inch from an inch of rain", () => {
    expect(toCanonical({ value: 1, kind: "length", unit: "in" })).toBe(2.54);
    expect(toCanonical({ value: 1, kind: "depth", unit: "in" })).toBe(25.4);
  });
  it("name the known units when one is not understood", () => {
    expect(() => toCanonical({ value: 1, kind: "mass", unit: "stone" })).toThrow(
      "expected one of g, kg, mg, oz, lb",
    );
    expect(() => toCanonical({ value: Number.NaN, kind: "mass", unit: "g" })).toThrow(QuantityError);
    expect(findUnit("mass", "KG")?.symbol).toBe("kg");
    expect(findUnit("mass", "mL")).toBeUndefined();
  });
  it("read angles", () => {
    expect(decimalDegrees_deg({ degrees_deg: 13, minutes_n: 44, northOrEast: true })).toBeCloseTo(13.7333, 4);
    expect(decimalDegrees_deg({ degrees_deg: 0, minutes_n: 30, northOrEast: false })).toBe(-0.5);
    expect(radians_rad(-90)).toBeCloseTo(-Math.PI / 2, 15);
    expect(() => radians_rad(361)).toThrow(QuantityError);
  });
});
