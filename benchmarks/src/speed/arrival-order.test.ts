import type { Entry, EntryId, Json } from "@sillwood/bench/book";
import { crafts } from "@sillwood/bench/crafts";
import { createLedger, type Ledger } from "@sillwood/bench/house";
import { assumedSite } from "@sillwood/bench/pages";
import { expect, it } from "vitest";
import { type BigBookSize, bigBook } from "./big-book.ts";
import { seeded } from "./seeded.ts";

const NOW_ms = Date.UTC(2026, 9, 1, 16);
const HOUR_ms = 3_600_000;
const ASKED = { language: "en", units: "metric" } as const;

const FIRST_SEED = Number(process.env["SILLWOOD_SEED"] ?? 1);
const SEEDS_n = 12;

it("books of all crafts fold to one state in any order of arrival, in portions, twice, and from a snapshot", () => {
  for (let seed = FIRST_SEED; seed < FIRST_SEED + SEEDS_n; seed++)
    expect(arrivalOrder(seed), `seed ${seed}`).toBeUndefined();
});

/**
 * One book of all crafts with corrections, withdrawals and restored entries, which arrives in a random order, in portions, asked
 * in between, some of it twice, once from a snapshot; says what differs from the book that came whole and in order.
 */
function arrivalOrder(seed: number): string | undefined {
  const random = seeded(seed);
  const below = (n: number) => Math.floor(random() * n);
  const size: BigBookSize = {
    seed,
    plants_n: 2 + below(4),
    entries_n: 60 + below(200),
    spots_n: 10,
    days_n: 20 + below(40),
    until_ms: NOW_ms,
  };
  const book = bigBook(size);
  const firsts = [...book.portions()].flat().map(({ entry }) => entry);
  const entries = [...firsts, ...corrections(firsts, random, 1 + below(12))];
  const fold = () => createLedger({ crafts, site: assumedSite("UTC", ASKED) });
  const giveSeries = (ledger: Ledger) => {
    for (const { file, text } of book.series) ledger.addSeries(file, text);
  };
  const whole = fold();
  whole.add(entries);
  giveSeries(whole);
  const expected = stateOf(whole);

  const shuffled = entries
    .map((entry) => ({ entry, key: random() }))
    .sort((a, b) => a.key - b.key)
    .map(({ entry }) => entry);
  const piecemeal = fold();
  for (let i = 0; i < shuffled.length; ) {
    const portion = shuffled.slice(i, i + 1 + below(30));
    i += portion.length;
    piecemeal.add(random() < 0.2 ? [...portion, ...shuffled.slice(0, below(10))] : portion);
    if (random() < 0.3) stateOf(piecemeal);
    if (random() < 0.1) giveSeries(piecemeal);
  }
  giveSeries(piecemeal);
  if (stateOf(piecemeal) !== expected) return "another order of arrival gives another state";

  const cut = below(firsts.length);
  const before = fold();
  before.add(firsts.slice(0, cut));
  giveSeries(before);
  const snapshot = JSON.parse(JSON.stringify(before.snapshot())) as ReturnType<Ledger["snapshot"]>;
  const resumed = createLedger({ crafts, site: assumedSite("UTC", ASKED), snapshot });
  const inOrder = fold();
  inOrder.add(firsts);
  giveSeries(inOrder);
  const change = resumed.add(firsts.slice(cut));
  if (!change.stale && plantsOf(resumed) !== plantsOf(inOrder)) return "a snapshot gives another state";
  return undefined;
}

function corrections(firsts: readonly Entry[], random: () => number, n: number): Entry[] {
  return Array.from({ length: n }, (_, i) => {
    const first = firsts[Math.floor(random() * firsts.length)] as Entry;
    const what = random();
    const moved_ms = first.at_ms + Math.round((random() - 0.5) * 48) * HOUR_ms;
    const data: Json =
      what < 0.35
        ? { withdrawn: true }
        : what < 0.5
          ? { restored: true }
          : { data: first.data, at_ms: moved_ms };
    const last = firsts.at(-1) as Entry;
    const id = `${last.id.slice(0, 24)}${String(i).padStart(12, "0")}` as EntryId;
    const clock = `${new Date(NOW_ms + Math.floor(random() * 1000)).toISOString()}/${String(i).padStart(4, "0")}`;
    const { files: _files, ...bare } = first;
    return {
      ...bare,
      id,
      kind: "book.corrected",
      v: 1,
      at_ms: NOW_ms,
      on: [],
      data,
      clock,
      corrects: [first.id],
    };
  });
}

const plantsOf = (ledger: Ledger) =>
  JSON.stringify(ledger.plants().map((plant) => ledger.stateAt(plant, NOW_ms + HOUR_ms)));
const stateOf = (ledger: Ledger) =>
  plantsOf(ledger) + JSON.stringify([...ledger.house().places.benches, ...ledger.house().people.roles]);
