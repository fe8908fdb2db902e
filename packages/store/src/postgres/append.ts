import {
  type AcceptedEntry,
  type AppendBatch,
  type AppendResult,
  type Cell,
  cellOf,
  type Digest,
  EMPTY_DIGEST,
  type EntryRef,
  joinDigests,
  redactionOf,
  refKey,
} from "@sillwood/bench/book";
import { type Kysely, sql, type Transaction } from "kysely";
import { nativeDigest } from "../sql/native-digest.ts";
import type { EntryTable, Tables } from "../sql/tables.ts";
import { takenOver } from "../sql/writer-lock.ts";

type Tx = Transaction<Tables>;
type NewRow = Omit<EntryTable, "at_ms"> & { at_ms: number };

/** The append of PostgreSQL: few statements whatever the size of the batch, in one transaction. */
export function postgresAppend(db: Kysely<Tables>, book: string, holder: string) {
  return (batch: AppendBatch): Promise<AppendResult> =>
    db.transaction().execute(async (tx) => {
      // Locks the row too: another opener waits for this commit, and this one sees whether it came too late.
      const writer = await tx
        .selectFrom("writer")
        .select("holder")
        .where("book", "=", book)
        .forUpdate()
        .executeTakeFirst();
      if (writer?.holder !== holder) throw takenOver();
      const counted: { ref: EntryRef; cell: Cell }[] = [];
      const targets = batch.entries.flatMap(({ entry }) => redactionOf(entry) ?? []);
      if (targets.length > 0)
        await tx
          .insertInto("redaction")
          .values(targets.map(({ id, hash }) => ({ book, id, hash })))
          .onConflict((c) => c.doNothing())
          .execute();
      const redacted = await namedIn(tx, "redaction", book, [...batch.entries.map(refOf), ...batch.redacted]);

      const rows = new Map<string, NewRow>();
      for (const accepted of batch.entries)
        rows.set(refKey(refOf(accepted)), entryRow(book, accepted, redacted.has(refKey(refOf(accepted)))));
      const setAside: EntryRef[] = [];
      for (const shell of batch.redacted) {
        const ref = { id: shell.id, hash: shell.hash };
        if (!redacted.has(refKey(ref))) setAside.push(ref);
        else if (!rows.has(refKey(ref)))
          rows.set(refKey(ref), { book, ...ref, ...cellOf(shell), v: 0, at_ms: 0, json: null });
      }
      const added = await insertNew(tx, [...rows.values()]);
      counted.push(...[...rows.values()].filter((row) => added.has(refKey(row))).map(rowCount));
      const old = [...rows.values()].filter((row) => !added.has(refKey(row)));
      counted.push(...(await heal(tx, book, old)), ...(await dropBodies(tx, book, targets)));
      await addToDigests(tx, book, counted);
      return {
        stored: [...rows.values()].map(({ id, hash }) => ({ id, hash }) as EntryRef),
        added_n: added.size,
        setAside,
      };
    });
}

const refOf = ({ entry, hash }: AcceptedEntry): EntryRef => ({ id: entry.id, hash });
const rowCount = ({ id, hash, device, month, kind }: NewRow) => ({
  ref: { id, hash } as EntryRef,
  cell: { device, month, kind },
});
const entryRow = (book: string, { entry, hash, text }: AcceptedEntry, gone: boolean): NewRow => ({
  book,
  id: entry.id,
  hash,
  ...cellOf(entry),
  v: entry.v,
  at_ms: entry.at_ms,
  json: gone ? null : text,
});

async function namedIn(
  tx: Tx,
  table: "redaction" | "damage",
  book: string,
  refs: readonly EntryRef[],
): Promise<Set<string>> {
  if (refs.length === 0) return new Set();
  const ids = refs.map(({ id }) => id as string);
  const rows = await tx
    .selectFrom(table)
    .select(["id", "hash"])
    .where("book", "=", book)
    .where("id", "in", ids)
    .execute();
  return new Set(rows.map(refKey));
}

async function insertNew(tx: Tx, rows: readonly NewRow[]): Promise<Set<string>> {
  if (rows.length === 0) return new Set();
  const added = await tx
    .insertInto("entry")
    .values(rows)
    .onConflict((c) => c.columns(["book", "id", "hash"]).doNothing())
    .returning(["id", "hash"])
    .execute();
  return new Set(added.map(refKey));
}

/** Gives known damaged entries their body back. */
async function heal(tx: Tx, book: string, rows: readonly NewRow[]) {
  const damaged = await namedIn(
    tx,
    "damage",
    book,
    rows.map((row) => rowCount(row).ref),
  );
  const healed = rows.filter((row) => damaged.has(refKey(row)));
  for (const row of healed) await setBody(tx, book, row, row.json);
  return healed.map(rowCount);
}

async function dropBodies(tx: Tx, book: string, targets: readonly EntryRef[]) {
  const damaged = await namedIn(tx, "damage", book, targets);
  const counted: { ref: EntryRef; cell: Cell }[] = [];
  for (const ref of targets) {
    await setBody(tx, book, ref, null);
    if (!damaged.has(refKey(ref))) continue;
    const cell = await tx
      .selectFrom("entry")
      .select(["device", "month", "kind"])
      .where("book", "=", book)
      .where("id", "=", ref.id)
      .where("hash", "=", ref.hash)
      .executeTakeFirst();
    if (cell) counted.push({ ref, cell });
  }
  return counted;
}

async function setBody(
  tx: Tx,
  book: string,
  { id, hash }: { id: string; hash: string },
  json: string | null,
): Promise<void> {
  await tx
    .updateTable("entry")
    .set({ json })
    .where("book", "=", book)
    .where("id", "=", id)
    .where("hash", "=", hash)
    .execute();
  await tx
    .deleteFrom("damage")
    .where("book", "=", book)
    .where("id", "=", id)
    .where("hash", "=", hash)
    .execute();
}

async function addToDigests(
  tx: Tx,
  book: string,
  counted: readonly { ref: EntryRef; cell: Cell }[],
): Promise<void> {
  const sums = new Map<string, { cell: Cell; digest: Digest }>();
  for (const { ref, cell } of counted) {
    const key = `${cell.device}/${cell.month}/${cell.kind}`;
    sums.set(key, { cell, digest: joinDigests(sums.get(key)?.digest ?? EMPTY_DIGEST, nativeDigest(ref)) });
  }
  for (const { cell, digest } of sums.values()) {
    const before = await tx
      .selectFrom("digest")
      .select(["n", "h"])
      .where("book", "=", book)
      .where("device", "=", cell.device)
      .where("month", "=", cell.month)
      .where("kind", "=", cell.kind)
      .executeTakeFirst();
    const { n, h } = joinDigests(before ? { n: Number(before.n), h: before.h } : EMPTY_DIGEST, digest);
    await sql`insert into digest (book, device, month, kind, n, h) values (${book}, ${cell.device}, ${cell.month}, ${cell.kind}, ${n}, ${h})
      on conflict (book, device, month, kind) do update set n = excluded.n, h = excluded.h`.execute(tx);
  }
}
