import { expect, test } from "vitest";
import { chanceOf } from "./chance.ts";

const many = (draw: () => number, n = 40_000) => Array.from({ length: n }, draw);
const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
const sd = (values: readonly number[]) => {
  const middle = mean(values);
  return Math.sqrt(mean(values.map((value) => (value - middle) ** 2)));
};

test("the same seed draws the same, another seed does not, and one more draw in one stream changes no other", () => {
  const draws = (seed: number) => many(chanceOf(seed).uniform, 5);
  expect(draws(1)).toEqual(draws(1));
  expect(draws(1)).not.toEqual(draws(2));
  const chance = chanceOf(1);
  const before = chanceOf(1).under("a").uniform();
  chance.uniform();
  expect(chance.under("a").uniform()).toBe(before);
  expect(chance.under("b").uniform()).not.toBe(before);
});

test("draws have the moments they claim", () => {
  const chance = chanceOf("moments");
  const uniform = many(chance.uniform);
  expect(mean(uniform)).toBeCloseTo(0.5, 2);
  expect(sd(uniform)).toBeCloseTo(Math.sqrt(1 / 12), 2);
  const normal = many(() => chance.normal(3, 2));
  expect(mean(normal)).toBeCloseTo(3, 1);
  expect(sd(normal)).toBeCloseTo(2, 1);
  expect(mean(many(() => chance.whole(1, 6)))).toBeCloseTo(3.5, 1);
});

test("heavy tails are heavy: far more draws beyond four sd than a normal has", () => {
  const chance = chanceOf("tails");
  const far = many(() => chance.heavyTailed(4), 100_000).filter((value) => Math.abs(value) > 4).length;
  expect(far).toBeGreaterThan(200);
  expect(far).toBeLessThan(1500);
});
