import { describe, expect, it } from "vitest";
import { plantId, START_ms, testLedger, testPen } from "../../test/toy.ts";
import { crafts } from "../crafts/registry.ts";
import { AbsenceError, awayPage, deskAt } from "./index.ts";

const DAY_ms = 86_400_000;

function desk() {
  const ledger = testLedger(crafts);
  const pen = testPen(ledger);
  const brought = (n: number, top_cm: number) =>
    pen.at(n, {
      kind: "plant.brought",
      on: [plantId(n)],
      data: {
        number: 100 + n,
        habit: "thin",
        medium: "spongy",
        pot: { form: "round", top_cm, depth_cm: top_cm * 0.75 },
      },
    });
  const watered = (n: number) =>
    pen.at(5 + n / 10, {
      kind: "watering.watered",
      on: [plantId(n)],
      data: { volume_mL: 2000, drained: "yes" },
    });
  ledger.add([brought(1, 8), brought(2, 20), watered(1), watered(2)]);
  return deskAt(ledger, { now_ms: START_ms + DAY_ms, language: "en", units: "metric" });
}

describe("an absence", () => {
  it("lists the pot least likely to last first, with remedies and their sums", async () => {
    const [watering] = await awayPage(desk(), { from_ms: START_ms + DAY_ms, to_ms: START_ms + 15 * DAY_ms });
    const plants = watering?.plan.plants ?? [];
    expect(plants).toHaveLength(2);
    expect(plants[0]?.wants_frac).toBeGreaterThanOrEqual(plants[1]?.wants_frac ?? 1);
    expect(plants[0]?.remedies.length).toBeGreaterThan(0);
    for (const { sum, said } of plants[0]?.remedies ?? [])
      expect(`${sum}${said}`).not.toMatch(/NaN|undefined/);
    expect(watering?.plan.sitter.length).toBeGreaterThan(0);
  });

  it("a longer one leaves more wanting", async () => {
    const short =
      (await awayPage(desk(), { from_ms: START_ms + DAY_ms, to_ms: START_ms + 3 * DAY_ms }))[0]?.plan
        .plants ?? [];
    const long =
      (await awayPage(desk(), { from_ms: START_ms + DAY_ms, to_ms: START_ms + 20 * DAY_ms }))[0]?.plan
        .plants ?? [];
    for (const one of short)
      expect(long.find(({ plant }) => plant === one.plant)?.wants_frac).toBeGreaterThanOrEqual(
        one.wants_frac,
      );
  });

  it("refuses one that is over, turned round or too long, with the limit", async () => {
    const at = (days: number) => START_ms + days * DAY_ms;
    await expect(awayPage(desk(), { from_ms: at(5), to_ms: at(3) })).rejects.toThrow(AbsenceError);
    await expect(awayPage(desk(), { from_ms: at(-3), to_ms: at(0) })).rejects.toThrow("the absence is over");
    await expect(awayPage(desk(), { from_ms: at(2), to_ms: at(60) })).rejects.toThrow("at most 28 days");
  });
});
