import { expect, test } from "vitest";
import { isResumable, resumedAt, stepped, type WalkPlace } from "./walk-place.ts";

const HOUR_ms = 3_600_000;
const place: WalkPlace = {
  bench: "south-sill",
  stops: ["a", "b", "c"],
  at_n: 1,
  startedAt_ms: 0,
  touchedAt_ms: 0,
  done_n: 1,
  closed: false,
};

test("steps stay between the first stop and one past the last", () => {
  expect(stepped(place, -5, 9).at_n).toBe(0);
  expect(stepped(place, 1, 9)).toMatchObject({ at_n: 2, touchedAt_ms: 9 });
  expect(stepped(place, 7, 9).at_n).toBe(3);
});

test("a walk is resumed the same day, at a pot, while it is open", () => {
  expect(isResumable(place, 2 * HOUR_ms)).toBe(true);
  expect(isResumable(place, 24 * HOUR_ms)).toBe(false);
  expect(isResumable({ ...place, closed: true }, HOUR_ms)).toBe(false);
  expect(isResumable({ ...place, at_n: 3 }, HOUR_ms)).toBe(false);
  expect(isResumable(undefined, HOUR_ms)).toBe(false);
});

test("a walk goes on at the next pot that still has work", () => {
  expect(resumedAt(place, (plant) => plant === "c")).toBe(2);
  expect(resumedAt(place, (plant) => plant === "a")).toBe(1);
  expect(resumedAt(place, () => true)).toBe(1);
});
