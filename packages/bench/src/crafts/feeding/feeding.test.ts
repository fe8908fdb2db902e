import { stageTargets } from "@sillwood/science/feed";
import { describe, expect, it } from "vitest";
import { plantId, START_ms, TEST_SITE, testPen } from "../../../test/toy.ts";
import type { Json } from "../../book/entry.ts";
import { checkData } from "../../book/kinds.ts";
import { createLedger } from "../../house/index.ts";
import { craftPage, deskAt } from "../../pages/index.ts";
import { analysed, labelled } from "../../supplies/label.ts";
import { crafts } from "../registry.ts";
import { FED, MIXED } from "./kinds.ts";
import type { FeedAsk, FeedPage } from "./page-shape.ts";

const DAY_ms = 86_400_000;
const grow = labelled.example;
const lime = {
  form: "solid",
  N_frac: 0.155,
  nitrateN_frac: 0.144,
  ammoniumN_frac: 0.011,
  Ca_frac: 0.19,
  caAs: "element",
  tool: "scale",
  step_g: 0.1,
} as const;
const potash = {
  form: "solid",
  N_frac: 0,
  K_frac: 0.5,
  kAs: "oxide",
  S_frac: 0.17,
  sAs: "element",
  tool: "scale",
  step_g: 0.1,
} as const;
const epsom = {
  form: "solid",
  N_frac: 0,
  Mg_frac: 0.0986,
  mgAs: "element",
  S_frac: 0.13,
  sAs: "element",
  tool: "scale",
} as const;

const bottles = { "bottle-a": grow, "salt-c": lime, "salt-k": potash, "salt-m": epsom };

function bench(labels: Readonly<Record<string, unknown>> = bottles) {
  const ledger = createLedger({ crafts, site: TEST_SITE });
  const pen = testPen(ledger);
  const write = (at_h: number, kind: string, on: readonly string[], data: unknown) =>
    ledger.add([pen.at(at_h, { kind, on, data: data as Json })]);
  write(0, "plant.brought", [plantId(1)], {
    number: 1,
    habit: "thin",
    medium: "spongy",
    pot: { form: "round", top_cm: 12, depth_cm: 9 },
  });
  Object.entries(labels).forEach(([id, label], i) => {
    const unit = (label as { form: string }).form === "liquid" ? "mL" : "g";
    write(1 + i, "supply.bought", [id], {
      name: id,
      what: "feed",
      amount: 500,
      unit,
      price_minor: 1000,
      currency: "EUR",
    });
    write(1.5 + i, labelled.kind, [id], label);
  });
  const desk = (day: number) =>
    deskAt(ledger, { now_ms: START_ms + day * DAY_ms, language: "en", units: "metric" });
  const page = (day: number, ask: FeedAsk = {}) =>
    craftPage(desk(day), "feeding", ask as unknown as Json) as Promise<FeedPage>;
  return { ledger, write, desk, page };
}

describe("a label that is typed", () => {
  const refused = (label: object) => checkData(labelled, label).map(({ message }) => message);
  it("with K and no oxide said is asked for it, with how far apart they are", () => {
    const { kAs: _, ...unsaid } = grow;
    expect(refused(unsaid)).toEqual([
      "K 8 % and no oxide or element said: that is 17 % apart; expected kAs as the label prints it, K2O or K",
    ]);
  });
  it("with forms of nitrogen that are not its total, or a liquid without its basis, is refused", () => {
    expect(refused({ ...grow, ammoniumN_frac: 0.03 })[0]).toMatch(/add up to 7 %; expected 6 %/);
    const { basis: _, ...unsaid } = grow;
    expect(refused(unsaid)[0]).toMatch(/basis is missing/);
    expect(refused({ ...grow, K_frac: 1.6 })[0]).toMatch(/1.6; expected 0 to 1.5/);
    expect(refused({ ...grow, form: "solid", basis: undefined })[0]).toMatch(/tool is syringe/);
  });
  it("without a split may be kept, and the card says what was taken", async () => {
    const { nitrateN_frac: _, ammoniumN_frac: __, ...unsplit } = grow;
    expect(refused(unsplit)).toEqual([]);
    const { recipe } = await bench({ "bottle-a": unsplit, "salt-c": lime, "salt-m": epsom }).page(30, {
      volume_L: 4,
    });
    const isIn = recipe?.doses.some(({ supply }) => supply === "bottle-a");
    expect(recipe?.notes.some((note) => note.includes("half taken as ammonium"))).toBe(isIn);
  });
});

describe("the mixing desk", () => {
  it("without a bottle says so and asks for a label", async () => {
    const page = await bench({}).page(1);
    expect(page.recipe).toBeUndefined();
    expect(page.trouble?.said).toBe("No bottle on the shelf yet. Read one label.");
  });

  it("gives whole steps in the order of hands, calcium last, and how the meter should read", async () => {
    const { recipe, water } = await bench().page(1, { volume_L: 4 });
    if (!recipe) throw new Error("no recipe");
    expect(water).toMatchObject({ id: "usual", origin: "assumed" });
    for (const { steps_n } of recipe.doses) expect(Number.isInteger(steps_n)).toBe(true);
    expect(recipe.expected_mS_cm).toBeLessThanOrEqual(stageTargets["in leaf"].conductivity_mS_cm + 1e-9);
    expect(recipe.low_mS_cm).toBeLessThan(recipe.expected_mS_cm);
    const lined = recipe.steps.findIndex((step) => step.startsWith("salt-c"));
    if (lined >= 0)
      for (const { name } of recipe.doses)
        expect(recipe.steps.findIndex((step) => step.startsWith(name))).toBeLessThanOrEqual(lined);
    expect(recipe.steps.at(-1)).toBe("read the meter before you pour");
    expect(recipe.trade.map(({ products_n }) => products_n)).toEqual([1, 2, 3, 4]);
    expect(recipe.costSaid).toMatch(/€/);
  });

  it("with a reading off says do not pour yet, and two slips; within the band writes it with the mix", async () => {
    const { page } = bench();
    const plain = await page(1, { volume_L: 4 });
    const expected = plain.recipe?.expected_mS_cm ?? 0;
    const wrong = await page(1, { volume_L: 4, read: { value: expected * 1.5, scale: "mS/cm" } });
    expect(wrong.reading?.state).toBe("doubtful");
    expect(wrong.reading?.said).toMatch(/Do not pour yet/);
    expect(wrong.reading?.slips).toHaveLength(2);
    expect(wrong.reading?.act).toBeUndefined();
    const unit = await page(1, { volume_L: 4, read: { value: expected * 1000, scale: "mS/cm" } });
    expect(unit.reading?.slips[0]).toMatch(/^the number is in µS\/cm/);
    const right = await page(1, { volume_L: 4, read: { value: expected * 1000, scale: "uS/cm" } });
    expect(right.reading?.state).toBe("good");
    await expect(page(1, { read: { value: -1, scale: "mS/cm" } })).rejects.toThrow(
      "reading is -1; expected 0 to 100000",
    );
    await expect(page(1, { volume_L: 0 })).rejects.toThrow("volume is 0; expected 0.05 to 1000 L");
  });

  it("with salty water says how much rain would do, and with that rain mixes", async () => {
    const { write, page } = bench();
    write(20, analysed.kind, ["tap"], { ...analysed.example, Na_mg_L: 120 });
    const salty = await page(2, { volume_L: 4 });
    expect(salty.recipe).toBeUndefined();
    expect(salty.trouble?.said).toMatch(/past the limit on Na/);
    expect((await page(2, { volume_L: 4, pure_frac: 0.7 })).recipe).toBeDefined();
  });

  it("changes with its aims: a grower who wants no nitrogen gets less of it", async () => {
    const { ledger, write, page } = bench();
    const before =
      (await page(1, { volume_L: 4 })).recipe?.elements.find(({ of }) => of === "N")?.value_mg_L ?? 0;
    write(25, "assumption.set", ["book"], { key: "feedAimNLeaf_mg_L", value: 40 });
    const after =
      (await page(2, { volume_L: 4 })).recipe?.elements.find(({ of }) => of === "N")?.value_mg_L ?? 0;
    expect(ledger.assumed("feedAimNLeaf_mg_L")).toBe(40);
    expect(after).toBeLessThan(before - 20);
  });
});

describe("this pot today", () => {
  it("is not fed in fresh medium, is fed later, and not after a hard cut", () => {
    const { write, desk } = bench();
    const does = (day: number) => {
      const outlook = desk(day)
        .view(plantId(1))
        ?.outlooks.find(({ craft }) => craft === "feeding")?.outlook;
      return outlook?.figures["feedDoes"];
    };
    for (let day = 4; day < 60; day += 4)
      write(24 * day, "watering.watered", [plantId(1)], { volume_mL: 150, drained: "yes" });
    expect(does(3)).toBe("wait");
    expect([60, 62, 64].map(does)).toContain("feed");
    write(24 * 61, "potting.cut", [plantId(1)], { leavesKept_frac: 0.2 });
    const held = desk(62).view(plantId(1));
    expect(held?.limits.some(({ work, by }) => work === "feed" && by === "feeding")).toBe(true);
  });

  it("is fed from the tank that was mixed for it, and the ledger of the pot gets what was in it", () => {
    const { write, ledger, desk } = bench();
    const solution = { NO3N_mg_L: 100, K_mg_L: 140 };
    write(48, MIXED, [plantId(1)], { tank: "A", volume_L: 2, doses: [], solution, expected_mS_cm: 1.2 });
    const nitrogen = () => ledger.stateAt(plantId(1), START_ms + 3 * DAY_ms);
    expect(nitrogen()?.problems).toEqual([]);
    const before = desk(2.2).view(plantId(1))?.outwards[0]?.read("nitrogen_mg").value ?? 0;
    write(52, FED, [plantId(1)], { volume_mL: 100, drained: "no", solution, tank: "A" });
    const after = desk(2.2).view(plantId(1))?.outwards[0]?.read("nitrogen_mg").value ?? 0;
    expect(after - before).toBeCloseTo(10, 0);
  });
});
