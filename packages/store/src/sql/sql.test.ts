import { entryDigest, uuidMaker, uuidMonth } from "@sillwood/bench/book";
import fc from "fast-check";
import { expect, it } from "vitest";
import { seeded, someEntries } from "../../../bench/test/entry-maker.ts";
import { idRange } from "./id-range.ts";
import { nativeDigest } from "./native-digest.ts";

it("the digest by Node's SHA-256 is the digest of the book", () => {
  for (const { entry, hash } of someEntries(1, 200)) {
    const ref = { id: entry.id, hash };
    expect(nativeDigest(ref)).toEqual(entryDigest(ref));
  }
});

it("the ids of a month lie in its range and those of no other month do", () => {
  fc.assert(
    fc.property(fc.integer({ min: 946_684_800_000, max: 7_258_118_399_999 }), fc.integer(), (at_ms, seed) => {
      const id = uuidMaker()(at_ms, seeded(seed));
      const { from, until } = idRange(uuidMonth(id));
      expect(id >= from && id <= until).toBe(true);
      const next = idRange(uuidMonth(uuidMaker()(at_ms + 32 * 86_400_000, seeded(seed))));
      expect(id < next.from).toBe(true);
    }),
  );
  const last = uuidMaker()(Date.parse("2026-12-01T00:00:00Z") - 1, () => 0.999999);
  const first = uuidMaker()(Date.parse("2026-12-01T00:00:00Z"), () => 0);
  expect(last <= idRange("2026-11").until).toBe(true);
  expect(first > idRange("2026-11").until).toBe(true);
  expect(first >= idRange("2026-12").from).toBe(true);
});
