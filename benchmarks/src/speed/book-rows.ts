import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { BigBookSize } from "./big-book.ts";
import { inAProcess } from "./in-a-process.ts";
import { type Rows, seconds } from "./rows.ts";
import type { Start } from "./start.ts";

const RUNS_n = 3;
const NOW_ms = Date.UTC(2026, 9, 1, 16);

const bookOf = (plants_n: number, seed: number): BigBookSize => ({
  seed,
  plants_n,
  entries_n: plants_n * 250,
  spots_n: plants_n / 20,
  days_n: 365,
  until_ms: NOW_ms,
});

const fastest = (starts: readonly Start[]): Start => starts.reduce((a, b) => (b.ms < a.ms ? b : a));

/** A book of a thousand plants and one of four thousand, started cold from their entries and from the kept fold. */
export async function bookRows(rows: Rows, seed: number): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), "sillwood-bench-"));
  try {
    const small = join(folder, "thousand.book");
    await inAProcess("keep", small, bookOf(1000, seed));
    const parse_ms = Math.min(...(await times(RUNS_n, () => inAProcess("read", small))));
    await inAProcess("start", small, NOW_ms, "entries", true);
    const cold = fastest(await times(RUNS_n, () => inAProcess("start", small, NOW_ms, "entries")));
    const kept = fastest(await times(RUNS_n, () => inAProcess("start", small, NOW_ms, "checkpoint")));
    const size = "1,000 plants, 250,000 entries, 50 spots";
    const parts = (one: Start) =>
      `to the book ${seconds(one.load_ms)}, fold and round ${seconds(one.round_ms)}; the processor worked ${seconds(one.cpu_ms)}`;
    rows.add(
      `cold start to the round, ${size}, from the store without cache`,
      cold.ms / 1000,
      "s",
      `reading and parsing the same entries alone ${seconds(parse_ms)}; ${parts(cold)}`,
      "under 5 s",
      cold.ms < 5000,
    );
    rows.add(
      "the same from the checkpoint",
      kept.ms / 1000,
      "s",
      `without it ${seconds(cold.ms)}; ${parts(kept)}; ${kept.round === cold.round ? "the same round" : "another round"}`,
      "under 1 s, the same round",
      kept.ms < 1000 && kept.round === cold.round,
    );
    const large = join(folder, "four-thousand.book");
    await inAProcess("keep", large, bookOf(4000, seed));
    const cold4 = fastest(await times(RUNS_n - 1, () => inAProcess("start", large, NOW_ms, "entries")));
    rows.add(
      "1,000,000 entries, 4,000 plants: time as a multiple of that of 250,000",
      cold4.ms / cold.ms,
      "times",
      `${seconds(cold4.ms)} beside ${seconds(cold.ms)}; processor ${(cold4.cpu_ms / cold.cpu_ms).toFixed(2)} times`,
      "at most 4.6",
      cold4.ms <= 4.6 * cold.ms,
    );
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

async function times<Result>(n: number, task: () => Promise<Result>): Promise<Result[]> {
  const results: Result[] = [];
  for (let i = 0; i < n; i++) results.push(await task());
  return results;
}

/** One entry into a book of a thousand plants that is open. */
export async function oneEntryRows(rows: Rows, seed: number): Promise<void> {
  const speed = await inAProcess("oneEntry", bookOf(1000, seed), 24);
  const same = `${speed.pages_n} pages, ${speed.differing_n} unlike those of a full refold`;
  rows.add(
    "one new entry: the touched plant's page, 1,000 plants",
    speed.plant_ms,
    "ms",
    `fastest ${speed.fastest_ms.toFixed(2)} ms; a full refold takes ${seconds(speed.refold_ms)}; ${same}`,
    "under 5 ms, never unlike a full refold",
    speed.plant_ms < 5 && speed.differing_n === 0,
  );
  rows.add(
    "one new entry: its bench neighbours",
    speed.bench_ms,
    "ms",
    `${speed.neighbours_n} neighbours`,
    "within 200 ms, never unlike a full refold",
    speed.bench_ms <= 200 && speed.differing_n === 0,
  );
}
