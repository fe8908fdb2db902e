import { quantileOf, shareUpTo } from "@sillwood/science/water";
import { describe, expect, it } from "vitest";
import type { EntryId } from "../../book/entry.ts";
import type { Happening } from "../craft.ts";
import { forecastOf } from "./forecast.ts";
import { waterOutlook } from "./outlook.ts";
import { DAY_ms, HOUR_ms, potKit, poured, START_ms, testSay } from "./test-kit.ts";
import { unheardPour } from "./unheard.ts";

const kit = potKit();

/** An id of version 7 given at an instant. */
const idAt = (at_ms: number) => {
  const hex = at_ms.toString(16).padStart(12, "0");
  return `${hex.slice(0, 8)}-${hex.slice(8)}-7000-8000-000000000000` as EntryId;
};

/** Watered at eight in the morning of some days; written so many hours later. */
const pours = (days: readonly number[], later_h: number): readonly Happening[] =>
  days.map((day) => {
    const at_ms = START_ms + day * DAY_ms + 8 * HOUR_ms;
    return { ...poured(at_ms, { volume_mL: 220, drained: "yes" }), entry: idAt(at_ms + later_h * HOUR_ms) };
  });
/** As unequal as days are for who goes by the pot. */
const BY_FEEL = [0, 4, 10, 14, 20, 25];
const WEEKLY = [0, 7, 14, 21, 28, 35];
const asked = (happenings: readonly Happening[], day: number, hour: number) => {
  const now_ms = START_ms + day * DAY_ms + hour * HOUR_ms;
  const slice = kit.live(kit.start(), happenings, now_ms);
  return { slice, sight: kit.outward(now_ms) };
};
const unheard = (happenings: readonly Happening[], day: number, hour: number) => {
  const { slice, sight } = asked(happenings, day, hour);
  return unheardPour(slice, sight);
};

describe("a pour of today that nobody has written yet", () => {
  const evening = pours(BY_FEEL, 12);

  it("may have been where people write in the evening; not where they write at once", () => {
    expect(unheard(evening, 34, 12)?.chance_frac).toBeGreaterThan(0.3);
    expect(unheard(pours(BY_FEEL, 0.1), 34, 12)).toBeUndefined();
    // Half of them at once: half the share.
    const mixed = [...pours(BY_FEEL.slice(0, 3), 12), ...pours(BY_FEEL.slice(3), 0)];
    const half = unheard(mixed, 34, 12)?.chance_frac ?? 0;
    expect(half).toBeGreaterThan(0.05);
    expect(half).toBeLessThan(unheard(evening, 34, 12)?.chance_frac ?? 0);
  });

  it("was not before they water, and is in the book after they have written", () => {
    expect(unheard(evening, 34, 6)).toBeUndefined();
    expect(unheard(evening, 34, 21)).toBeUndefined();
  });

  it("was not where one stands in the book today, nor in a pot that is still wet", () => {
    expect(unheard([...evening, ...pours([34], 0)], 34, 12)).toBeUndefined();
    expect(unheard(evening, 26, 12)).toBeUndefined();
  });

  it("goes by the day where they water by habit, whatever the pot says", () => {
    const weekly = pours(WEEKLY, 12);
    expect(unheard(weekly, 40, 12)).toBeUndefined();
    expect(unheard(weekly, 42, 12)?.chance_frac).toBeGreaterThan(0.7);
  });

  it("starts that share of the draws just watered, moves no other number, and is said", () => {
    const { slice, sight } = asked(evening, 34, 12);
    const plain = pours(BY_FEEL, 0).map(({ entry: _entry, ...rest }, i) => ({
      ...rest,
      entry: `at once ${i}` as EntryId,
    }));
    const [may, not] = [forecastOf(slice, sight), forecastOf(asked(plain, 34, 12).slice, sight)];
    const share = may.unheard?.chance_frac ?? 0;
    const dueNow = (one: typeof may) => shareUpTo(one.draws.dry_d, 0);
    expect(dueNow(not)).toBeGreaterThan(0.4);
    expect(dueNow(may)).toBeCloseTo((1 - share) * dueNow(not), 1);
    expect(quantileOf(may.draws.dry_d, 0.9)).toBeGreaterThan(quantileOf(not.draws.dry_d, 0.9));
    expect(may.slice.state).toEqual(not.slice.state);
    expect(may.use_g_d).toBe(not.use_g_d);
    for (const language of ["en", "de"] as const) {
      const said =
        waterOutlook(slice, { ...sight, say: testSay(language) }).workings[0]?.notes.join(" ") ?? "";
      expect(said).toContain(`${Math.round(share * may.draws.dry_d.length)} `);
      expect(said).toContain(language === "en" ? "6 of 6 past pours" : "6 von 6 früheren Güssen");
    }
  });
});
