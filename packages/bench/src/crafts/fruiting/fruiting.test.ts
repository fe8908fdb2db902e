import { describe, expect, it } from "vitest";
import { plantId, START_ms, TEST_SITE, testPen } from "../../../test/toy.ts";
import type { Json } from "../../book/entry.ts";
import { createLedger } from "../../house/index.ts";
import { craftPage, deskAt } from "../../pages/index.ts";
import type { Language } from "../../words/say.ts";

import { crafts } from "../registry.ts";
import type { FruitPage, PlantFruit } from "./page-shape.ts";

const DAY_ms = 86_400_000;
const ME = plantId(1);

/** One plant on a bench of constant air and light. */
function bed(plant: Record<string, Json> = {}, air: { air_C?: number; dli_mol_m2_d?: number } = {}) {
  const { air_C = 22, dli_mol_m2_d = 12 } = air;
  const ledger = createLedger({ crafts, site: TEST_SITE });
  const pen = testPen(ledger);
  const write = (day: number, kind: string, data: Json, on: string = ME) =>
    ledger.add([pen.at(24 * day, { kind, on: [on], data })]);
  const laid = (id: string) => ({
    name: id,
    place: "table",
    outdoors: false,
    order_n: 0,
    spots: [{ id: `${id}-1`, name: "1" }],
  });
  write(0, "bench.laid", laid("warm"), "warm");
  write(0, "bench.air", { dayAir_C: air_C, nightAir_C: air_C }, "warm");
  write(0, "bench.lit", { dli_mol_m2_d, light: "lamp", hours_h: 12 }, "warm");
  write(0, "bench.laid", laid("cold"), "cold");
  write(0, "bench.air", { dayAir_C: 11, nightAir_C: 11 }, "cold");
  write(0, "bench.lit", { dli_mol_m2_d, light: "lamp", hours_h: 12 }, "cold");
  write(0, "plant.brought", {
    number: 1,
    habit: "thin",
    medium: "spongy",
    pot: { form: "round", top_cm: 12, depth_cm: 9 },
    spot: "warm-1",
    ...plant,
  });
  const desk = (day: number, language: Language = "en") =>
    deskAt(ledger, { now_ms: START_ms + day * DAY_ms, language, units: "metric" });
  const outlook = (day: number, language?: Language) => {
    const found = desk(day, language)
      .view(ME)
      ?.outlooks.find((each) => each.craft === "fruiting");
    if (!found) throw new Error("no outlook");
    return found.outlook;
  };
  return {
    ledger,
    write,
    outlook,
    figures: (day: number) => outlook(day).figures as Record<string, number>,
    page: async (day: number, ask: Json = { plant: ME }, language: Language = "en") =>
      (await craftPage(desk(day, language), "fruiting", ask)) as FruitPage,
  };
}
const plantOf = (page: FruitPage): PlantFruit => page.plant as PlantFruit;

describe("how many the light can feed", () => {
  it("rises with light and falls with the size of the fruit", () => {
    const fed = (light: number, habit = "thin") =>
      bed({ habit }, { dli_mol_m2_d: light }).figures(3)["fruitsFed_n"] as number;
    expect(fed(16)).toBeGreaterThan(1.5 * fed(6));
    expect(fed(12, "fat")).toBeLessThan(fed(12));
    expect(fed(12, "tiny")).toBeGreaterThan(fed(12));
  });
  it("learns from small fruit that the plant carried too many", () => {
    const { write, figures } = bed({ pot: { form: "round", top_cm: 24, depth_cm: 18 } });
    const before = figures(3)["fruitsFed_n"] as number;
    write(4, "fruiting.counted", { fruits_n: Math.round(before) });
    write(60, "fruiting.picked", { fruits_n: Math.round(before), mass_g: Math.round(before) * 3.2 });
    expect(figures(61)["fruitsFed_n"]).toBeLessThan(0.9 * before);
    expect(figures(61)["learned"]).toBeLessThan(1);
  });
  it("asks to thin what is too many, soon, and stops when it is done", () => {
    const { write, outlook, figures } = bed();
    const keep_n = figures(3)["fruitsKeep_n"] as number;
    write(3, "fruiting.counted", { fruits_n: keep_n * 2 + 2 });
    const [task] = outlook(3.1).tasks;
    expect(task).toMatchObject({ work: "pluck", amount: { value: keep_n + 2 } });
    write(3.2, "fruiting.thinned", { what: "fruits", removed_n: keep_n + 2 });
    expect(outlook(3.3).tasks).toEqual([]);
  });
  it("shares them over branches by leaf and wood, none on what is too thin", async () => {
    const { write, page } = bed({}, { dli_mol_m2_d: 25 });
    const branch = (letter: string, thickness_mm: number, leaves_n: number) =>
      write(1, "plant.branched", { branch: letter, thickness_mm, length_cm: 15, lean_deg: 40, leaves_n });
    branch("A", 6, 40);
    branch("B", 5, 20);
    branch("C", 1.2, 20);
    for (const [letter, fruits_n] of [
      ["A", 9],
      ["B", 9],
      ["C", 4],
    ] as const)
      write(2, "fruiting.counted", { branch: letter, fruits_n });
    const { branches, has_n } = plantOf(await page(2.1));
    const [a, b, c] = branches;
    expect(has_n).toBe(22);
    expect((a?.keep_n ?? 0) > (b?.keep_n ?? 0)).toBe(true);
    expect(c).toMatchObject({ keep_n: 0, said: "none, too thin" });
    expect(a?.act?.data).toEqual({ what: "fruits", removed_n: 9 - (a?.keep_n ?? 0), branch: "A" });
  });
  it("says the price of full size, and what keeping more would come to", async () => {
    const { page, write } = bed({ pot: { form: "round", top_cm: 24, depth_cm: 18 } });
    const few = plantOf(await page(3));
    expect(few.price_frac).toBeGreaterThan(0.05);
    expect(few.price_frac).toBeLessThan(0.45);
    expect(plantOf(await page(3, { plant: ME, keeping_n: 40 })).trySaid).toMatch(
      /keeping 40: each about \d+/,
    );
    write(4, "fruiting.aimed", { aim: "many" });
    expect(plantOf(await page(5)).keep_n).toBeGreaterThan(2 * few.keep_n);
  });
});

describe("flowers", () => {
  it("asks for the brush in the morning, again the next, and no more once they are over", () => {
    const { write, outlook } = bed();
    write(1.3, "fruiting.flowered", { open_n: 4 });
    const [task] = outlook(1.4).tasks;
    expect(task).toMatchObject({ work: "brush", amount: { value: 4 } });
    write(1.42, "fruiting.brushed", { open_n: 4 });
    const [again] = outlook(1.45).tasks;
    expect(again?.earliest_ms).toBeGreaterThan(START_ms + 2 * DAY_ms - 12 * 3_600_000);
    expect(outlook(5).tasks).toEqual([]);
  });
  it("offers what is open only while it can be open", () => {
    const { write, ledger } = bed();
    const read = (day: number) =>
      deskAt(ledger, { now_ms: START_ms + day * DAY_ms, language: "en", units: "metric" })
        .view(ME)
        ?.outwards[0]?.read("openFlowers_n");
    write(1, "fruiting.flowered", { open_n: 4 });
    expect(read(1.5)).toMatchObject({ value: 4, origin: "measured" });
    expect(read(6)).toMatchObject({ value: 0, origin: "assumed" });
  });
  it("gives brushed flowers a clearly better chance, never all of them", () => {
    const { write, figures } = bed({}, { air_C: 26 });
    write(1, "fruiting.flowered", { open_n: 3 });
    const still = figures(1.1)["setChance_frac"] as number;
    write(1.2, "fruiting.brushed", { open_n: 3 });
    const brushed = figures(1.3)["setChance_frac"] as number;
    expect(brushed).toBeGreaterThan(2 * still);
    expect(brushed).toBeLessThan(1);
  });
});

describe("ripening", () => {
  it("dates a tagged fruit with a range, and narrows it by its colour", () => {
    const { write, outlook } = bed();
    write(1, "fruiting.tagged", { fruits_n: 3, tag: "red", openedOn: "2026-01-05" });
    const dates = (day: number) => outlook(day).line?.dates_ms ?? [];
    const width = (day: number) => ((dates(day)[17] ?? 0) - (dates(day)[2] ?? 0)) / DAY_ms;
    const mid_d = ((dates(2)[10] ?? 0) - START_ms) / DAY_ms;
    expect(mid_d).toBeGreaterThan(50);
    expect(mid_d).toBeLessThan(66);
    const before = width(40);
    write(44, "fruiting.coloured", { colour: "turning", tag: "red" });
    expect(width(44.1)).toBeLessThan(0.7 * before);
  });
  it("carries its warmth along when the plant moves, and says where it cannot ripen", async () => {
    const { write, outlook, page } = bed();
    write(1, "fruiting.tagged", { fruits_n: 1, tag: "a" });
    write(30, "plant.moved", { to: "cold-1" });
    expect(outlook(31).line).toBeUndefined();
    expect((await page(31)).stuck[0]?.said).toMatch(/will not ripen/);
    write(40, "plant.moved", { to: "warm-1" });
    const [, , early] = outlook(41).line?.dates_ms ?? [];
    expect(early).toBeDefined();
    const mid_d = ((outlook(41).line?.dates_ms[10] ?? 0) - START_ms) / DAY_ms;
    expect(mid_d).toBeGreaterThan(62);
    expect(mid_d).toBeLessThan(75);
  });
  it("learns the sum of its own fruit", () => {
    const { write, figures } = bed();
    const usual = figures(1)["ripe_Cd"] as number;
    for (let each = 0; each < 4; each += 1) {
      write(1, "fruiting.tagged", { fruits_n: 1, tag: `t${each}`, openedOn: "2026-01-06" });
      write(40, "fruiting.coloured", { colour: "turning", tag: `t${each}` });
      write(46, "fruiting.picked", { fruits_n: 1, colour: "ripe", tag: `t${each}` });
    }
    expect(figures(47)["ripe_Cd"]).toBeLessThan(0.93 * usual);
  });
  it("doubts fruit that was ripe before any record", () => {
    const { write, outlook } = bed();
    write(1, "fruiting.tagged", { fruits_n: 1, tag: "a", openedOn: "2026-01-06" });
    write(20, "fruiting.coloured", { colour: "ripe", tag: "a" });
    expect(outlook(21).problems[0]?.message).toMatch(/faster than any record \(25 at least\)/);
  });
  it("asks to pick what was seen ripe, with care, and no spray before", () => {
    const { write, outlook, ledger } = bed();
    write(1, "fruiting.tagged", { fruits_n: 2, tag: "a", openedOn: "2026-01-06" });
    write(58, "fruiting.coloured", { colour: "ripe", tag: "a" });
    const task = outlook(58.5).tasks.find(({ work }) => work === "pick");
    expect(task?.care).toMatch(/gloves/);
    const limits = deskAt(ledger, { now_ms: START_ms + 58.5 * DAY_ms, language: "en", units: "metric" }).view(
      ME,
    )?.limits;
    expect(limits?.some(({ work }) => work === "spray")).toBe(true);
    write(59, task?.act.kind as string, task?.act.data as Json);
    expect(outlook(59.5).tasks).toEqual([]);
  });
});

describe("the page", () => {
  it("writes all open flowers by one key, in every language, and nothing when nothing is written", async () => {
    const { write, page } = bed();
    expect((await page(1, {})).said).toBe("No flowers written.");
    write(1.3, "fruiting.flowered", { open_n: 9 });
    const shown = await page(1.4, {});
    expect(shown.open).toMatchObject({
      flowers_n: 9,
      due_n: 9,
      acts: [{ kind: "fruiting.brushed", on: ME }],
    });
    expect((await page(1.4, {}, "de")).open.said).toBe("9 Blüten an 1 Pflanze");
  });
  it("never says a heat from looks, and says a laboratory's on its basis", async () => {
    const { write, page } = bed();
    expect(plantOf(await page(1)).heatSaid).toMatch(/No look tells heat\. Usual .* on dry basis/);
    write(2, "fruiting.assayed", { content_ug_g: 2000, basis: "dry", water_frac: 0.9 });
    expect(plantOf(await page(3)).heatSaid).toBe("Laboratory: 32,000 SHU dry, 3,200 SHU fresh.");
  });
  it("keeps seed lots with how they were kept and what a test said", async () => {
    const { write, page } = bed();
    write(2, "fruiting.seeded", { lot: "x", fruits_n: 1, kept: "none" });
    expect(plantOf(await page(3)).lots[0]?.said).toMatch(/not tested yet/);
    write(4, "fruiting.tested", { lot: "x", tested_n: 20, germinated_n: 18 });
    expect(plantOf(await page(5)).lots[0]?.said).toMatch(/germinates 87 %/);
  });
  it("refuses what makes no sense by name, value and limit", async () => {
    const { page } = bed();
    await expect(page(1, { plant: ME, keeping_n: -1 })).rejects.toThrow(
      /keeping_n is -1; expected 0 to 2000/,
    );
    await expect(page(1, { plants: 1 })).rejects.toThrow(/plants is asked of fruit/);
  });
});
