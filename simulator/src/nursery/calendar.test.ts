import { expect, test } from "vitest";
import { dateAt, dayAfter, dayOfYear_d, HOUR_ms, instantOf, localDays } from "./calendar.ts";

const ZONE = "America/Los_Angeles";

test("days are 23 and 25 hours long when the clocks change", () => {
  const hours = (from: string) => {
    const [a, b] = localDays(ZONE, from, 2);
    return ((b?.midnight_ms ?? 0) - (a?.midnight_ms ?? 0)) / HOUR_ms;
  };
  expect(hours("2026-03-08")).toBe(23);
  expect(hours("2026-11-01")).toBe(25);
  expect(hours("2026-07-01")).toBe(24);
});

test("an instant and the clock on the wall say the same", () => {
  const at_ms = instantOf(ZONE, "2026-01-14", 7.5);
  expect(new Date(at_ms).toISOString()).toBe("2026-01-14T15:30:00.000Z");
  expect(dateAt(ZONE, at_ms)).toBe("2026-01-14");
  expect(dateAt(ZONE, Date.UTC(2026, 0, 14, 7))).toBe("2026-01-13");
});

test("dates count through a leap day", () => {
  expect(dayAfter("2028-02-28", 1)).toBe("2028-02-29");
  expect(dayOfYear_d("2028-12-31")).toBe(366);
  expect(dayOfYear_d("2026-03-01")).toBe(60);
});
