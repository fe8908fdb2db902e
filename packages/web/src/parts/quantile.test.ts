import { expect, test } from "vitest";
import { quantile } from "./quantile.ts";

const twenty = Array.from({ length: 20 }, (_, i) => i * 10);

test("the middle of twenty lies between the tenth and the eleventh", () => {
  expect(quantile(twenty, 0.5)).toBe(95);
});

test("8 in 10 leaves two beads on either side", () => {
  expect(quantile(twenty, 0.1)).toBe(15);
  expect(quantile(twenty, 0.9)).toBe(175);
});

test("ends never run over, nothing gives nothing", () => {
  expect(quantile(twenty, 0)).toBe(0);
  expect(quantile(twenty, 1)).toBe(190);
  expect(quantile([], 0.5)).toBeNaN();
});
