import fc from "fast-check";
import { expect, it } from "vitest";
import { plantId, seeded, TEST_SITE, testLedger, testPen } from "../../test/toy.ts";
import type { Entry } from "../book/entry.ts";
import { sha256Hex } from "../book/hash.ts";
import { createLedger } from "../house/ledger.ts";
import { FORECAST_ISSUED } from "./kinds.ts";

const data = (date: string) => ({ date, engine: "3.1", inputs: sha256Hex(date), plants_n: 1 });

/** Two devices without a line, each with forecasts of its own for some of the days. */
function book(
  days: readonly { readonly day: number; readonly hour: number; readonly device: number }[],
): Entry[] {
  const pens = [1, 2].map((n) =>
    testPen(testLedger(), undefined, n, `01980000-0000-7000-8000-0000000000d${n}`),
  );
  return days.map(({ day, hour, device }, i) =>
    (pens[device] as ReturnType<typeof testPen>).at(24 * day + hour, {
      kind: FORECAST_ISSUED,
      on: [],
      data: data(`2026-01-${String(5 + day).padStart(2, "0")}`),
      files: [sha256Hex(`file ${i}`)],
    }),
  );
}

it("counts the earlier clock of two for one day, whatever the order in which they arrive", () => {
  const [late, early] = book([
    { day: 0, hour: 4, device: 0 },
    { day: 0, hour: 2, device: 1 },
  ]) as [Entry, Entry];
  for (const order of [
    [late, early],
    [early, late],
  ]) {
    const ledger = testLedger();
    for (const entry of order) ledger.add([entry]);
    expect([...ledger.house().issued.values()].map(({ file }) => file)).toEqual(early.files);
  }
  const anyDays = fc.array(
    fc.record({
      day: fc.nat(6),
      hour: fc.double({ min: 0, max: 12, noNaN: true }),
      device: fc.nat(1),
    }),
    { maxLength: 12 },
  );
  fc.assert(
    fc.property(anyDays, fc.nat(), (days, seed) => {
      const entries = book(days);
      const dice = seeded(seed);
      const shuffled = entries.map((entry) => ({ entry, key: dice() })).sort((a, b) => a.key - b.key);
      const one = testLedger();
      one.add(entries);
      const other = testLedger();
      for (const { entry } of shuffled) other.add([entry]);
      const sorted = (ledger: typeof one) => [...ledger.house().issued].sort(([a], [b]) => (a < b ? -1 : 1));
      expect(sorted(other)).toEqual(sorted(one));
      for (const [date, { clock }] of one.house().issued)
        for (const entry of entries)
          if ((entry.data as { date: string }).date === date) expect(clock <= entry.clock).toBe(true);
    }),
    { numRuns: 60 },
  );
});

it("lets the other count when one is withdrawn, and survives a snapshot", () => {
  const pen = testPen(testLedger());
  const entries = book([
    { day: 0, hour: 2, device: 0 },
    { day: 0, hour: 4, device: 1 },
  ]);
  const withdrawn = pen.at(9, {
    kind: "book.corrected",
    on: [],
    data: { withdrawn: true },
    corrects: [(entries[0] as Entry).id],
  });
  const ledger = testLedger();
  ledger.add([...entries, withdrawn]);
  expect([...ledger.house().issued.values()].map(({ file }) => file)).toEqual(entries[1]?.files);
  const snapshot = JSON.parse(JSON.stringify(ledger.snapshot()));
  const again = createLedger({ crafts: [], site: TEST_SITE, snapshot });
  expect([...again.house().issued]).toEqual([...ledger.house().issued]);
});

it("runs no plant again: nothing that grows depends on what was said of it", () => {
  const ledger = testLedger();
  const pen = testPen(ledger);
  ledger.add([
    pen.at(0, {
      kind: "plant.brought",
      on: [plantId(1)],
      data: { number: 1, habit: "thin", medium: "spongy" },
    }),
  ]);
  const change = ledger.add(book([{ day: 1, hour: 1, device: 0 }]));
  expect([...change.plants]).toEqual([]);
});
