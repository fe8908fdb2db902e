import { createHash } from "node:crypto";
import {
  cellOf,
  type Digest,
  EMPTY_DIGEST,
  type Entry,
  type EntryId,
  type EntryRef,
  joinDigests,
  refKey,
} from "@sillwood/bench/book";
import type { Kysely, Transaction } from "kysely";
import { idRange } from "./id-range.ts";
import { nativeDigest } from "./native-digest.ts";
import type { EntryTable, Tables } from "./tables.ts";

/** One month of one device: what one step of verification looks at. */
interface Month {
  readonly device: string;
  readonly month: string;
}

export interface MonthReport {
  readonly checked_n: number;
  readonly damaged: EntryRef[];
  readonly recounted_n: number;
}

export async function monthsOf(db: Kysely<Tables>, book: string): Promise<Month[]> {
  const months = await db
    .selectFrom("entry")
    .select(["device", "month"])
    .distinct()
    .where("book", "=", book)
    .orderBy("device")
    .orderBy("month")
    .execute();
  // A month that is none was written by a failing disk; its entry is found by its id under the month that it belongs to.
  return months.filter(({ month }) => /^\d{4}-\d\d$/.test(month));
}

/** Rehashes the bodies of one month and counts its digests anew, in one transaction. */
export function verifyMonth(db: Kysely<Tables>, book: string, month: Month): Promise<MonthReport> {
  return db.transaction().execute(async (tx) => {
    const rows = await tx
      .selectFrom("entry")
      .selectAll()
      .where("book", "=", book)
      .where("device", "=", month.device)
      // By id, not by the column: a column that the disk has changed must not hide its entry.
      .where("id", ">=", idRange(month.month).from)
      .where("id", "<=", idRange(month.month).until)
      .execute();
    const redacted = new Set((await namesIn(tx, "redaction", book)).map(refKey));
    const known = new Set((await namesIn(tx, "damage", book)).map(refKey));
    const damaged = rows.filter((row) => !isWhole(row, redacted)) as unknown as EntryRef[];
    const names = new Set(damaged.map(refKey));
    for (const { id, hash } of damaged)
      if (!known.has(refKey({ id, hash })))
        await tx.insertInto("damage").values({ book, id, hash }).execute();
    const digests = new Map<string, Digest>();
    for (const row of rows)
      if (!names.has(refKey(row))) {
        const digest = nativeDigest({ id: row.id as EntryId, hash: row.hash });
        digests.set(row.kind, joinDigests(digests.get(row.kind) ?? EMPTY_DIGEST, digest));
      }
    const recounted_n = await writeDigests(tx, book, month, digests);
    return { checked_n: rows.length, damaged: damaged.map(({ id, hash }) => ({ id, hash })), recounted_n };
  });
}

const namesIn = (tx: Transaction<Tables>, table: "redaction" | "damage", book: string) =>
  tx.selectFrom(table).select(["id", "hash"]).where("book", "=", book).execute();

/** A body is whole when its bytes have its hash and its columns say what it says; a redacted one when a redaction asks for it. */
function isWhole(row: { [Column in keyof EntryTable]: unknown }, redacted: ReadonlySet<string>): boolean {
  const { id, hash, json } = row as { id: string; hash: string; json: string | null };
  if (json === null) return redacted.has(refKey({ id, hash }));
  if (createHash("sha256").update(json).digest("hex") !== hash) return false;
  const entry = JSON.parse(json) as Entry;
  const cell = cellOf(entry);
  return (
    entry.id === id &&
    cell.device === row.device &&
    cell.month === row.month &&
    cell.kind === row.kind &&
    entry.v === row.v &&
    entry.at_ms === Number(row.at_ms)
  );
}

async function writeDigests(
  tx: Transaction<Tables>,
  book: string,
  { device, month }: Month,
  right: Map<string, Digest>,
) {
  const cell = { book, device, month };
  const stood = await tx
    .selectFrom("digest")
    .select(["kind", "n", "h"])
    .where("book", "=", book)
    .where("device", "=", device)
    .where("month", "=", month)
    .execute();
  let recounted_n = 0;
  for (const kind of new Set([...stood.map((row) => row.kind), ...right.keys()])) {
    const before = stood.find((row) => row.kind === kind);
    const { n, h } = right.get(kind) ?? EMPTY_DIGEST;
    if (before && Number(before.n) === n && before.h === h) continue;
    recounted_n++;
    await tx
      .insertInto("digest")
      .values({ ...cell, kind, n, h })
      .onConflict((c) => c.columns(["book", "device", "month", "kind"]).doUpdateSet({ n, h }))
      .execute();
  }
  return recounted_n;
}
