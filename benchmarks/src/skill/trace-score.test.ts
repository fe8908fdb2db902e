import { describe, expect, it } from "vitest";
import { traceScore } from "./trace-score.ts";

/** 3 px of the finger, 2° of the turn, 2 % of the distance, a lens that bends and looks aside: none of it known to the tracer. */
describe("a trace over two photos", () => {
  const score = traceScore(40, "traces");
  it("finds joints to 4 mm rms and internodes to 1.5 mm or 6 %", () => {
    expect(score.position_mm).toBeLessThan(4);
    expect(score.internode_mm).toBeLessThan(1.5);
  });
  it("keeps the order of branches", () => {
    expect(score.isOrderExact).toBe(true);
    expect(score.joints_n).toBeGreaterThan(500);
  });
});
