import { describe, expect, it } from "vitest";
import { amountFor } from "./amount.ts";
import { waterLimits } from "./limits.ts";
import { waterOutlook } from "./outlook.ts";
import { waterSigns } from "./signs.ts";
import { DAY_ms, HOUR_ms, looked, potKit, poured, START_ms, testSay } from "./test-kit.ts";

/** Habits of the trade (checks/trade.json), common practice without a source. */
describe("trade-001: ordinary use of a small trained pepper indoors", () => {
  it.each([
    ["winter window", { lit_h: 9, ppfd_umol_m2_s: 120, air_C: 19 }],
    ["summer window", { lit_h: 15, ppfd_umol_m2_s: 200, air_C: 22 }],
    ["lamp", { lit_h: 14, ppfd_umol_m2_s: 200, light: "lamp" as const }],
  ])("before any weighing: %s", (_name, room) => {
    const kit = potKit({}, room);
    const { figures } = waterOutlook(kit.start(), kit.outward(START_ms + 8 * HOUR_ms));
    expect(figures["use_g_d"]).toBeGreaterThanOrEqual(17);
    expect(figures["use_g_d"]).toBeLessThanOrEqual(102);
    expect(figures["useLow_g_d"]).toBeLessThanOrEqual(34);
    expect(figures["useHigh_g_d"]).toBeGreaterThanOrEqual(51);
  });
});

describe("trade-005: wilted from dryness", () => {
  const kit = potKit();
  const dry_ms = START_ms + 12 * DAY_ms + 8 * HOUR_ms;
  const wilted = kit.live(kit.start(), [looked(dry_ms, { look: "drooping", yes: true })], dry_ms + HOUR_ms);

  it("rewets slowly", () => {
    const task = waterOutlook(wilted, kit.outward(dry_ms + HOUR_ms)).tasks.find(
      ({ work }) => work === "water",
    );
    expect(task?.pours?.length).toBeGreaterThanOrEqual(2);
    for (const pour of task?.pours?.slice(0, -1) ?? []) {
      expect(pour.wait_min).toBeGreaterThanOrEqual(10);
      expect(pour.wait_min).toBeLessThanOrEqual(30);
    }
  });

  it("is looked at again within a day of the water, and neither fed nor cut until then", () => {
    const water_ms = dry_ms + HOUR_ms;
    const after = kit.live(
      wilted,
      [poured(water_ms, { volume_mL: 250, drained: "yes" })],
      water_ms + HOUR_ms,
    );
    const { tasks } = waterOutlook(after, kit.outward(water_ms + HOUR_ms));
    const look = tasks.find(({ work }) => work === "look");
    expect(look).toBeDefined();
    expect((look?.latest_ms ?? Number.POSITIVE_INFINITY) - water_ms).toBeLessThanOrEqual(24 * HOUR_ms);
    const held = waterLimits(after, kit.sight(water_ms + HOUR_ms), testSay("en")).map(({ work }) => work);
    expect(held).toContain("feed");
    expect(held).toContain("cut");
    const stands = kit.live(
      after,
      [looked(water_ms + 20 * HOUR_ms, { look: "drooping", yes: false })],
      water_ms + 21 * HOUR_ms,
    );
    expect(waterLimits(stands, kit.sight(water_ms + 21 * HOUR_ms), testSay("en"))).toEqual([]);
  });

  it("says on the desk: rewet slowly, do not throw away, do not feed, look again within a day", () => {
    const [first] = waterSigns(wilted, kit.outward(dry_ms + HOUR_ms), ["droops", "light pot"]);
    expect(first?.key).toBe("thirst");
    expect(first?.doNow.join()).toContain("slowly");
    expect(first?.doNot.join()).toMatch(/feed.*throw it away/);
    expect(first?.lookAgainIn_h).toBeLessThanOrEqual(24);
  });
});

describe("trade-006: a dried medium takes its water in parts", () => {
  const kit = potKit();
  const slice = kit.start();
  const capacity_g = slice.prior.capacity_g;

  it("at 0.95 of the store used: at least two pours with waits of 10 to 30 min", () => {
    const amount = amountFor(slice, kit.sight(START_ms), 0.95 * capacity_g, "metric");
    expect(amount.pours.length).toBeGreaterThanOrEqual(2);
    expect(amount.soak).toBe(true);
    expect(amount.pours.reduce((sum, pour) => sum + pour.volume_mL, 0)).toBeCloseTo(amount.volume_mL, 6);
    for (const pour of amount.pours.slice(0, -1)) {
      expect(pour.wait_min).toBeGreaterThanOrEqual(10);
      expect(pour.wait_min).toBeLessThanOrEqual(30);
    }
    expect(amount.pours.at(-1)?.wait_min).toBe(0);
  });

  it("at half the store used: one pour", () => {
    expect(amountFor(slice, kit.sight(START_ms), 0.5 * capacity_g, "metric").pours).toHaveLength(1);
  });
});
