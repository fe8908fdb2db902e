import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { testLedger, testPen } from "../../test/toy.ts";
import type { Json } from "../book/index.ts";

function written(acts: readonly [kind: string, on: string, data: Json][]) {
  const ledger = testLedger();
  const pen = testPen(ledger);
  ledger.add(acts.map(([kind, on, data], i) => pen.at(i, { kind, on: [on], data })));
  return ledger.house();
}
const start: [string, string, Json] = ["batch.started", "a", { name: "Sowing", habit: "thin", count_n: 60 }];

describe("batches", () => {
  it("split, lose and merge with every plant accounted for", () => {
    const { batches } = written([
      start,
      ["batch.split", "a", { into: "b", name: "Early", count_n: 20 }],
      ["batch.lost", "b", { count_n: 3, why: "damped off" }],
      ["batch.merged", "b", { into: "a" }],
    ]).batches;
    expect(batches.get("a")).toMatchObject({ count_n: 57, lost_n: 3 });
    expect(batches.get("b")).toMatchObject({ count_n: 0, mergedInto: "a" });
  });

  it("make a problem, not a crash, of plants that are not there", () => {
    const house = written([
      start,
      ["batch.lost", "a", { count_n: 61 }],
      ["batch.merged", "a", { into: "nowhere" }],
      ["batch.split", "zz", { into: "c", name: "x", count_n: 1 }],
    ]);
    expect(house.batches.problems.map(({ message }) => message)).toEqual([
      "61 plants taken from a batch that has 60",
      "merged into a batch that is not in the book",
      "1 plants taken from a batch that is not in the book",
    ]);
    expect(house.batches.batches.get("a")?.count_n).toBe(60);
  });

  it("never gain or lose a plant by splitting and merging", () => {
    const act = fc.record({
      kind: fc.constantFrom("split", "merged", "lost"),
      from: fc.integer({ min: 0, max: 4 }),
      to: fc.integer({ min: 0, max: 4 }),
      n: fc.integer({ min: 1, max: 30 }),
    });
    fc.assert(
      fc.property(fc.array(act, { maxLength: 25 }), (acts) => {
        const house = written([
          ["batch.started", "b0", { name: "x", habit: "thin", count_n: 100 }],
          ...acts.map(({ kind, from, to, n }, i): [string, string, Json] =>
            kind === "split"
              ? ["batch.split", `b${from}`, { into: `s${i}`, name: "y", count_n: n }]
              : kind === "merged"
                ? ["batch.merged", `s${from}`, { into: `b${to}` }]
                : ["batch.lost", `b${from}`, { count_n: n }],
          ),
        ]);
        const all = [...house.batches.batches.values()];
        expect(all.reduce((sum, { count_n, lost_n }) => sum + count_n + lost_n, 0)).toBe(100);
        expect(all.every(({ count_n }) => count_n >= 0)).toBe(true);
      }),
      { numRuns: 60 },
    );
  });
});

describe("supplies", () => {
  it("are bought, used, thrown away and put right by a count", () => {
    const { supplies } = written([
      [
        "supply.bought",
        "m",
        {
          name: "peat mix",
          what: "medium",
          amount: 40_000,
          unit: "mL",
          price_minor: 1290,
          currency: "EUR",
          lot: "A7",
          expires: "2028-01-31",
        },
      ],
      ["supply.used", "m", { amount: 700 }],
      ["supply.thrown", "m", { amount: 300, why: "mouldy" }],
      [
        "supply.bought",
        "m",
        { name: "peat mix", what: "medium", amount: 1000, unit: "mL", price_minor: 100, currency: "EUR" },
      ],
    ]);
    expect(supplies.get("m")).toMatchObject({ onHand: 40_000, paid_minor: 1390, lot: "A7" });
    expect(
      written([
        start,
        ["supply.bought", "m", { name: "x", what: "other", amount: 5, unit: "g" }],
        ["supply.counted", "m", { amount: 3 }],
      ]).supplies.get("m")?.onHand,
    ).toBe(3);
  });
});

describe("people", () => {
  it("the first grower founds the book; a helper's entry of a grower's kind stays a request", () => {
    const ledger = testLedger();
    const grower = testPen(ledger, "g");
    const helper = testPen(ledger, "h", 2, "01980000-0000-7000-8000-0000000000d2");
    const site = {
      name: "Yard",
      latitude_deg: 50,
      longitude_deg: 8,
      elevation_m: 100,
      zone: "Europe/Berlin",
      currency: "EUR",
    };
    ledger.add([
      grower.at(0, { kind: "person.joined", on: ["g"], data: { role: "grower" } }),
      grower.at(1, { kind: "person.joined", on: ["h"], data: { role: "helper" } }),
      helper.at(2, { kind: "person.joined", on: ["h"], data: { role: "grower" } }),
      helper.at(3, { kind: "site.described", on: ["book"], data: site }),
    ]);
    expect(ledger.house().people.roles.get("h")).toBe("helper");
    expect(ledger.house().places.site.name).toBe("test yard");
    ledger.add([grower.at(4, { kind: "site.described", on: ["book"], data: site })]);
    expect(ledger.house().places.site.name).toBe("Yard");
  });
});
