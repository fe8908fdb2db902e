import {
  type AppendBatch,
  type AppendResult,
  type Cell,
  cellOf,
  type Digest,
  EMPTY_DIGEST,
  type EntryRef,
  joinDigests,
  redactionOf,
} from "@sillwood/bench/book";
import type Database from "better-sqlite3";
import { nativeDigest } from "../sql/native-digest.ts";
import { takenOver } from "../sql/writer-lock.ts";

/**
 * The append of SQLite: prepared once, one immediate transaction for all batches that it is given, one sync a commit. Returns a function
 * that throws what SQLite throws; then nothing of them is in the book.
 */
export function sqliteAppend(
  db: Database.Database,
  book: string,
  holder: string,
): (batches: readonly AppendBatch[]) => readonly AppendResult[] {
  const holds = db.prepare("select holder from writer where book = ?").pluck();
  const insert = db.prepare(
    "insert into entry (book, id, hash, device, month, kind, v, at_ms, json) values (?, ?, ?, ?, ?, ?, ?, ?, ?) on conflict (book, id, hash) do nothing",
  );
  const setBody = db.prepare("update entry set json = ? where book = ? and id = ? and hash = ?");
  const cellAt = db.prepare("select device, month, kind from entry where book = ? and id = ? and hash = ?");
  const isRedacted = db.prepare("select 1 from redaction where book = ? and id = ? and hash = ?").pluck();
  const redact = db.prepare("insert into redaction (book, id, hash) values (?, ?, ?) on conflict do nothing");
  const isDamaged = db.prepare("select 1 from damage where book = ? and id = ? and hash = ?").pluck();
  const healed = db.prepare("delete from damage where book = ? and id = ? and hash = ?");
  const digestAt = db.prepare(
    "select n, h from digest where book = ? and device = ? and month = ? and kind = ?",
  );
  const setDigest = db.prepare(
    "insert into digest (book, device, month, kind, n, h) values (?, ?, ?, ?, ?, ?) on conflict (book, device, month, kind) do update set n = excluded.n, h = excluded.h",
  );

  const appendOne = (batch: AppendBatch): AppendResult => {
    const sums = new Map<string, { cell: Cell; digest: Digest }>();
    const count = (ref: EntryRef, cell: Cell) => {
      const key = `${cell.device}/${cell.month}/${cell.kind}`;
      const digest = joinDigests(sums.get(key)?.digest ?? EMPTY_DIGEST, nativeDigest(ref));
      sums.set(key, { cell, digest });
    };
    const stored: EntryRef[] = [];
    const setAside: EntryRef[] = [];
    let added_n = 0;

    /** Puts a body in, or in place of a damaged one. */
    const put = (ref: EntryRef, cell: Cell, v: number, at_ms: number, body: string | null) => {
      const { id, hash } = ref;
      const added =
        insert.run(book, id, hash, cell.device, cell.month, cell.kind, v, at_ms, body).changes === 1;
      stored.push({ id, hash });
      if (added) added_n++;
      else if (isDamaged.get(book, id, hash)) {
        setBody.run(body, book, id, hash);
        healed.run(book, id, hash);
      } else return;
      count(ref, cellAt.get(book, id, hash) as Cell);
    };
    const dropBody = (target: EntryRef) => {
      const { id, hash } = target;
      redact.run(book, id, hash);
      const cell = cellAt.get(book, id, hash) as Cell | undefined;
      if (!cell) return;
      setBody.run(null, book, id, hash);
      if (healed.run(book, id, hash).changes === 1) count(target, cell);
    };

    for (const { entry, hash, text } of batch.entries) {
      const gone = isRedacted.get(book, entry.id, hash) !== undefined;
      put({ id: entry.id, hash }, cellOf(entry), entry.v, entry.at_ms, gone ? null : text);
      const target = redactionOf(entry);
      if (target) dropBody(target);
    }
    for (const shell of batch.redacted)
      if (isRedacted.get(book, shell.id, shell.hash)) put(shell, cellOf(shell), 0, 0, null);
      else setAside.push({ id: shell.id, hash: shell.hash });

    for (const { cell, digest } of sums.values()) {
      const { device, month, kind } = cell;
      const before = (digestAt.get(book, device, month, kind) as Digest | undefined) ?? EMPTY_DIGEST;
      const { n, h } = joinDigests(before, digest);
      setDigest.run(book, device, month, kind, n, h);
    }
    return { stored, added_n, setAside };
  };
  const run = db.transaction((batches: readonly AppendBatch[]): AppendResult[] => {
    if (holds.get(book) !== holder) throw takenOver();
    return batches.map(appendOne);
  });
  return (batches) => {
    const results = run.immediate(batches);
    // The dropped body still stands in the log until that is emptied.
    if (batches.some(({ entries }) => entries.some(({ entry }) => redactionOf(entry))))
      db.pragma("wal_checkpoint(TRUNCATE)");
    return results;
  };
}
