import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { AcceptedEntry } from "@sillwood/bench/book";
import { openSqlite } from "@sillwood/store/sqlite";
import Database from "better-sqlite3";
import { bigBook } from "./big-book.ts";
import { median } from "./measured.ts";

/** Milliseconds of one durable entry, ours and as a bare insert, and how many of ours the store then holds. */
export interface AppendSpeed {
  readonly ours_ms: number;
  readonly raw_ms: number;
  /** Middle of the ratios of neighbouring blocks: a slow moment of the disk hits both. */
  readonly ratio: number;
  readonly kept_n: number;
}

const BLOCK_n = 20;

/** One entry a commit, in blocks in turn with a prepared insert into the same kind of table, both synced at each commit. */
export async function appendSpeed(blocks_n: number, seed: number): Promise<AppendSpeed> {
  const entries_n = blocks_n * BLOCK_n;
  const size = { seed, plants_n: 10, entries_n, spots_n: 10, days_n: 60, until_ms: Date.UTC(2026, 9, 1, 16) };
  const entries = [...bigBook(size).portions()].flat();
  const folder = mkdtempSync(join(tmpdir(), "sillwood-append-"));
  const store = await openSqlite({ path: join(folder, "ours.book") });
  const raw = rawTable(join(folder, "raw.db"));
  try {
    const [ours, theirs, ratios]: number[][] = [[], [], []];
    for (let block = 0; block < blocks_n; block++) {
      const some = entries.slice(block * BLOCK_n, (block + 1) * BLOCK_n);
      const start_ms = performance.now();
      for (const entry of some) await store.append({ entries: [entry], redacted: [] });
      const middle_ms = performance.now();
      for (const entry of some) raw.insert(entry);
      const end_ms = performance.now();
      ours?.push((middle_ms - start_ms) / BLOCK_n);
      theirs?.push((end_ms - middle_ms) / BLOCK_n);
      ratios?.push((middle_ms - start_ms) / (end_ms - middle_ms));
    }
    const kept_n = await store.count_n();
    return { ours_ms: median(ours ?? []), raw_ms: median(theirs ?? []), ratio: median(ratios ?? []), kept_n };
  } finally {
    raw.close();
    await store.close();
    rmSync(folder, { recursive: true, force: true });
  }
}

/** The entry table of a book without what makes it a book: no digest, no lock, no redaction, no trigger. */
function rawTable(path: string) {
  const db = new Database(path);
  db.pragma("journal_mode = WAL");
  db.pragma("synchronous = FULL");
  db.exec(
    "create table entry (book text not null, id text not null, hash text not null, device text not null, month text not null, kind text not null, v integer not null, at_ms integer not null, json text, primary key (book, id, hash))",
  );
  const insert = db.prepare("insert into entry values ('book', ?, ?, ?, '2026-09', ?, ?, ?, ?)");
  return {
    insert({ entry, hash, text }: AcceptedEntry): void {
      insert.run(entry.id, hash, entry.device, entry.kind, entry.v, entry.at_ms, text);
    },
    close: () => db.close(),
  };
}
