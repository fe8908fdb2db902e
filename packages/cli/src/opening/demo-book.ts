import { existsSync, mkdirSync, readdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import { type AcceptedEntry, acceptText } from "@sillwood/bench/book";
import { demoBook } from "@sillwood/simulator/demo";
import { openSqlite } from "@sillwood/store/sqlite";
import { gate } from "../book/kinds.ts";
import type { Surroundings } from "../surroundings.ts";

const SEED = 1;
const BATCH_n = 500;

/** The demo book of a day and zone: made once a day from the simulator and kept in the device's folder. */
export async function demoPath(around: Surroundings): Promise<string> {
  const now_ms = around.now_ms();
  const today = new Date(now_ms).toISOString().slice(0, 10);
  const folder = join(around.home, "demo");
  const path = join(folder, `demo-${today}.sillwood`);
  if (existsSync(path)) return path;
  // Yesterday's demo would tell of waterings that nobody did since: it goes.
  mkdirSync(folder, { recursive: true });
  for (const old of readdirSync(folder)) rmSync(join(folder, old), { recursive: true, force: true });
  await writeDemo(`${path}.new`, now_ms);
  await settle(`${path}.new`, path);
  return path;
}

async function writeDemo(path: string, now_ms: number): Promise<void> {
  const { entries, files } = demoBook({ now_ms, seed: SEED });
  const accepted = entries.map((text, i): AcceptedEntry => {
    const entry = acceptText(text, gate);
    if (!entry.ok) throw new Error(`line ${i + 1} of the demo book: ${entry.problems[0]?.message}`);
    return entry;
  });
  const store = await openSqlite({ path, book: "demo", label: "the demo book" });
  try {
    for (const [hash, text] of files) {
      await store.files.put(
        hash,
        "text/csv",
        (async function* () {
          yield new TextEncoder().encode(text);
        })(),
      );
    }
    for (let i = 0; i < accepted.length; i += BATCH_n)
      await store.append({ entries: accepted.slice(i, i + BATCH_n), redacted: [] });
  } finally {
    await store.close();
  }
}

/** A book made half-way must not be taken for a whole one: it gets its name last. */
async function settle(made: string, path: string): Promise<void> {
  const { renameSync } = await import("node:fs");
  for (const tail of ["-files", "-wal", "-shm"])
    if (existsSync(made + tail)) renameSync(made + tail, path + tail);
  renameSync(made, path);
}
