import { describe, expect, it } from "vitest";
import { GROWER, plantId, START_ms, testLedger, testPen } from "../../test/toy.ts";
import { crafts } from "../crafts/registry.ts";
import { deskAt } from "../pages/index.ts";
import { asksOf } from "./asks.ts";
import { theRound } from "./round.ts";

const HELPER = "01980000-0000-7000-8000-0000000000f2";
const asked = (hours: number) =>
  ({ now_ms: START_ms + hours * 3_600_000, language: "en", units: "metric" }) as const;

describe("what the round asks", () => {
  it("two plants given one number stay, and the later is asked for a new one", () => {
    const ledger = testLedger(crafts);
    const one = testPen(ledger, GROWER, 1);
    const other = testPen(ledger, HELPER, 2, "01980000-0000-7000-8000-0000000000d2");
    ledger.add([
      other.at(2, {
        kind: "plant.brought",
        on: [plantId(2)],
        data: { number: 131, habit: "thin", medium: "spongy" },
      }),
      one.at(1, {
        kind: "plant.brought",
        on: [plantId(1)],
        data: { number: 131, habit: "fat", medium: "bark" },
      }),
    ]);
    const desk = deskAt(ledger, asked(24));
    expect([desk.numberOf(plantId(1)), desk.numberOf(plantId(2))]).toEqual(["131", "131?"]);
    const [ask] = theRound(desk).asks;
    expect(ask?.plants).toEqual([plantId(2)]);
    const draft = ask?.answers[0]?.entries[0];
    ledger.add([one.at(25, { kind: draft?.kind ?? "", on: draft?.on ?? [], data: draft?.data ?? {} })]);
    const after = deskAt(ledger, asked(26));
    expect(after.numberOf(plantId(2))).toBe("132");
    expect(asksOf(after)).toEqual([]);
  });

  it("a pot watered by two people within hours: asked, nothing dropped; either answer settles it", () => {
    const ledger = testLedger(crafts);
    const grower = testPen(ledger, GROWER, 1);
    const helper = testPen(ledger, HELPER, 2, "01980000-0000-7000-8000-0000000000d2");
    const water = {
      kind: "watering.watered",
      on: [plantId(1)],
      data: { volume_mL: 150, drained: "yes" },
    } as const;
    ledger.add([
      grower.at(0, {
        kind: "plant.brought",
        on: [plantId(1)],
        data: { number: 127, habit: "thin", medium: "spongy" },
      }),
      helper.at(5, water),
      grower.at(5.2, water),
    ]);
    const desk = deskAt(ledger, asked(8));
    const [ask] = asksOf(desk);
    expect(ask?.said).toMatch(/^127 was watered twice: .* Both true\?$/);
    expect(ledger.eventsOf(plantId(1))).toHaveLength(3);
    const drop = ask?.answers[1]?.entries[0];
    ledger.add([
      grower.at(9, {
        kind: "book.corrected",
        on: [],
        data: drop?.data ?? {},
        corrects: drop?.corrects ?? [],
      }),
    ]);
    expect(asksOf(deskAt(ledger, asked(10)))).toEqual([]);
    expect(ledger.eventsOf(plantId(1))).toHaveLength(2);
  });

  it("what a helper left stays until it is seen to", () => {
    const ledger = testLedger(crafts);
    const pen = testPen(ledger);
    ledger.add([
      pen.at(0, {
        kind: "plant.brought",
        on: [plantId(1)],
        data: { number: 7, habit: "thin", medium: "spongy" },
      }),
      pen.at(1, { kind: "round.left", on: [plantId(1)], data: { text: "leans" } }),
    ]);
    expect(asksOf(deskAt(ledger, asked(2)))[0]?.said).toContain("leans");
    ledger.add([pen.at(3, { kind: "round.settled", on: [plantId(1)], data: {} })]);
    expect(asksOf(deskAt(ledger, asked(4)))).toEqual([]);
  });

  it("a helper's wish to do what is held is the grower's question until the grower allows it or not", () => {
    const ledger = testLedger(crafts);
    const grower = testPen(ledger, GROWER, 1);
    const helper = testPen(ledger, HELPER, 2, "01980000-0000-7000-8000-0000000000d2");
    const wish = {
      kind: "round.overrode",
      on: [plantId(1)],
      data: { work: "feed", reason: "drenched from below" },
    } as const;
    ledger.add([
      grower.at(0, { kind: "person.joined", on: [GROWER], data: { role: "grower" } }),
      grower.at(0.1, { kind: "person.joined", on: [HELPER], data: { role: "helper" } }),
      grower.at(0.2, {
        kind: "plant.brought",
        on: [plantId(1)],
        data: { number: 7, habit: "thin", medium: "spongy" },
      }),
      helper.at(1, wish),
    ]);
    const desk = deskAt(ledger, asked(2));
    const [ask] = asksOf(desk);
    expect(ask).toMatchObject({ plants: [plantId(1)], growerOnly: true });
    expect(ask?.said).toMatch(/^7, feed though it is held: the helper asks\. drenched from below$/);
    // It is a wish: nothing was allowed by it.
    expect(desk.facts(plantId(1))?.rounds.overrode).toEqual([]);

    const refused = testLedger(crafts);
    refused.add([...ledger.records()].map(({ first }) => first));
    const [allow, not] = ask?.answers ?? [];
    for (const [book, answer] of [
      [ledger, allow],
      [refused, not],
    ] as const) {
      const draft = answer?.entries[0];
      if (!draft) throw new Error("an answer without an entry");
      book.add([grower.at(2.5, draft)]);
      expect(asksOf(deskAt(book, asked(3)))).toEqual([]);
    }
    expect(deskAt(ledger, asked(3)).facts(plantId(1))?.rounds.overrode).toMatchObject([wish.data]);
    expect(deskAt(refused, asked(3)).facts(plantId(1))?.rounds.overrode).toEqual([]);
  });
});
