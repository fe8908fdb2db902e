import { expect, test } from "vitest";
import { lettersLaid } from "./event-letters.ts";

test("letters apart stay on the line", () => {
  expect(
    lettersLaid(
      [
        { x: 40, letter: "g" },
        { x: 0, letter: "w" },
      ],
      12,
    ),
  ).toEqual([
    { x: 0, letter: "w", row_n: 0 },
    { x: 40, letter: "g", row_n: 0 },
  ]);
});

test("a letter that would lie on another goes up, the same one is said once", () => {
  const events = [
    { x: 10, letter: "w" },
    { x: 12, letter: "g" },
    { x: 13, letter: "w" },
    { x: 15, letter: "l" },
    { x: 26, letter: "w" },
  ];
  expect(lettersLaid(events, 12).map(({ letter, row_n }) => [letter, row_n])).toEqual([
    ["w", 0],
    ["g", 1],
    ["l", 2],
    ["w", 0],
  ]);
});

test("whatever comes, no two letters of a row are nearer than their width", () => {
  const events = Array.from({ length: 60 }, (_, i) => ({ x: (i * 37) % 101, letter: "wgl"[i % 3] ?? "w" }));
  const laid = lettersLaid(events, 12);
  for (const a of laid)
    for (const b of laid)
      if (a !== b && a.row_n === b.row_n) expect(Math.abs(a.x - b.x)).toBeGreaterThanOrEqual(12);
  expect(Math.max(...laid.map(({ row_n }) => row_n))).toBeLessThanOrEqual(2);
});
