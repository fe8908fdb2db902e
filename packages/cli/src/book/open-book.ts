import { existsSync } from "node:fs";
import type { EntryStore } from "@sillwood/store/entry-store";
import { StoreError } from "@sillwood/store/errors";
import { openPostgres } from "@sillwood/store/postgres";
import { type ReadStore, readPostgres, readSqlite } from "@sillwood/store/read-only";
import { openSqlite } from "@sillwood/store/sqlite";
import { dataError } from "../errors.ts";
import type { BookPlace } from "./place.ts";
import { placeSaid } from "./place.ts";

/** @throws DataError when there is no book in a file: a slip in a name must not found a new one */
export function mustExist(place: BookPlace): void {
  if (place.engine === "postgres" || existsSync(place.path)) return;
  throw dataError(
    "book",
    `there is no book at ${placeSaid(place)}. The first entry makes it: sillwood enter plant.brought new habit=thin. ` +
      "To look around first: sillwood open --demo",
  );
}

/** Opens for reading: also while the house has the book open. */
export async function openForReading(place: BookPlace): Promise<ReadStore> {
  if (place.engine === "postgres") return readPostgres(place);
  mustExist(place);
  return readSqlite(place.path);
}

/** Opens as the only writer, and makes the book when there is none. */
export const openForWriting = (place: BookPlace, label: string): Promise<EntryStore> =>
  place.engine === "postgres"
    ? openPostgres({ url: place.url, book: place.book, label })
    : openSqlite({ path: place.path, label });

/** The address of the house that has the book open, when that is why it can't be opened for writing. */
export function houseAddress(error: unknown): string | undefined {
  if (!(error instanceof StoreError) || error.fault !== "in use") return undefined;
  return /https?:\/\/(?:127\.0\.0\.1|localhost|\[::1\]):\d+/.exec(error.message)?.[0];
}
