import { describe, expect, it } from "vitest";
import { fourFacts, isAnything, isPipe, NOTHING_SAID } from "./facts.ts";

describe("the four facts of the first run", () => {
  it("has no answer before anything was said, and one from the first fact on", () => {
    expect(isAnything(NOTHING_SAID)).toBe(false);
    expect(isAnything({ ...NOTHING_SAID, habit: "unknown" })).toBe(true);
    // A window that faces north stands at 0 degrees and is said all the same.
    expect(isAnything({ ...NOTHING_SAID, place: 0 })).toBe(true);
  });
  it("keeps not sure as unknown and leaves an unknown pot out", () => {
    expect(fourFacts({ ...NOTHING_SAID, potUnknown: true })).toEqual({
      habit: "unknown",
      medium: "unknown",
      place: "unknown",
    });
  });
  it("takes the drawn pot for a guess until somebody touched it", () => {
    expect(fourFacts(NOTHING_SAID).pot).toBeUndefined();
    expect(fourFacts({ ...NOTHING_SAID, potSaid: true }).pot).toEqual({
      form: "round",
      top_cm: NOTHING_SAID.top_cm,
      depth_cm: NOTHING_SAID.depth_cm,
    });
  });
  it("calls 9 across and 90 deep a pipe", () => {
    expect(isPipe({ ...NOTHING_SAID, top_cm: 9, depth_cm: 90 })).toBe(true);
    expect(isPipe(NOTHING_SAID)).toBe(false);
  });
});
