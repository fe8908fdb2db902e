import type { PlantPage } from "@sillwood/bench/round";
import { expect, test } from "vitest";
import { movedTimes, nextTimes } from "./moves.ts";

const DAY_ms = 86_400_000;
const page = (days: readonly number[], said: string): Pick<PlantPage, "lines" | "tasks"> =>
  ({
    lines: [
      { craft: "watering", line: { said, dates_ms: days.map((day) => day * DAY_ms), origin: "learned" } },
      { craft: "growth", line: { said: "", dates_ms: [], origin: "assumed" } },
    ],
    tasks: [{ craft: "watering", title: "WATER" }],
  }) as unknown as Pick<PlantPage, "lines" | "tasks">;
const times = (days: readonly number[], said: string) =>
  nextTimes(page(days, said), (at_ms) => `day ${at_ms / DAY_ms}`);

test("what comes on another day is said with both", () => {
  const moved = movedTimes(times([2, 3, 4], "Thu (We to Fr)"), times([3, 4, 5], "Fri (Th to Sa)"));
  expect(moved.map(({ was, now }) => [now.title, was.said, now.said])).toEqual([
    ["water", "Thu (We to Fr)", "Fri (Th to Sa)"],
  ]);
});

test("nothing has moved while the day stays, whatever its range", () => {
  expect(movedTimes(times([2, 3, 4], "Thu (We to Fr)"), times([1, 3, 6], "Thu (Tu to Su)"))).toEqual([]);
  expect(movedTimes(times([40, 41, 42], "later"), times([43, 44, 45], "later"))).toEqual([]);
  expect(movedTimes([], times([2, 3, 4], "Thu"))).toEqual([]);
});
