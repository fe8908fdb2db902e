import { describe, expect, it } from "vitest";
import { fromLocal_ms, instantOf, localDate, localTime } from "./when.ts";

const BERLIN = "Europe/Berlin";
const noon_ms = Date.UTC(2026, 0, 14, 11);

describe("when something happened", () => {
  it("now is left to the clock", () => {
    expect(instantOf({ choice: "now", date: "", time: "" }, noon_ms, BERLIN)).toBeUndefined();
  });
  it("this morning is eight o'clock, and just now before eight", () => {
    expect(instantOf({ choice: "this morning", date: "", time: "" }, noon_ms, BERLIN)).toBe(
      Date.UTC(2026, 0, 14, 7),
    );
    expect(
      instantOf({ choice: "this morning", date: "", time: "" }, Date.UTC(2026, 0, 14, 6), BERLIN),
    ).toBeUndefined();
  });
  it("yesterday is the day before on the writer's own calendar", () => {
    // Half past midnight in Berlin is still the day before in UTC.
    const late_ms = Date.UTC(2026, 0, 13, 23, 30);
    expect(instantOf({ choice: "yesterday", date: "", time: "" }, late_ms, BERLIN)).toBe(
      Date.UTC(2026, 0, 13, 7),
    );
  });
  it("refuses what lies ahead and what is no date", () => {
    expect(instantOf({ choice: "other", date: "2026-01-15", time: "08:00" }, noon_ms, BERLIN)).toBeNull();
    expect(instantOf({ choice: "other", date: "", time: "" }, noon_ms, BERLIN)).toBeNull();
  });
  it("comes back to the clock it was read from, also on days of 23 and 25 hours", () => {
    for (const [date, time] of [
      ["2026-03-29", "01:30"],
      ["2026-03-29", "03:30"],
      ["2026-10-25", "02:30"],
      ["2026-07-01", "00:00"],
    ] as const) {
      const at_ms = fromLocal_ms(date, time, BERLIN) as number;
      expect([localDate(at_ms, BERLIN), localTime(at_ms, BERLIN)]).toEqual([date, time]);
    }
  });
  it("takes the earlier of two and, of an hour that is skipped, the hour after", () => {
    expect(fromLocal_ms("2026-10-25", "02:30", BERLIN)).toBe(Date.UTC(2026, 9, 25, 0, 30));
    expect(localTime(fromLocal_ms("2026-03-29", "02:30", BERLIN) as number, BERLIN)).toBe("03:30");
  });
});
