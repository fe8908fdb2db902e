import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { GROWER, plantId, START_ms, TEST_SITE, testPen } from "../../../test/toy.ts";
import { soluteSpecies } from "../../book/effects.ts";
import type { Json } from "../../book/index.ts";
import { createLedger } from "../../house/index.ts";
import { deskAt } from "../../pages/index.ts";
import { AVAILABLE_frac } from "../../plants/capacity.ts";
import { mediumVolume_mL } from "../../plants/pot.ts";
import type { AnyCraft } from "../craft.ts";
import { crafts as registry } from "../registry.ts";
import { potting } from "./index.ts";
import type { PotSlice } from "./slice.ts";

const DAY_ms = 86_400_000;
/** Crafts don't import one another: the one that waters is found by name. */
const watering = registry.find(({ name }) => name === "watering") as AnyCraft;
const crafts: readonly AnyCraft[] = [watering, potting];
const plant = plantId(1);

function house(pot: object = { form: "round", top_cm: 12, depth_cm: 9 }, medium = "spongy") {
  const ledger = createLedger({ crafts, site: TEST_SITE });
  const pen = testPen(ledger, GROWER);
  const write = (day_d: number, kind: string, data: object) =>
    ledger.add([pen.at(24 * day_d, { kind, on: [plant], data: data as Json })]);
  write(0, "plant.brought", { number: 127, habit: "thin", medium, pot });
  const desk = (day_d: number) =>
    deskAt(ledger, { now_ms: START_ms + day_d * DAY_ms, language: "en", units: "metric" });
  const at = (day_d: number) => {
    const state = ledger.stateAt(plant, START_ms + day_d * DAY_ms);
    if (!state) throw new Error("no state");
    return { slice: state.slices[1] as PotSlice, sight: ledger.runner().sight(state), state };
  };
  const outlook = (day_d: number) => {
    const outlooks = desk(day_d).view(plant)?.outlooks ?? [];
    const found = outlooks.find(({ craft }) => craft === "potting")?.outlook;
    if (!found) throw new Error("no outlook");
    return found;
  };
  return { write, desk, at, outlook };
}

const capacity = (pot: object, medium = "spongy") =>
  house(pot, medium).at(1).sight.read("capacityPrior_g").value;

describe("capacity", () => {
  it("is what it was in the usual pot, and a larger share of the medium in a lower one", () => {
    const box = (depth_cm: number) =>
      ({ form: "rectangular", length_cm: 12, width_cm: 12, depth_cm }) as const;
    const share = (depth_cm: number) => capacity(box(depth_cm)) / mediumVolume_mL(box(depth_cm));
    const usual = { form: "round", top_cm: 12, depth_cm: 9 } as const;
    expect(capacity(usual)).toBeCloseTo(AVAILABLE_frac.spongy * mediumVolume_mL(usual), 6);
    expect(share(4)).toBeGreaterThan(1.05 * share(9));
    expect(share(9)).toBeGreaterThan(1.15 * share(20));
  });

  it("follows a recipe, and a porosity test before it", () => {
    const { write, at } = house();
    const word = at(1).sight.read("capacityPrior_g");
    write(2, "potting.filled", {
      recipe: [
        { part: "pumice", scoops_n: 2 },
        { part: "bark", scoops_n: 1 },
      ],
    });
    const mixed = at(3).sight.read("capacityPrior_g");
    expect(mixed.value).toBeLessThan(0.75 * word.value);
    write(4, "potting.tested", { medium_mL: 500, fill_cm: 8, saturated_g: 530, drained_g: 480, dry_g: 90 });
    const tested = at(5).sight.read("capacityPrior_g");
    expect(tested.origin).toBe("measured");
    expect(tested.value).toBeGreaterThan(1.2 * mixed.value);
    expect(tested.sd / tested.value).toBeLessThan(word.sd / word.value);
  });
});

describe("the ledger of solutes", () => {
  it("keeps every milligram over a year of pours, feeds, flushes, meters and fresh medium", () => {
    const doing = fc.record({
      volume_mL: fc.integer({ min: 20, max: 900 }),
      drained: fc.constantFrom("yes" as const, "no" as const, "unknown" as const),
      every_d: fc.integer({ min: 1, max: 12 }),
    });
    fc.assert(
      fc.property(fc.array(doing, { minLength: 45, maxLength: 60 }), (year) => {
        const { write, at } = house();
        let day_d = 1;
        year.forEach(({ volume_mL, drained, every_d }, i) => {
          write(day_d, "watering.watered", { volume_mL, drained });
          if (i % 9 === 4) write(day_d + 0.1, "potting.salts", { ec_mS_cm: 1.4, method: "pour-through" });
          if (i % 20 === 15) write(day_d + 0.2, "plant.potted", { medium: "bark" });
          day_d += every_d;
        });
        const { ledger } = at(day_d).slice;
        soluteSpecies.forEach((species, i) => {
          const [held, came, drained, taken, removed] = (
            ["held_mg", "in_mg", "drained_mg", "taken_mg", "removed_mg"] as const
          ).map((part) => ledger[part][i] as number) as [number, number, number, number, number];
          expect(Math.abs(came - held - drained - taken - removed), species).toBeLessThan(
            1e-9 * Math.max(1, came),
          );
          expect(held).toBeGreaterThanOrEqual(0);
        });
      }),
      { seed: 5, numRuns: 6 },
    );
  });

  it("climbs without leaching, falls with a flush, and is put right by a meter", () => {
    const { write, at } = house();
    const salt = (day_d: number) => at(day_d).sight.read("saltAtRefill_mS_cm").value;
    const before = salt(0.5);
    for (let i = 0; i < 40; i++) write(1 + 4 * i, "watering.watered", { volume_mL: 120, drained: "no" });
    const climbed = salt(170);
    expect(climbed).toBeGreaterThan(1.5 * before);
    write(171, "watering.watered", { volume_mL: 2500, drained: "yes" });
    const flushed = salt(172);
    expect(flushed).toBeLessThan(0.55 * climbed);
    write(173, "potting.salts", { ec_mS_cm: 3, method: "pour-through" });
    expect(salt(174)).toBeGreaterThan(1.3 * flushed);
  });

  it("is stronger in a dry pot than in a wet one, and nitrogen is drawn while sodium stays", () => {
    const { write, at } = house();
    write(1, "watering.watered", { volume_mL: 400, drained: "yes" });
    const { sight } = at(1.1);
    expect(sight.read("saltAtDriest_mS_cm").value).toBeGreaterThan(sight.read("saltAtRefill_mS_cm").value);
    const sodium = (day_d: number) => at(day_d).slice.ledger.held_mg[soluteSpecies.indexOf("Na")] as number;
    const first = at(1.1).sight.read("nitrogen_mg").value;
    expect(at(9).sight.read("nitrogen_mg").value).toBeLessThan(first);
    expect(sodium(9)).toBe(sodium(1.1));
  });
});

describe("what is due", () => {
  it("repots after about a year, never as a must, and not again at once (common practice)", () => {
    const { write, outlook } = house();
    const repot = (day_d: number) => outlook(day_d).tasks.find(({ work }) => work === "repot");
    expect(repot(200)).toBeUndefined();
    expect(repot(366)).toMatchObject({ must: false, work: "repot" });
    expect(repot(455)).toBeDefined();
    write(456, "plant.potted", { medium: "bark" });
    expect(repot(470)).toBeUndefined();
  });

  it("repots sooner where roots circle and water stands", () => {
    const { write, outlook } = house();
    write(100, "potting.looked", { rootsCircling: true, standing_s: 90 });
    expect(outlook(101).tasks.map(({ work }) => work)).toContain("repot");
  });

  it("flushes in doses once the caution is passed", () => {
    const { write, outlook } = house();
    write(1, "potting.salts", { ec_mS_cm: 9, method: "pour-through" });
    const flush = outlook(2).tasks.find(({ work }) => work === "flush");
    expect(flush?.pours?.length).toBeGreaterThan(2);
    expect(flush?.amount?.value).toBeGreaterThan(200);
  });
});

describe("after a potting day", () => {
  it("holds feed, cut and spray with dates, and lets go by itself", () => {
    const { write, desk } = house();
    write(10, "potting.prepared", { water_C: 18, medium_C: 19, room_C: 21 });
    write(10.01, "potting.lifted", {});
    write(10.02, "potting.cut", { leavesKept_frac: 0.6 });
    write(10.03, "potting.washed", { rootsKept_frac: 0.7 });
    write(10.04, "plant.potted", { medium: "gritty" });
    const held = (day_d: number) => {
      const { view } = desk(day_d);
      const seen = view(plant);
      return new Map(
        (seen?.limits ?? [])
          .filter(({ by }) => by === "potting")
          .map(({ work, until_ms }) => [work, until_ms]),
      );
    };
    const now = held(11);
    for (const work of ["feed", "cut", "spray", "repot", "sell"] as const)
      expect(now.get(work), work).toBeGreaterThan(START_ms + 20 * DAY_ms);
    expect(now.get("cut")).toBeCloseTo(START_ms + 31.03 * DAY_ms, -5);
    expect(held(80).size).toBe(0);
  });

  it("keeps a broken entry as a problem and goes on", () => {
    const { at } = house();
    const { slice, sight } = at(1);
    const happening = { entry: "e" as never, at_ms: 1, by: "p" as never, effects: [] };
    const after = potting.fold(slice, { ...happening, own: { kind: "potting.filled", data: null } }, sight);
    expect(after.problems).toHaveLength(1);
  });
});
