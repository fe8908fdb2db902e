import fc from "fast-check";
import { expect, it } from "vitest";
import { seeded } from "../../test/entry-maker.ts";
import { IdError, isUuid7, uuidMaker, uuidMonth, uuidTime_ms } from "./uuid.ts";

it("ids of one device rise, differ and hold their time, whatever the clock does", () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 0, max: 2 ** 41 })), fc.integer(), (times, seed) => {
      const make = uuidMaker();
      const random = seeded(seed);
      let last = "";
      let latest_ms = -1;
      for (const now_ms of times) {
        const id = make(now_ms, random);
        latest_ms = Math.max(latest_ms, now_ms);
        expect(isUuid7(id)).toBe(true);
        expect(id > last).toBe(true);
        expect(uuidTime_ms(id)).toBe(latest_ms);
        last = id;
      }
    }),
  );
});

it("borrows from the next millisecond when one is full", () => {
  const make = uuidMaker();
  const ids = Array.from({ length: 10_000 }, () => make(1_790_000_000_000, () => 0.999));
  expect(new Set(ids).size).toBe(10_000);
  expect([...ids].sort()).toEqual(ids);
  expect(uuidTime_ms(ids.at(-1) as string)).toBeGreaterThan(1_790_000_000_000);
});

it("names the UTC month of an id", () => {
  const monthOf = (at: string) => uuidMonth(uuidMaker()(Date.parse(at), seeded(1)));
  expect(monthOf("2026-12-31T23:59:59.999Z")).toBe("2026-12");
  expect(monthOf("2027-01-01T00:00:00Z")).toBe("2027-01");
  expect(monthOf("2028-02-29T12:00:00Z")).toBe("2028-02");
});

it.each([Number.NaN, -1, 2 ** 48, Number.POSITIVE_INFINITY])("refuses a time of %s", (now_ms) => {
  expect(() => uuidMaker()(now_ms, seeded(1))).toThrow(IdError);
});

it.each([
  "",
  "0193A5C8-7b1e-7abc-8def-0123456789ab",
  "0193a5c8-7b1e-4abc-8def-0123456789ab",
  "0193a5c87b1e7abc8def0123456789ab",
])("%j is no UUIDv7 of ours", (text) => {
  expect(isUuid7(text)).toBe(false);
});
