import { describe, expect, it } from "vitest";
import { addDays, calendarOf, dayNumber } from "./time.ts";

/** Zones and days at which clocks are changed in unusual ways: at midnight, by half an hour, by a whole day, off and on within weeks. */
const UNUSUAL = [
  ["Africa/Casablanca", "2026-02-01", 60],
  ["Africa/Cairo", "2010-08-01", 70],
  ["America/Sao_Paulo", "2018-10-20", 30],
  ["Australia/Lord_Howe", "2026-03-25", 30],
  ["Pacific/Apia", "2011-12-15", 30],
  ["Europe/London", "2026-10-10", 30],
] as const;

describe("the calendar of a zone", () => {
  it.each(UNUSUAL)("%s: days from %s on begin where Temporal says", (zone, first, days_n) => {
    const calendar = calendarOf(zone);
    for (let i = 0; i < days_n; i++) {
      const date = addDays(first, i);
      const at_ms = Temporal.PlainDate.from(date).toZonedDateTime({ timeZone: zone }).epochMilliseconds;
      expect(calendar.midnight_ms(date), date).toBe(at_ms);
    }
  });

  it("counts days across leap days and back", () => {
    expect(addDays("2028-02-28", 1)).toBe("2028-02-29");
    expect(addDays("2027-02-28", 1)).toBe("2027-03-01");
    expect(addDays("2027-03-01", -1)).toBe("2027-02-28");
    expect(dayNumber("1970-01-01")).toBe(0);
    expect(dayNumber("1969-12-31")).toBe(-1);
  });
});
