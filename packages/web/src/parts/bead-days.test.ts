import { expect, test } from "vitest";
import { beadsBefore, beadsByDay } from "./bead-days.ts";

const days = [0, 10, 20].map((from_ms) => ({ from_ms, to_ms: from_ms + 10 }));

test("each date lands on its day, the past on today, the far beyond", () => {
  expect(beadsByDay([-5, 3, 10, 19, 20, 30, 99], days)).toEqual({ columns: [2, 2, 1], beyond_n: 2 });
});

test("beads and those beyond are all of them", () => {
  const dates_ms = Array.from({ length: 20 }, (_, i) => i * 2.3);
  const { columns, beyond_n } = beadsByDay(dates_ms, days);
  expect(columns.reduce((sum, count_n) => sum + count_n, beyond_n)).toBe(20);
});

test("a line at midnight counts what lies before it", () => {
  expect(beadsBefore([1, 9, 10, 15], 10)).toBe(2);
});
