import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { counter, plantId, TEST_SITE, testLedger, testPen } from "../../test/toy.ts";
import type { Entry, EntryId, Json } from "../book/index.ts";
import { paceOf } from "../round/minutes.ts";
import { createLedger, type Ledger } from "./index.ts";

/** A book of a few plants with everything that can go wrong with order: moves, corrections, withdrawals, late entries. */
const bookArbitrary = fc.array(
  fc.record({
    hour: fc.integer({ min: 0, max: 24 * 40 }),
    act: fc.constantFrom(
      "measure",
      "move",
      "note",
      "walk",
      "end",
      "reopen",
      "number",
      "air",
      "correct",
      "withdraw",
      "restore",
      "lit",
    ),
    plant: fc.integer({ min: 1, max: 3 }),
    pick: fc.nat(50),
  }),
  { minLength: 1, maxLength: 40 },
);

type Act = { hour: number; act: string; plant: number; pick: number };

function writeBook(acts: readonly Act[]): Entry[] {
  const pen = testPen(testLedger());
  const entries: Entry[] = [
    pen.at(0, {
      kind: "bench.laid",
      on: ["b1"],
      data: {
        name: "Sill",
        place: "sill",
        outdoors: false,
        order_n: 1,
        spots: [
          { id: "s1", name: "1" },
          { id: "s2", name: "2" },
        ],
        windowFaces_deg: 180,
      },
    }),
    ...[1, 2, 3].map((n) =>
      pen.at(0.1 * n, {
        kind: "plant.brought",
        on: [plantId(n)],
        data: { number: 100 + n, habit: "thin", medium: "spongy", spot: "s1" },
      }),
    ),
  ];
  for (const { hour, act, plant, pick } of acts) {
    const on = [plantId(plant)];
    const target = entries[pick % entries.length] as Entry;
    const write = (kind: string, data: Json, ids: readonly string[] = on) =>
      entries.push(pen.at(hour, { kind, on: ids, data }));
    const correct = (data: Json) =>
      entries.push(pen.at(hour, { kind: "book.corrected", on: [], data, corrects: [target.id] }));
    if (act === "measure") write("plant.measured", { leaves_n: 10 + pick });
    else if (act === "move") write("plant.moved", { to: pick % 2 ? "s1" : "s2" });
    else if (act === "note") write("plant.noted", { text: `note ${pick}` });
    else if (act === "walk") write("round.walked", { bench: "b1" }, [plantId(1), plantId(2)]);
    else if (act === "end") write("plant.ended", { how: "died" });
    else if (act === "reopen") write("plant.reopened", {});
    else if (act === "number") write("plant.numbered", { number: 101 + (pick % 3) });
    else if (act === "air") write("bench.air", { dayAir_C: 18 + (pick % 10), nightAir_C: 15 }, ["b1"]);
    else if (act === "lit") write("bench.lit", { dli_mol_m2_d: 5 + pick, light: "window" }, ["s1"]);
    else if (target.kind === "book.corrected") continue;
    else if (act === "withdraw") correct({ withdrawn: true });
    else if (act === "restore") correct({ restored: true });
    else correct({ data: target.data, at_ms: target.at_ms + pick * 3_600_000 });
  }
  return entries;
}

const NOW_ms = Date.UTC(2026, 2, 20, 9);
const stateOf = (ledger: Ledger) => ({
  house: ledger.house(),
  plants: ledger.plants().map((plant) => ledger.stateAt(plant, NOW_ms)),
});
const inOneGo = (entries: readonly Entry[]) => {
  const ledger = testLedger([counter]);
  ledger.add(entries);
  return ledger;
};

describe("the ledger", () => {
  it("gives the same state whatever the order in which entries arrive", () => {
    fc.assert(
      fc.property(bookArbitrary, fc.infiniteStream(fc.nat()), (acts, shuffle) => {
        const entries = writeBook(acts);
        const shuffled = entries
          .map((entry) => ({ entry, key: shuffle.next().value as number }))
          .sort((a, b) => a.key - b.key)
          .map(({ entry }) => entry);
        expect(stateOf(inOneGo(shuffled))).toEqual(stateOf(inOneGo(entries)));
      }),
      { numRuns: 60 },
    );
  });

  it("gives the same state when entries come one by one, asked in between, as when they are folded from nothing", () => {
    fc.assert(
      fc.property(bookArbitrary, fc.infiniteStream(fc.nat()), (acts, shuffle) => {
        const entries = writeBook(acts);
        const ledger = testLedger([counter]);
        const shuffled = entries
          .map((entry) => ({ entry, key: shuffle.next().value as number }))
          .sort((a, b) => a.key - b.key);
        for (const { entry } of shuffled) {
          ledger.add([entry]);
          stateOf(ledger);
        }
        expect(stateOf(ledger)).toEqual(stateOf(inOneGo(entries)));
      }),
      { numRuns: 40 },
    );
  });

  it("folds an entry once, however often it comes", () => {
    fc.assert(
      fc.property(bookArbitrary, (acts) => {
        const entries = writeBook(acts);
        expect(stateOf(inOneGo([...entries, ...entries, ...entries.slice(3)]))).toEqual(
          stateOf(inOneGo(entries)),
        );
      }),
      { numRuns: 20 },
    );
  });

  it("keeps unknown kinds without folding them, and two contents under one id by the smaller hash", () => {
    const entries = writeBook([]);
    const first = entries[1] as Entry;
    const twin: Entry = { ...first, data: { habit: "fat", medium: "bark", number: 9 } };
    const newer: Entry = {
      ...first,
      id: "01980000-0000-7000-8000-aaaaaaaaaaaa" as EntryId,
      kind: "dancing.waltzed",
      data: {},
    };
    const one = inOneGo([...entries, twin, newer]);
    const other = inOneGo([newer, twin, ...entries]);
    expect(stateOf(one)).toEqual(stateOf(other));
    expect([...one.twins]).toEqual([first.id]);
    expect(one.record(newer.id)?.idle).toBe("newer");
  });
});

describe("a snapshot", () => {
  it("with the entries since gives what the whole book gives, or says that it is stale", () => {
    fc.assert(
      fc.property(bookArbitrary, fc.nat(40), (acts, cut) => {
        const entries = writeBook(acts);
        const before = entries.slice(0, Math.min(entries.length, 4 + cut));
        const since = entries.slice(before.length);
        const snapshot = JSON.parse(JSON.stringify(inOneGo(before).snapshot()));
        const ledger = createLedger({ crafts: [counter], site: TEST_SITE, snapshot });
        const stale = since.map((entry) => ledger.add([entry])).some((change) => change.stale);
        const whole = inOneGo(entries);
        if (!stale)
          expect(ledger.plants().map((plant) => ledger.stateAt(plant, NOW_ms))).toEqual(
            whole.plants().map((plant) => whole.stateAt(plant, NOW_ms)),
          );
        else expect(since.length).toBeGreaterThan(0);
      }),
      { numRuns: 60 },
    );
  });

  it("adopted by a ledger of the same entries saves their run, whatever comes later", () => {
    fc.assert(
      fc.property(bookArbitrary, fc.nat(40), (acts, cut) => {
        const entries = writeBook(acts);
        const before = entries.slice(0, Math.min(entries.length, 4 + cut));
        const snapshot = JSON.parse(JSON.stringify(inOneGo(before).snapshot()));
        const ledger = inOneGo(before);
        expect(ledger.adopt(snapshot)).toBe(true);
        for (const entry of entries.slice(before.length)) ledger.add([entry]);
        expect(stateOf(ledger)).toEqual(stateOf(inOneGo(entries)));
      }),
      { numRuns: 60 },
    );
  });

  it("tells as well how fast people walk", () => {
    const pen = testPen(testLedger());
    const entries = writeBook([]);
    for (let day = 1; day <= 30; day++)
      entries.push(
        pen.at(24 * day, {
          kind: "round.walked",
          on: [plantId(1)],
          data: { bench: "b1", minutes: 10 + day, tasks_n: 10 },
        }),
      );
    const whole = inOneGo(entries);
    const ledger = createLedger({ crafts: [counter], site: TEST_SITE, snapshot: whole.snapshot() });
    expect(whole.walks().length).toBe(30);
    expect(ledger.walks().length).toBe(20);
    expect(paceOf(ledger)).toEqual(paceOf(whole));
  });

  it("is not adopted beside other files", () => {
    const ledger = inOneGo(writeBook([]));
    expect(ledger.adopt({ ...ledger.snapshot(), files: [["f".repeat(64), ""]] })).toBe(false);
  });

  it("is not stale when entries only come after it", () => {
    const entries = writeBook([
      { hour: 5, act: "note", plant: 1, pick: 1 },
      { hour: 90, act: "move", plant: 1, pick: 1 },
      { hour: 95, act: "measure", plant: 2, pick: 3 },
    ]);
    const ledger = createLedger({
      crafts: [counter],
      site: TEST_SITE,
      snapshot: inOneGo(entries.slice(0, 5)).snapshot(),
    });
    expect(ledger.add(entries.slice(5)).stale).toBe(false);
    expect(stateOf(ledger).plants).toEqual(stateOf(inOneGo(entries)).plants);
  });
});

describe("the run of a plant", () => {
  it("cuts its history at midnights and entries, without a gap", () => {
    const entries = writeBook([{ hour: 30, act: "note", plant: 1, pick: 1 }]);
    const ledger = inOneGo(entries);
    const state = ledger.stateAt(plantId(1), NOW_ms);
    const slice = state?.slices[0] as { elapsed_d: number; steps_n: number };
    const first_ms = (entries[1] as Entry).at_ms;
    expect(slice.elapsed_d).toBeCloseTo((NOW_ms - first_ms) / 86_400_000, 9);
    // 74 midnights between 5 January and 20 March, one entry, and the end.
    expect(slice.steps_n).toBe(74 + 1 + 1);
  });

  it("stands still after its end and goes on when it is reopened", () => {
    const acts = [
      { hour: 24, act: "end", plant: 1, pick: 0 },
      { hour: 72, act: "reopen", plant: 1, pick: 0 },
    ];
    const slice = inOneGo(writeBook(acts)).stateAt(plantId(1), NOW_ms)?.slices[0] as { elapsed_d: number };
    const whole = inOneGo(writeBook([])).stateAt(plantId(1), NOW_ms)?.slices[0] as { elapsed_d: number };
    expect(whole.elapsed_d - slice.elapsed_d).toBeCloseTo(2, 9);
  });

  it("sees days of 23 and 25 hours", () => {
    const ledger = inOneGo(writeBook([]));
    const spring = ledger.airAt("s1", "2026-03-29");
    const autumn = ledger.airAt("s1", "2026-10-25");
    expect((spring.to_ms - spring.from_ms) / 3_600_000).toBe(23);
    expect((autumn.to_ms - autumn.from_ms) / 3_600_000).toBe(25);
  });
});
