import { describe, expect, it } from "vitest";
import { GROWER, plantId, START_ms, TEST_SITE, testPen } from "../../../test/toy.ts";
import type { Json } from "../../book/index.ts";
import { createLedger } from "../../house/index.ts";
import { deskAt } from "../../pages/index.ts";
import { worldOf } from "../../pages/world.ts";
import type { AnyCraft, World } from "../craft.ts";
import { crafts as registry } from "../registry.ts";
import { potting } from "./index.ts";
import type { DayPage, MixPage, PotPage, PottingAsk } from "./page-shape.ts";
import type { PotSlice } from "./slice.ts";

const watering = registry.find(({ name }) => name === "watering") as AnyCraft;
const crafts: readonly AnyCraft[] = [watering, potting];
const HOUR_ms = 3_600_000;
const drawn = await potting.page();

function house() {
  const ledger = createLedger({ crafts, site: TEST_SITE });
  const pen = testPen(ledger, GROWER);
  const write = (hour: number, kind: string, on: readonly string[], data: object) =>
    ledger.add([pen.at(hour, { kind, on, data: data as Json })]);
  for (const n of [1, 2, 3])
    write(0, "plant.brought", [plantId(n)], {
      number: 126 + n,
      habit: "thin",
      medium: "spongy",
      pot: { form: "round", top_cm: 12, depth_cm: 9 },
    });
  const page = (hour: number, ask: PottingAsk, language: "en" | "de" = "en") => {
    const desk = deskAt(ledger, { now_ms: START_ms + hour * HOUR_ms, language, units: "metric" });
    return drawn(worldOf(desk, crafts.indexOf(potting)) as World<PotSlice>, ask as unknown as Json);
  };
  return { write, page };
}

const BOWL = { form: "oval", length_cm: 18, width_cm: 14, depth_cm: 5 } as const;

describe("the mixing desk for a medium", () => {
  const { page } = house();
  const mix = (more: object, language: "en" | "de" = "en") =>
    page(1, { what: "mix", ...more } as PottingAsk, language) as MixPage;

  it("asks for bags first, then gives whole scoops for this pot", () => {
    expect(mix({}).mix).toBeUndefined();
    const bags = ["peat and perlite 70:30", "bark", "pumice", "perlite"];
    const shown = mix({ bags, pot: BOWL });
    expect(shown.mix?.recipe.every(({ scoops_n }) => Number.isInteger(scoops_n))).toBe(true);
    expect(shown.mix?.chance_frac).toBeGreaterThan(0.5);
    expect(shown.others).toHaveLength(2);
    expect(shown.noMix).toBeUndefined();
  });

  it("moves the wet layer with the depth, and says when no mix will do", () => {
    const recipe = [{ part: "peat and perlite 70:30", scoops_n: 1 }];
    const [low, deep] = [4, 18].map((depth_cm) => mix({ recipe, pot: { ...BOWL, depth_cm } }));
    expect(low?.mix?.air_frac).toBeLessThan(deep?.mix?.air_frac as number);
    const share = (shown: MixPage | undefined) =>
      (shown?.mix?.cut.wetLayer_cm as number) / (shown?.mix?.cut.fill_cm as number);
    expect(share(low)).toBe(1);
    expect(share(deep)).toBeLessThan(0.4);
    const none = mix({
      bags: ["peat and perlite 70:30", "coir and perlite 80:20"],
      pot: { ...BOWL, depth_cm: 4 },
    });
    expect(none.noMix).toMatch(/Granular mixes only in this tray/);
    expect(none.noMix).toMatch(/would do from/);
  });

  it("speaks German, and refuses what is no bag or no pot", () => {
    expect(mix({ bags: ["pumice"] }, "de").said).toMatch(/Bims/);
    expect(() => mix({ bags: ["gravel"] })).toThrow(/expected one of/);
    expect(() => mix({ pot: { ...BOWL, depth_cm: 90 } })).toThrow(/60/);
    expect(() => page(1, { what: "soup" } as never)).toThrow(/mix, day or pot/);
  });
});

describe("a potting day", () => {
  it("runs its clocks out of the book, step by step, and ends in what is held", () => {
    const { write, page } = house();
    const three = [1, 2, 3].map(plantId);
    const day = (hour: number) => page(hour, { what: "day" }) as DayPage;
    expect(day(1).rail).toHaveLength(0);
    expect(day(1).said).toMatch(/Next: 127/);
    write(10, "potting.prepared", three, { water_C: 9, medium_C: 19, room_C: 21 });
    const first = day(10.01);
    expect(first.rail.map(({ number, next }) => [number, next])).toEqual([
      ["127", "lift"],
      ["128", "lift"],
      ["129", "lift"],
    ]);
    expect(first.warmth?.state).toBe("wait");
    // 9 to 15 °C in a room of 21 °C takes 42 minutes; the clock ran on though nobody looked.
    expect(day(10.65).warmth?.state).toBe("wait");
    expect(day(10.75).warmth?.state).toBe("good");
    write(11, "potting.lifted", three, {});
    write(11.1, "potting.washed", three.slice(0, 2), { rootsKept_frac: 0.75 });
    const washed = day(11.15);
    expect(washed.rail.map(({ next }) => next)).toEqual(["pot", "pot", "cut"]);
    expect(washed.rail[0]?.clocks[0]).toMatchObject({ key: "roots", isPast: false });
    expect(day(11.4).rail[0]?.clocks[0]).toMatchObject({ key: "roots", isPast: true });
    write(11.3, "plant.potted", three, { medium: "gritty" });
    expect(day(11.35).rail[0]).toMatchObject({ next: "drain", asksWeight: true });
    write(12.4, "potting.drained", three, {});
    write(12.5, "potting.placed", three, {});
    const after = day(12.6);
    expect(after.rail).toHaveLength(0);
    expect(after.held).toHaveLength(3);
    expect(after.held[0]?.said).toMatch(/cut until .*spray until|feed until/);
  });

  it("passes 10 to 15.6 °C with a note and refuses a frosty medium (common practice)", () => {
    const { write, page } = house();
    const state = (hour: number, medium_C: number) => {
      write(hour, "potting.prepared", [plantId(1)], { water_C: 18, medium_C, room_C: 21 });
      return (page(hour + 0.1, { what: "day" }) as DayPage).warmth?.state;
    };
    expect(state(1, 10)).toBe("note");
    expect(state(2, 15.6)).toBe("note");
    expect(state(3, 4.4)).toBe("refused");
    expect(state(4, 19)).toBe("good");
  });
});

describe("one pot", () => {
  it("says what it holds and how large the next may be", () => {
    const shown = house().page(1, { what: "pot", plant: plantId(1) }) as PotPage;
    expect(shown.lines.join("\n")).toMatch(/wet layer|Salts|salts/);
    expect(shown.figures["nextMost_mL"]).toBeGreaterThan(0);
  });
});
