import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { someEntries } from "../../test/entry-maker.ts";
import type { DeviceId, EntryId } from "./entry.ts";
import { type ClockReport, compareOrder, correctedTime } from "./order.ts";

const phone = "0193a5c8-7b1e-7abc-8def-0123456789ab" as DeviceId;
const other = "0193a5c8-7b1e-7abc-8def-0123456789ac" as DeviceId;
const report = (n: number, from_ms: number, until_ms: number, ahead_ms: number): ClockReport => ({
  clock: `2026-11-25T13:45:38.123Z/000${n}`,
  id: `0193a5c8-7b1e-7abc-8def-00000000000${n}` as EntryId,
  data: { device: phone, from_ms, until_ms, ahead_ms },
});
const at = (at_ms: number, device = phone, atFrom: "clock" | "typed" = "clock") => ({
  device,
  at_ms,
  atFrom,
});

describe("corrected time", () => {
  const corrected = correctedTime([report(1, 1000, 2000, 300)]);

  it("shifts times read off the clock inside the span, both ends included", () => {
    expect([999, 1000, 1500, 2000, 2001].map((at_ms) => corrected(at(at_ms)))).toEqual([
      999, 700, 1200, 1700, 2001,
    ]);
  });

  it("never shifts typed times nor other devices", () => {
    expect(corrected(at(1500, phone, "typed"))).toBe(1500);
    expect(corrected(at(1500, other))).toBe(1500);
  });

  it("lets the later of two reports count, in any order of arrival", () => {
    const reports = [report(1, 1000, 2000, 300), report(2, 1500, 1600, -50), report(3, 1550, 3000, 7)];
    fc.assert(
      fc.property(
        fc.shuffledSubarray(reports, { minLength: 3 }),
        fc.integer({ min: 900, max: 3100 }),
        (shuffled, at_ms) => {
          expect(correctedTime(shuffled)(at(at_ms))).toBe(correctedTime(reports)(at(at_ms)));
        },
      ),
    );
    expect(correctedTime(reports)(at(1520))).toBe(1570);
    expect(correctedTime(reports)(at(1560))).toBe(1553);
  });
});

it("the order of the book does not depend on the order of arrival", () => {
  const entries = [...someEntries(1, 20), ...someEntries(2, 20)].map(({ entry }) => ({
    ...entry,
    // Many entries of one moment, as a whole bench watered at once.
    at_ms: entry.at_ms - (entry.at_ms % 3_600_000),
  }));
  const sorted = [...entries].sort(compareOrder).map(({ id }) => id);
  fc.assert(
    fc.property(fc.shuffledSubarray(entries, { minLength: entries.length }), (shuffled) => {
      expect([...shuffled].sort(compareOrder).map(({ id }) => id)).toEqual(sorted);
    }),
  );
});
