import type { AppendBatch, AppendResult, EntryRef, FileLine } from "@sillwood/bench/book";
import type { Kysely } from "kysely";
import { writeExport } from "../backup.ts";
import type { EntryStore, VerifyReport } from "../entry-store.ts";
import { type FileBytes, type FileRows, fileStore } from "../files/file-store.ts";
import { sqlAside, sqlKeys } from "./device-tables.ts";
import { inGroups } from "./in-groups.ts";
import { type Ask, storeGate } from "./one-at-a-time.ts";
import { countEntries, readAll, readEntries, readRefs, readSummary } from "./reading.ts";
import { sqlCache, sqlPeople } from "./side-tables.ts";
import type { Tables } from "./tables.ts";
import { type MonthReport, monthsOf, verifyMonth } from "./verifying.ts";

/** What an engine does in its own way. */
export interface SqlEngine {
  readonly db: Kysely<Tables>;
  readonly book: string;
  readonly bytes: FileBytes;
  append(batch: AppendBatch): Promise<AppendResult> | AppendResult;
  /** Several batches in one commit, where that saves syncs; the engine's own server does it otherwise. */
  appendAll?(batches: readonly AppendBatch[]): readonly AppendResult[];
  texts(): AsyncIterable<readonly string[]>;
  /** Goes through the file below the entries, where there is one; throws StoreError "damaged". */
  assertSound?(): void;
  /** Copies the whole database into a folder; paths of what it wrote. */
  copyInto(folder: string): Promise<readonly string[]>;
  close(): Promise<void>;
}

const CURSOR = "verify cursor";

/** Makes a store of an engine. */
export function sqlStore(engine: SqlEngine): EntryStore {
  const { db, book, appendAll } = engine;
  const { ask, write, close } = storeGate();
  const cache = sqlCache(db, book, ask);
  const files = fileStore(fileRows(engine, write), engine.bytes, ask);

  async function verify(part: "all" | "next"): Promise<VerifyReport> {
    await ask(async () => engine.assertSound?.());
    const months = await ask(() => monthsOf(db, book));
    const chosen = part === "all" ? months : await nextMonth(months);
    const reports: MonthReport[] = [];
    for (const month of chosen) reports.push(await write(() => verifyMonth(db, book, month)));
    return {
      checked_n: reports.reduce((sum, { checked_n }) => sum + checked_n, 0),
      damaged: reports.flatMap(({ damaged }): EntryRef[] => damaged),
      recounted_n: reports.reduce((sum, { recounted_n }) => sum + recounted_n, 0),
      damagedFiles: part === "all" ? await files.damaged() : [],
    };
  }

  async function nextMonth<Month extends { device: string; month: string }>(
    months: readonly Month[],
  ): Promise<Month[]> {
    const last = (await cache.get(CURSOR)) ?? "";
    const next = months.find(({ device, month }) => `${device}/${month}` > last) ?? months[0];
    if (!next) return [];
    await cache.put(CURSOR, `${next.device}/${next.month}`);
    return [next];
  }

  const store: EntryStore = {
    book,
    append: appendAll
      ? inGroups((batches) => ask(() => appendAll(batches)), write)
      : (batch) => write(() => engine.append(batch)),
    summary: (readersOf) => ask(() => readSummary(db, book, readersOf)),
    refs: (bucket, readersOf) => ask(() => readRefs(db, book, bucket, readersOf)),
    get: (refs) => ask(() => readEntries(db, book, refs)),
    count_n: () => ask(() => countEntries(db, book)),
    texts: () => engine.texts(),
    all: () => readAll(db, book),
    verify,
    files,
    cache,
    people: sqlPeople(db, book, ask),
    keys: sqlKeys(db, book, ask),
    aside: sqlAside(db, book, ask, write),
    backup: async (folder) => {
      const report = await ask(() => writeExport(store, folder));
      const copies = await write(() => engine.copyInto(folder));
      return { ...report, paths: [...report.paths, ...copies] };
    },
    close: () => close(() => engine.close()),
  };
  return store;
}

function fileRows({ db, book }: SqlEngine, write: Ask): FileRows {
  // One statement and so one commit for all photos that came in at about the same time.
  const add = inGroups<FileLine, void>(async (lines) => {
    await db
      .insertInto("file")
      .values(lines.map(({ file, size_B, type }) => ({ book, hash: file, type, size_B })))
      .onConflict((c) => c.columns(["book", "hash"]).doNothing())
      .execute();
    return lines.map(() => undefined);
  }, write);
  return {
    async find(hash) {
      const row = await db
        .selectFrom("file")
        .selectAll()
        .where("book", "=", book)
        .where("hash", "=", hash)
        .executeTakeFirst();
      return row && { file: row.hash, size_B: Number(row.size_B), type: row.type };
    },
    add,
    async remove(hash) {
      await db.deleteFrom("file").where("book", "=", book).where("hash", "=", hash).execute();
    },
    async all() {
      const rows = await db.selectFrom("file").selectAll().where("book", "=", book).orderBy("hash").execute();
      return rows.map(({ hash, size_B, type }) => ({ file: hash, size_B: Number(size_B), type }));
    },
  };
}
