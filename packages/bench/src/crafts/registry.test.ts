import { describe, expect, it } from "vitest";
import { counter, GROWER, plantId, START_ms, TEST_SITE, testPen } from "../../test/toy.ts";
import { type AnyEntryKind, checkData, type Entry, type Json } from "../book/index.ts";
import { createLedger, houseKinds } from "../house/index.ts";
import { deskAt, logPage, plantPage } from "../pages/index.ts";
import { theRound } from "../round/index.ts";
import { sayFor } from "../words/index.ts";
import type { AnyCraft } from "./craft.ts";
import { crafts } from "./registry.ts";

/**
 * The architecture as a test: what every craft must hand the house. A craft that forgets a part does not pass.
 */
const says = (["en", "de"] as const).map((language) =>
  sayFor({ language, units: "metric", zone: TEST_SITE.zone, nameOf: (id) => `«${id}»` }),
);

const kinds: readonly (readonly [string, AnyEntryKind])[] = [
  ...houseKinds,
  ...crafts.flatMap((craft) => craft.kinds),
].map((kind) => [kind.kind, kind]);

const example = (kind: AnyEntryKind): Entry => ({
  ...testPen(createLedger({ crafts: [], site: TEST_SITE })).at(1, {
    kind: kind.kind,
    on: [plantId(1)],
    data: kind.example as Json,
  }),
  v: kind.v,
});

describe.each(kinds)("entry kind %s", (_name, kind) => {
  it("has an example that its schema takes", () => {
    expect(checkData(kind, kind.example)).toEqual([]);
  });

  it("refuses data of another shape and says where", () => {
    const problems = checkData(kind, { nonsense_xx: 1 });
    expect(problems.length).toBeGreaterThan(0);
    for (const { path, message } of problems) {
      expect(path).toMatch(/^data/);
      expect(message.length).toBeGreaterThan(5);
    }
  });

  it("is said in a sentence, in every language, with no hole in it", () => {
    const sentences = says.map((say) => kind.sentence(kind.example, say, example(kind)));
    for (const sentence of sentences) {
      expect(sentence.length).toBeGreaterThan(2);
      expect(sentence).not.toMatch(/undefined|NaN|\[object/);
    }
    expect(new Set(sentences).size).toBe(2);
  });

  it("has effects of the closed list", () => {
    for (const effect of kind.effects(kind.example, example(kind)))
      expect(typeof effect.effect).toBe("string");
  });

  it("carries the name of its craft or house part", () => {
    expect(kind.kind).toMatch(/^[a-z]+\.[a-z]+$/);
    expect(kind.v).toBeGreaterThanOrEqual(1);
  });
});

describe.each(crafts.map((craft) => [craft.name, craft] as const))("craft %s", (name, craft) => {
  const ledger = createLedger({ crafts: [craft], site: TEST_SITE });
  const pen = testPen(ledger, GROWER);
  ledger.add([
    pen.at(0, {
      kind: "bench.laid",
      on: ["b"],
      data: {
        name: "Sill",
        place: "sill",
        outdoors: false,
        order_n: 0,
        spots: [{ id: "s", name: "1" }],
        windowFaces_deg: 180,
      },
    }),
    pen.at(0.1, {
      kind: "plant.brought",
      on: [plantId(1)],
      data: {
        number: 1,
        habit: "thin",
        medium: "spongy",
        spot: "s",
        pot: { form: "round", top_cm: 12, depth_cm: 9 },
      },
    }),
  ]);

  it("names its kinds after itself", () => {
    for (const kind of craft.kinds) expect(kind.kind.startsWith(`${name}.`)).toBe(true);
  });

  it("moves with time by both rates and integrate, or stands still by neither", () => {
    const { rates, integrate }: AnyCraft = craft;
    expect(rates === undefined).toBe(integrate === undefined);
  });

  it("folds each of its kinds and stays plain data without NaN", () => {
    const own = createLedger({ crafts: [craft], site: TEST_SITE });
    const ownPen = testPen(own, GROWER);
    own.add([
      ownPen.at(0, { kind: "plant.brought", on: [plantId(1)], data: { habit: "thin", medium: "spongy" } }),
    ]);
    own.add(
      craft.kinds.map((kind, i) =>
        ownPen.at(24 * (i + 1), { kind: kind.kind, on: [plantId(1)], data: kind.example as Json }),
      ),
    );
    const state = own.stateAt(plantId(1), START_ms + 30 * 86_400_000);
    expect(state?.problems).toEqual([]);
    const text = JSON.stringify(state?.slices);
    expect(JSON.parse(text)).toEqual(state?.slices);
    expect(text).not.toContain("null");
  });

  it("shows a working for every task and number, each input with unit, origin and where it is from", () => {
    const days = [1, 3, 5, 8, 12];
    const outlooks = days.flatMap((day) => {
      const desk = deskAt(ledger, { now_ms: START_ms + day * 86_400_000, language: "en", units: "metric" });
      return desk.view(plantId(1))?.outlooks.map(({ outlook }) => outlook) ?? [];
    });
    const tasks = outlooks.flatMap((outlook) => outlook.tasks);
    for (const task of tasks) {
      expect(checkData(ledger.kinds.find(task.act.kind) as AnyEntryKind, task.act.data)).toEqual([]);
      expect(task.earliest_ms).toBeLessThanOrEqual(task.latest_ms);
    }
    // A craft may have nothing for hands to do at this plant; it never has nothing to say for its numbers.
    const workings = [
      ...tasks.map(({ working }) => working),
      ...outlooks.flatMap((outlook) => outlook.workings),
    ];
    expect(workings.length).toBeGreaterThan(0);
    for (const working of workings) {
      expect(working.formula.length).toBeGreaterThan(0);
      expect(working.source.length).toBeGreaterThan(0);
      for (const input of working.inputs) {
        expect(["measured", "learned", "assumed"]).toContain(input.origin);
        expect(input.from.length).toBeGreaterThan(0);
        expect(`${input.said}`).not.toMatch(/undefined|NaN/);
      }
    }
  });

  it("gives every assumption a range, a source and the measurement that replaces it", () => {
    for (const { value, min, max, source, replacedBy } of craft.assumptions) {
      expect(value).toBeGreaterThanOrEqual(min);
      expect(value).toBeLessThanOrEqual(max);
      expect(source.length).toBeGreaterThan(5);
      expect(replacedBy.length).toBeGreaterThan(5);
    }
  });
});

describe("a craft that stands still between entries", () => {
  const { rates: _rates, integrate: _integrate, ...still } = counter;

  it("keeps its very slice through midnights, beside one that moves", () => {
    const ledger = createLedger({
      crafts: [counter, { ...still, name: "still", kinds: [] }],
      site: TEST_SITE,
    });
    ledger.add([
      testPen(ledger).at(0, {
        kind: "plant.brought",
        on: [plantId(1)],
        data: { habit: "thin", medium: "spongy" },
      }),
    ]);
    const slices = [1, 30].map((day) => ledger.stateAt(plantId(1), START_ms + day * 86_400_000)?.slices);
    expect(slices[1]?.[1]).toBe(slices[0]?.[1]);
    expect(slices[1]?.[0]).not.toEqual(slices[0]?.[0]);
  });
});

describe("the house without any craft", () => {
  it("still keeps the book, walks the round and shows the plant", () => {
    const ledger = createLedger({ crafts: [], site: TEST_SITE });
    const pen = testPen(ledger);
    ledger.add([
      pen.at(0, {
        kind: "plant.brought",
        on: [plantId(1)],
        data: { number: 7, habit: "thin", medium: "spongy" },
      }),
      pen.at(1, { kind: "watering.watered", on: [plantId(1)], data: { volume_mL: 100, drained: "yes" } }),
    ]);
    const desk = deskAt(ledger, { now_ms: START_ms + 86_400_000, language: "en", units: "metric" });
    expect(theRound(desk).said).toBe("Nothing needs hands today.");
    expect(plantPage(desk, plantId(1))?.number).toBe("7");
    expect(logPage(desk)).toHaveLength(2);
    expect(logPage(desk)[0]?.state).toBe("newer");
  });
});
