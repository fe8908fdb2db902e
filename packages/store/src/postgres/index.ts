import { Kysely, PostgresDialect, sql } from "kysely";
import pg from "pg";
import type { EntryStore } from "../entry-store.ts";
import { StoreError, storeError } from "../errors.ts";
import { migrate } from "../migrations/index.ts";
import { sqlStore } from "../sql/sql-store.ts";
import type { Tables } from "../sql/tables.ts";
import { takeWriterLock } from "../sql/writer-lock.ts";
import { postgresAppend } from "./append.ts";
import { postgresBytes } from "./postgres-bytes.ts";
import { postgresTexts } from "./texts.ts";

export interface PostgresOptions {
  /** As `postgres://name@127.0.0.1:5432/database`. */
  readonly url: string;
  /** Which book of the database. */
  readonly book: string;
  readonly label?: string;
  readonly now_ms?: () => number;
}

/**
 * Opens a book in a PostgreSQL database, or makes it. It is the only writer of this book until closed.
 *
 * @throws StoreError "in use", "newer", "failed"; refuses a server that does not sync its commits
 */
export async function openPostgres(options: PostgresOptions): Promise<EntryStore> {
  const { url, book, label = "sillwood", now_ms = Date.now } = options;
  const pool = new pg.Pool({ connectionString: url, max: 4, connectionTimeoutMillis: 10_000 });
  // An idle connection that the server drops must not end the process; the next query reports it.
  pool.on("error", () => undefined);
  const db = new Kysely<Tables>({ dialect: new PostgresDialect({ pool }) });
  try {
    await refuseUnsynced(db);
    await migrate(db, "postgres");
    await db
      .insertInto("meta")
      .values({ book, made_ms: now_ms() })
      .onConflict((c) => c.doNothing())
      .execute();
    const lock = await takeWriterLock({ db, book, label, now_ms });
    return sqlStore({
      db,
      book,
      bytes: postgresBytes(db, book),
      append: postgresAppend(db, book, lock.holder),
      texts: () => postgresTexts(db, book),
      // The plain export is the copy; a dump of the database is its administrator's tool.
      copyInto: async () => [],
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

async function refuseUnsynced(db: Kysely<Tables>): Promise<void> {
  for (const setting of ["fsync", "synchronous_commit", "full_page_writes"]) {
    const { rows } = await sql<{ value: string }>`select current_setting(${setting}) as value`.execute(db);
    if (rows[0]?.value === "off")
      throw new StoreError(
        "failed",
        `the database server runs with ${setting} = off; a power cut could lose acknowledged entries`,
      );
  }
}
