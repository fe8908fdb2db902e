import { describe, expect, it } from "vitest";
import { appendSpeed } from "./append.ts";
import { oneEntrySpeed } from "./one-entry.ts";
import { etSpeed } from "./reference-et.ts";

/** That the benchmarks run and that what they compare is equal; how long they take is never a test. */
const SMALL = {
  seed: 1,
  plants_n: 12,
  entries_n: 1500,
  spots_n: 12,
  days_n: 60,
  until_ms: Date.UTC(2026, 9, 1, 16),
};

describe("benchmarks", () => {
  it("compute the same reference ET in both ways", () => {
    expect(etSpeed(2000, 1, 1, undefined).apart_mm_d).toBeLessThan(1e-9);
  });
  it("keep every entry that they append", async () => {
    expect((await appendSpeed(2, 1)).kept_n).toBeGreaterThanOrEqual(40);
  });
  it("give after one more entry the pages of a fold from nothing", () => {
    const { pages_n, differing_n } = oneEntrySpeed(SMALL, 2);
    expect(pages_n).toBeGreaterThan(1);
    expect(differing_n).toBe(0);
  });
});
