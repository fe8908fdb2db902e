import {
  type Digest,
  type EntryRef,
  parseBucket,
  type ReadersOf,
  type RedactedEntry,
  refKey,
  type StoredEntry,
  type Summary,
  summaryOf,
} from "@sillwood/bench/book";
import { type Kysely, sql } from "kysely";
import { idRange } from "./id-range.ts";
import type { Tables } from "./tables.ts";

/** What both engines read in the same words. */

const CHUNK_n = 2000;

export async function readSummary(db: Kysely<Tables>, book: string, readersOf: ReadersOf): Promise<Summary> {
  const rows = await db.selectFrom("digest").selectAll().where("book", "=", book).execute();
  return summaryOf(
    rows.map(({ device, month, kind, n, h }) => ({
      cell: { device, month, kind },
      digest: { n: Number(n), h } as Digest,
    })),
    readersOf,
  );
}

export async function readRefs(
  db: Kysely<Tables>,
  book: string,
  bucket: string,
  readersOf: ReadersOf,
): Promise<EntryRef[]> {
  const parts = parseBucket(bucket);
  if (!parts) return [];
  const rows = await whole(db, book)
    .select(["e.id", "e.hash", "e.kind"])
    .where("e.device", "=", parts.device)
    .where("e.month", "=", parts.month)
    .where("e.id", ">=", idRange(parts.month).from)
    .where("e.id", "<=", idRange(parts.month).until)
    .execute();
  return rows
    .filter(({ kind }) => readersOf(kind) === parts.readers)
    .map(({ id, hash }) => ({ id, hash }) as EntryRef);
}

export async function readEntries(
  db: Kysely<Tables>,
  book: string,
  refs: readonly EntryRef[],
): Promise<StoredEntry[]> {
  const found: StoredEntry[] = [];
  const wanted = new Set(refs.map(refKey));
  for (let i = 0; i < refs.length; i += CHUNK_n) {
    const ids = refs.slice(i, i + CHUNK_n).map(({ id }) => id as string);
    const rows = await whole(db, book)
      .select(["e.id", "e.hash", "e.device", "e.kind", "e.json"])
      .where("e.id", "in", ids)
      .execute();
    // Twins share an id: the hash tells which of them was asked for.
    for (const row of rows) if (wanted.delete(refKey(row))) found.push(stored(row));
  }
  return found;
}

/** All whole entries by pages of their key, so that a book of any size passes through little memory. */
export async function* readAll(db: Kysely<Tables>, book: string): AsyncGenerator<StoredEntry[]> {
  let after = { id: "", hash: "" };
  for (;;) {
    const rows = await whole(db, book)
      .select(["e.id", "e.hash", "e.device", "e.kind", "e.json"])
      .where(sql<boolean>`(e.id, e.hash) > (${after.id}, ${after.hash})`)
      .orderBy("e.id")
      .orderBy("e.hash")
      .limit(CHUNK_n)
      .execute();
    if (rows.length === 0) return;
    yield rows.map(stored);
    after = rows.at(-1) as (typeof rows)[0];
  }
}

export async function countEntries(db: Kysely<Tables>, book: string): Promise<number> {
  const rows = await db.selectFrom("digest").select("n").where("book", "=", book).execute();
  return rows.reduce((sum, { n }) => sum + Number(n), 0);
}

/** Entries that are not known as damaged. */
const whole = (db: Kysely<Tables>, book: string) =>
  db
    .selectFrom("entry as e")
    .where("e.book", "=", book)
    .where(({ not, exists, selectFrom }) =>
      not(
        exists(
          selectFrom("damage as d")
            .select("d.id")
            .whereRef("d.book", "=", "e.book")
            .whereRef("d.id", "=", "e.id")
            .whereRef("d.hash", "=", "e.hash"),
        ),
      ),
    );

function stored(row: {
  id: string;
  hash: string;
  device: string;
  kind: string;
  json: string | null;
}): StoredEntry {
  const { id, hash, device, kind, json } = row;
  return json === null
    ? ({ id, hash, device, kind, redacted: true } as RedactedEntry)
    : ({ id, hash, text: json } as StoredEntry);
}
