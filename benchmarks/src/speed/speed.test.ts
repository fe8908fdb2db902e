import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { accept, acceptedKinds } from "@sillwood/bench/book";
import { expect, it } from "vitest";
import { appendSpeed } from "./append.ts";
import { type BigBookSize, bigBook } from "./big-book.ts";
import { bigKinds } from "./big-kinds.ts";
import { compilerHere } from "./in-c.ts";
import { keepBigBook } from "./kept-book.ts";
import { oneEntrySpeed } from "./one-entry.ts";
import { etSpeed } from "./reference-et.ts";
import { windowSpeed } from "./reference-window.ts";
import { readAll, start } from "./start.ts";

// Samples of the benchmarks: that they run, and that what they time gives the right numbers. Nothing here looks at a clock.
const NOW_ms = Date.UTC(2026, 9, 1, 16);
const SMALL: BigBookSize = {
  seed: 5,
  plants_n: 20,
  entries_n: 2500,
  spots_n: 20,
  days_n: 120,
  until_ms: NOW_ms,
};

it("a big book holds exactly what was asked for, passes the gate, and is the same from the same seed", () => {
  const entries = [...bigBook(SMALL).portions()].flat();
  const kinds = acceptedKinds(bigKinds);
  expect(entries.length).toBe(SMALL.entries_n);
  for (const { entry, hash, text } of entries)
    expect(accept(entry, kinds)).toMatchObject({ ok: true, state: "known", hash, text });
  expect(entries.every(({ entry }) => entry.at_ms < NOW_ms)).toBe(true);
  expect(new Set(entries.map(({ entry }) => entry.kind)).size).toBeGreaterThan(8);
  expect([...bigBook(SMALL).portions()].flat().at(-1)).toEqual(entries.at(-1));
  expect([...bigBook({ ...SMALL, seed: 6 }).portions()].flat().at(-1)).not.toEqual(entries.at(-1));
});

it("reference ET in C, over arrays and one by one are the same numbers", () => {
  const cc = compilerHere();
  const speed = etSpeed(2000, 1, 3, cc);
  expect(speed.apart_mm_d).toBeLessThan(1e-9);
  if (cc !== undefined) expect(speed.c?.apart_mm_d).toBeLessThan(1e-9);
});

it("a year of window light in C is the same numbers as ours, and so is what the spot sees", () => {
  const cc = compilerHere();
  const speed = windowSpeed(1, 3, cc);
  expect(speed.level_mol_m2_d).toBeGreaterThan(2);
  if (cc === undefined) return;
  expect(speed.c?.viewApart_frac).toBeLessThan(1e-12);
  expect(speed.c?.apart_mol_m2_d).toBeLessThan(1e-9);
});

it("what is appended while it is timed is in the book", async () => {
  expect((await appendSpeed(2, 4)).kept_n).toBe(40);
});

it("a start from the checkpoint draws the round of a start from all entries", async () => {
  const folder = mkdtempSync(join(tmpdir(), "sillwood-speed-"));
  try {
    const path = join(folder, "small.book");
    await keepBigBook(path, SMALL);
    expect(await readAll(path)).toBeGreaterThan(0);
    const cold = await start(path, NOW_ms, "entries", true);
    const kept = await start(path, NOW_ms, "checkpoint");
    expect(cold.plants_n).toBe(SMALL.plants_n);
    expect(kept.round).toBe(cold.round);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});

it("pages after one new entry are those of a fold from nothing", () => {
  const speed = oneEntrySpeed(SMALL, 3);
  expect(speed.pages_n).toBeGreaterThan(3);
  expect(speed.differing_n).toBe(0);
});
