import { randomUUID } from "node:crypto";
import { rename, rm } from "node:fs/promises";
import { join } from "node:path";
import type { AppendResult } from "@sillwood/bench/book";
import Database from "better-sqlite3";
import { Kysely, SqliteDialect } from "kysely";
import { syncFile } from "../backup.ts";
import type { EntryStore } from "../entry-store.ts";
import { StoreError, storeError } from "../errors.ts";
import { diskBytes } from "../files/disk.ts";
import { migrate } from "../migrations/index.ts";
import { sqlStore } from "../sql/sql-store.ts";
import type { Tables } from "../sql/tables.ts";
import { takeWriterLock } from "../sql/writer-lock.ts";
import { sqliteAppend } from "./append.ts";
import { assertSound, openChecked } from "./open-checked.ts";
import { sqliteTexts } from "./texts.ts";

export { assertDurable, openChecked, refuseOldSqlite, SQLITE_LEAST } from "./open-checked.ts";

export interface SqliteOptions {
  /** The book's file; files lie in a folder of the same name with `-files` after it. */
  readonly path: string;
  /** Name for a new book; an existing one keeps its own. */
  readonly book?: string;
  /** Who opens it, as the next who tries will read. */
  readonly label?: string;
  readonly now_ms?: () => number;
  /** Most pages of the file, for tests of a full disk. */
  readonly maxPage_n?: number;
}

/**
 * Opens the book in a file, or makes it. It is the only writer until closed.
 *
 * @throws StoreError "in use", "newer", and what openChecked throws
 */
export async function openSqlite(options: SqliteOptions): Promise<EntryStore> {
  const { path, label = "sillwood", now_ms = Date.now } = options;
  const sqlite = openChecked(path);
  if (options.maxPage_n !== undefined) sqlite.pragma(`max_page_count = ${options.maxPage_n}`);
  const db = new Kysely<Tables>({ dialect: new SqliteDialect({ database: sqlite }) });
  try {
    const book = await shaped(sqlite, db, options.book, now_ms());
    const lock = await takeWriterLock({ db, book, label, now_ms });
    const appendAll = sqliteAppend(sqlite, book, lock.holder);
    return sqlStore({
      db,
      book,
      bytes: diskBytes(`${path}-files`),
      append: (batch) => appendAll([batch])[0] as AppendResult,
      appendAll,
      texts: () => sqliteTexts(sqlite, book),
      assertSound: () => assertSound(sqlite),
      copyInto: (folder) => copyInto(sqlite, folder),
      async close() {
        await lock.release();
        await db.destroy();
      },
    });
  } catch (error) {
    await db.destroy();
    throw storeError(error);
  }
}

/**
 * Brings the file to today's shape and gives it its name, all or nothing. Kysely runs migrations of SQLite outside of any
 * transaction; a crash in the first start would leave half the tables and a book that never opens again.
 */
async function shaped(
  sqlite: Database.Database,
  db: Kysely<Tables>,
  wished: string | undefined,
  now_ms: number,
) {
  sqlite.exec("begin immediate");
  try {
    await migrate(db, "sqlite");
    const book = bookName(sqlite, wished, now_ms);
    sqlite.exec("commit");
    return book;
  } catch (error) {
    if (sqlite.inTransaction) sqlite.exec("rollback");
    throw error;
  }
}

function bookName(sqlite: Database.Database, wished: string | undefined, now_ms: number): string {
  const there = sqlite.prepare("select book from meta").pluck().get() as string | undefined;
  if (there !== undefined) {
    if (wished !== undefined && wished !== there)
      throw new StoreError("not a book", `the file holds the book ${there}, not ${wished}`);
    return there;
  }
  const book = wished ?? randomUUID();
  sqlite.prepare("insert into meta (book, made_ms) values (?, ?)").run(book, now_ms);
  return book;
}

/** A copy by VACUUM INTO: the file itself may not be copied while it is open. Checked before it takes its name. */
async function copyInto(sqlite: Database.Database, folder: string): Promise<string[]> {
  const path = join(folder, "book.sqlite");
  const part = `${path}.part`;
  await rm(part, { force: true });
  sqlite.prepare("vacuum into ?").run(part);
  const copy = new Database(part);
  try {
    // The copy is nobody's to write yet.
    copy.exec("delete from writer");
    const check = copy.pragma("quick_check(1)", { simple: true });
    if (check !== "ok") throw new StoreError("damaged", `the backup fails its check: ${check}`);
  } finally {
    copy.close();
  }
  await syncFile(part);
  await rename(part, path);
  return [path];
}
