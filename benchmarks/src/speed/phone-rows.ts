import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build } from "../../../tools/build.mjs";
import { inAProcess } from "./in-a-process.ts";
import { median } from "./measured.ts";
import { type Rows, seconds } from "./rows.ts";

const NOW_ms = Date.UTC(2026, 9, 1, 16);
const SLOWER = 4;
const RUNS_n = 5;

/** The app on a slowed phone with a grown book, and the marks of its first screen. */
export async function phoneRows(rows: Rows, seed: number, say: (line: string) => void): Promise<void> {
  await build(["web", "cli"], { ifStale: true });
  const folder = mkdtempSync(join(tmpdir(), "sillwood-phone-"));
  try {
    const book = join(folder, "phone.book");
    const size = { plants_n: 300, entries_n: 60_000, spots_n: 50, days_n: 365, until_ms: NOW_ms };
    await inAProcess("keep", book, { seed, ...size });
    const here = await inAProcess("phone", book, NOW_ms, 1, 3);
    const starts = await inAProcess("phone", book, NOW_ms, SLOWER, RUNS_n);
    const usable_ms = median(starts.map((one) => one.usable_ms));
    const slowed = starts.every((one) => one.workerSlowed) ? "page and worker" : "the page, not its worker,";
    rows.add(
      "phone, 300 plants, 60,000 entries: opening the app until the round can be started",
      usable_ms / 1000,
      "s",
      `median of ${RUNS_n}, ${slowed} ${SLOWER} times slower; on this machine as it is ${seconds(median(here.map((one) => one.usable_ms)))}`,
      "at most 2 s",
      usable_ms <= 2000,
    );
    const heap_MB = Math.max(...starts.map((one) => one.heap_MB));
    rows.add(
      "the same: heap of page and worker",
      heap_MB,
      "MB",
      `most of ${RUNS_n}; before a collection ${Math.max(...starts.map((one) => one.unswept_MB)).toFixed(0)} MB`,
      "under 300 MB",
      heap_MB < 300,
    );
    await lighthouseRow(rows, say);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

async function lighthouseRow(rows: Rows, say: (line: string) => void): Promise<void> {
  const marks: number[] = [];
  // On a busy machine a page is sometimes not painted in the time that Lighthouse gives it.
  for (let run = 0; run < 2 * RUNS_n && marks.length < RUNS_n; run++) {
    const { mark, trouble } = await inAProcess("lighthouse");
    if (mark !== undefined) marks.push(mark);
    else say(`  Lighthouse gave no mark: ${trouble?.slice(0, 160)}`);
  }
  if (marks.length === 0) return;
  rows.add(
    "Lighthouse 12.2.3, performance of the first screen",
    median(marks),
    "of 100",
    `median of ${marks.join(", ")}`,
    "printed",
    true,
  );
}
