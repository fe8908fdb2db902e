import { existsSync } from "node:fs";
import Database from "better-sqlite3";
import { Kysely, PostgresDialect, SqliteDialect } from "kysely";
import pg from "pg";
import type { EntryStore } from "../entry-store.ts";
import { StoreError, storeError } from "../errors.ts";
import { diskBytes } from "../files/disk.ts";
import { postgresBytes } from "../postgres/postgres-bytes.ts";
import { postgresTexts } from "../postgres/texts.ts";
import { sqlStore } from "../sql/sql-store.ts";
import type { Tables } from "../sql/tables.ts";
import { refuseOldSqlite } from "../sqlite/open-checked.ts";
import { sqliteTexts } from "../sqlite/texts.ts";

/** A book that is only read: it takes no writer's place, so that it opens beside the process that has the book open. */
export type ReadStore = Pick<
  EntryStore,
  "book" | "count_n" | "texts" | "all" | "summary" | "refs" | "get" | "close"
> & {
  readonly files: Pick<EntryStore["files"], "has" | "get" | "list">;
  readonly cache: Pick<EntryStore["cache"], "get">;
};

const readOnly = () => new StoreError("read-only", "the book was opened for reading");
const refuse = async (): Promise<never> => {
  throw readOnly();
};

/**
 * Reads the book in a file.
 *
 * @throws StoreError "not a book", "damaged", "failed"; also when the file is not there or has not been brought to today's shape
 */
export async function readSqlite(path: string): Promise<ReadStore> {
  if (!existsSync(path)) throw new StoreError("failed", `there is no book at ${path}`);
  let sqlite: Database.Database | undefined;
  try {
    sqlite = new Database(path, { readonly: true, fileMustExist: true });
    const open = sqlite;
    refuseOldSqlite(String(open.prepare("select sqlite_version()").pluck().get()));
    open.pragma("busy_timeout = 5000");
    open.pragma("trusted_schema = OFF");
    const book = open.prepare("select book from meta").pluck().get() as string | undefined;
    if (book === undefined) throw new StoreError("not a book", "the file is no book yet");
    const db = new Kysely<Tables>({ dialect: new SqliteDialect({ database: open }) });
    return sqlStore({
      db,
      book,
      bytes: diskBytes(`${path}-files`),
      append: refuse,
      texts: () => sqliteTexts(open, book),
      copyInto: refuse,
      close: () => db.destroy(),
    });
  } catch (error) {
    sqlite?.close();
    throw storeError(error);
  }
}

/** Reads one book of a PostgreSQL database. */
export async function readPostgres({
  url,
  book,
}: {
  readonly url: string;
  readonly book: string;
}): Promise<ReadStore> {
  const pool = new pg.Pool({
    connectionString: url,
    max: 2,
    connectionTimeoutMillis: 10_000,
    options: "-c default_transaction_read_only=on",
  });
  pool.on("error", () => undefined);
  const db = new Kysely<Tables>({ dialect: new PostgresDialect({ pool }) });
  try {
    const there = await db.selectFrom("meta").select("book").where("book", "=", book).executeTakeFirst();
    if (!there) throw new StoreError("failed", `the database holds no book ${book}`);
  } catch (error) {
    await db.destroy();
    throw storeError(error);
  }
  return sqlStore({
    db,
    book,
    bytes: postgresBytes(db, book),
    append: refuse,
    texts: () => postgresTexts(db, book),
    copyInto: refuse,
    close: () => db.destroy(),
  });
}
