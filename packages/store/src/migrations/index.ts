import { type Kysely, type Migration, Migrator } from "kysely";
import { StoreError, storeError } from "../errors.ts";
import { makeBook } from "./001-book.ts";
import { addDevices } from "./002-devices.ts";

export type Engine = "sqlite" | "postgres";

/** The same steps for both engines, oldest first. Names never change once released. */
const steps = (engine: Engine): Record<string, Migration> => ({
  "001-book": { up: (db: Kysely<unknown>) => makeBook(db, engine) },
  "002-devices": { up: addDevices },
});

/**
 * Brings a book on disk to today's shape. One step is one transaction.
 *
 * @throws StoreError "newer" when a newer version of this program has already changed it further
 */
// biome-ignore lint/suspicious/noExplicitAny: migrations know no tables, the store does
export async function migrate(db: Kysely<any>, engine: Engine): Promise<void> {
  const migrator = new Migrator({ db, provider: { getMigrations: async () => steps(engine) } });
  const { error } = await migrator.migrateToLatest();
  if (!error) return;
  if (error instanceof Error && /previously executed migration .* is missing/.test(error.message))
    throw new StoreError("newer", "this book was written by a newer version of this program", error);
  throw storeError(error);
}
