import { describe, expect, it } from "vitest";
import { plantId, START_ms, TEST_SITE, testPen } from "../../test/toy.ts";
import { createLedger } from "../house/index.ts";
import { deskAt, plantPage } from "../pages/index.ts";
import type { AnyCraft } from "./craft.ts";
import { crafts } from "./registry.ts";
import type { WaterSlice } from "./watering/slice.ts";

const DAY_ms = 86_400_000;
const all: readonly AnyCraft[] = crafts;

function weighedLife(has: (name: string) => boolean) {
  const chosen = all.filter(({ name }) => has(name));
  const ledger = createLedger({ crafts: chosen, site: TEST_SITE });
  const pen = testPen(ledger);
  ledger.add([
    pen.at(0, {
      kind: "plant.brought",
      on: [plantId(1)],
      data: { number: 1, habit: "thin", medium: "spongy", pot: { form: "round", top_cm: 12, depth_cm: 9 } },
    }),
    pen.at(1, { kind: "plant.measured", on: [plantId(1)], data: { leaves_n: 6, leafLength_cm: 5 } }),
  ]);
  for (let day = 1; day < 20; day += 3)
    ledger.add([
      pen.at(24 * day, {
        kind: "watering.weighed",
        on: [plantId(1)],
        data: { weight_g: 560, state: "as found" },
      }),
      pen.at(24 * day + 1, {
        kind: "watering.watered",
        on: [plantId(1)],
        data: { volume_mL: 200, drained: "yes" },
      }),
    ]);
  const sliceAt = (day: number) =>
    ledger.stateAt(plantId(1), START_ms + day * DAY_ms)?.slices[
      chosen.findIndex(({ name }) => name === "watering")
    ] as WaterSlice;
  const factor = (day: number) => sliceAt(day).state[1] as number;
  const area = (day: number) => sliceAt(day).leafArea_m2;
  return { ledger, pen, factor, area };
}

describe("watering beside growth", () => {
  it("takes leaves that grow for leaves that grow, and a new count for a better count", () => {
    const { ledger, pen, factor, area } = weighedLife(() => true);
    // Between two weights only time passes: the learned thirst of a leaf stays, the leaves grow.
    const [before, grown] = [factor(19.3), factor(28)];
    expect(area(28)).toBeGreaterThan(1.15 * area(19.3));
    expect(Math.abs(grown - before)).toBeLessThan(0.1);
    ledger.add([pen.at(24 * 28, { kind: "plant.measured", on: [plantId(1)], data: { leaves_n: 100 } })]);
    expect(area(29.5)).toBeGreaterThan(2 * area(28));
    expect(factor(29.5)).toBeLessThan(grown - 0.2);
  });

  it("waters a plant earlier once growth says that it flowers", () => {
    const { ledger, pen } = weighedLife(() => true);
    const threshold = (day: number) => {
      const desk = deskAt(ledger, { now_ms: START_ms + day * DAY_ms, language: "en", units: "metric" });
      return plantPage(desk, plantId(1))?.figures["watering"]?.["threshold_frac"];
    };
    ledger.add([pen.at(24 * 20, { kind: "growth.staged", on: [plantId(1)], data: { stage: "in leaf" } })]);
    expect(threshold(20.5)).toBe(0.55);
    ledger.add([pen.at(24 * 21, { kind: "growth.staged", on: [plantId(1)], data: { stage: "in flower" } })]);
    expect(threshold(21.5)).toBe(0.4);
  });
});

describe.each(all.map(({ name }) => name))("the program without %s", (name) => {
  it("still answers, and keeps that craft's entries as those of a newer app", () => {
    const { ledger } = weighedLife((each) => each !== name);
    const desk = deskAt(ledger, { now_ms: START_ms + 21 * DAY_ms, language: "en", units: "metric" });
    const page = plantPage(desk, plantId(1));
    expect(page?.number).toBe("1");
    expect(Object.keys(page?.figures ?? {})).toEqual(
      all.map((craft) => craft.name).filter((each) => each !== name),
    );
  });
});
