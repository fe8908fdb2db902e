import type { Fan } from "@sillwood/bench/crafts";
import { expect, test } from "vitest";
import { fanShown } from "./fan-shown.ts";

const G_PER_OZ = 28.349523125;
const chart: Fan = {
  name: "water left",
  unit: "g",
  past: [{ at_ms: 1, value: G_PER_OZ }],
  ahead: [{ at_ms: 2, p10: 0, p25: G_PER_OZ, p50: 2 * G_PER_OZ, p75: 3 * G_PER_OZ, p90: 4 * G_PER_OZ }],
  threshold: { value: 5 * G_PER_OZ, said: "water here" },
  events: [{ at_ms: 1, letter: "W", said: "watered" }],
  origin: "learned",
};

test("a chart of grams is read in ounces, its threshold with it", () => {
  const shown = fanShown(chart, "us");
  expect(shown.unit).toBe("oz");
  expect(shown.past[0]?.value).toBeCloseTo(1, 9);
  expect(shown.ahead[0]).toEqual({ at_ms: 2, p10: 0, p25: 1, p50: 2, p75: 3, p90: 4 });
  expect(shown.threshold).toEqual({ value: 5, said: "water here" });
  expect(shown.events).toEqual(chart.events);
});

test("in metric units it stays as it is", () => {
  expect(fanShown(chart, "metric")).toEqual({ ...chart, digits_n: 0 });
});
