import { calendarOf } from "@sillwood/bench/places";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { instantOf } from "./when.ts";

// A Thursday, 10:00 in Berlin.
const now_ms = Date.parse("2026-03-12T09:00:00Z");
const read = (text: string) => {
  const at_ms = instantOf(text, calendarOf("Europe/Berlin"), now_ms);
  return at_ms === undefined ? undefined : new Date(at_ms).toISOString();
};

describe("instants as people type them", () => {
  it("reads dates with and without zone on the local calendar", () => {
    expect(read("2026-03-10 08:15")).toBe("2026-03-10T07:15:00.000Z");
    expect(read("2026-03-10 8:15")).toBe("2026-03-10T07:15:00.000Z");
    expect(read("2026-03-10T08:15:00Z")).toBe("2026-03-10T08:15:00.000Z");
    expect(read("2026-03-10T08:15+02:00")).toBe("2026-03-10T06:15:00.000Z");
    expect(read("10.3.2026 8:15")).toBe("2026-03-10T07:15:00.000Z");
    expect(read("2026-03-10")).toBe("2026-03-10T11:00:00.000Z");
  });

  it("reads near days, times of today and how long ago", () => {
    expect(read("yesterday 8:00")).toBe("2026-03-11T07:00:00.000Z");
    expect(read("gestern 8 Uhr")).toBe("2026-03-11T07:00:00.000Z");
    expect(read("8:30")).toBe("2026-03-12T07:30:00.000Z");
    expect(read("8pm")).toBe("2026-03-12T19:00:00.000Z");
    expect(read("12 am")).toBe("2026-03-11T23:00:00.000Z");
    expect(read("mon 7:30")).toBe("2026-03-09T06:30:00.000Z");
    expect(read("2h ago")).toBe("2026-03-12T07:00:00.000Z");
    expect(read("vor 2 Stunden")).toBe("2026-03-12T07:00:00.000Z");
    expect(read("now")).toBe("2026-03-12T09:00:00.000Z");
  });

  it("takes the clock of the day on which it changes", () => {
    expect(read("2026-03-29 12:00")).toBe("2026-03-29T10:00:00.000Z");
    expect(read("2026-03-28 12:00")).toBe("2026-03-28T11:00:00.000Z");
  });

  it("guesses nothing: no month before day, no days that are not in the calendar, no bare numbers", () => {
    for (const text of ["3/10/2026", "2026-02-30", "30.2.2026", "25:00", "8", "127", "someday", "13 pm", ""])
      expect([text, read(text)]).toEqual([text, undefined]);
  });

  it("answers any text", () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const at_ms = instantOf(text, calendarOf("Europe/Berlin"), now_ms);
        expect(at_ms === undefined || Number.isFinite(at_ms)).toBe(true);
      }),
      { seed: 6 },
    );
  });
});
