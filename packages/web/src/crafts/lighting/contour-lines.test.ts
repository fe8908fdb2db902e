import { expect, test } from "vitest";
import { heightLines } from "./contour-lines.ts";

const slope = {
  along_m: [-1, 0, 1],
  fromGlass_m: [0, 0.5, 1],
  values: [
    [12, 12, 12],
    [8, 8, 8],
    [4, 4, 4],
  ],
};

test("light that falls evenly into the room has level lines, one a level, each across the whole bench", () => {
  const lines = heightLines(slope, [6, 10]);
  expect(lines.map(({ level }) => level)).toEqual([6, 10]);
  for (const { level, places } of lines) {
    expect(places).toHaveLength(3);
    for (const { fromGlass_m } of places) expect(fromGlass_m).toBeCloseTo((12 - level) / 8, 12);
    const ends = [places[0]?.along_m, places.at(-1)?.along_m].sort((a = 0, b = 0) => a - b);
    expect(ends).toEqual([-1, 1]);
  }
});

test("a level that nothing reaches has no line", () => {
  expect(heightLines(slope, [13])).toEqual([]);
});

test("a bright spot under a lamp is ringed by one closed line", () => {
  const hill = {
    along_m: [0, 1, 2, 3, 4],
    fromGlass_m: [0, 1, 2, 3, 4],
    values: [0, 1, 2, 3, 4].map((y) => [0, 1, 2, 3, 4].map((x) => 10 - Math.hypot(x - 2, y - 2) * 4)),
  };
  const [ring, ...others] = heightLines(hill, [5]);
  expect(others).toEqual([]);
  expect(ring?.places[0]).toEqual(ring?.places.at(-1));
  expect(ring?.places.length).toBeGreaterThan(7);
});

test("two hills that share a saddle keep their lines apart", () => {
  const saddle = {
    along_m: [0, 1],
    fromGlass_m: [0, 1],
    values: [
      [10, 0],
      [0, 10],
    ],
  };
  const lines = heightLines(saddle, [6]);
  expect(lines).toHaveLength(2);
  for (const { places } of lines) expect(places).toHaveLength(2);
});
