import { expect, test } from "vitest";
import { DROPPED_ms, isDropped, pageChanged } from "./guard.ts";

test("touches within a quarter of a second of a page change are dropped, later ones count", () => {
  pageChanged(1000);
  expect(isDropped(1000 + DROPPED_ms - 1)).toBe(true);
  expect(isDropped(1000 + DROPPED_ms)).toBe(false);
});
