import {
  type AcceptedEntry,
  type AppendBatch,
  type AppendResult,
  bucketOf,
  type Cell,
  cellOf,
  EMPTY_DIGEST,
  type EntryRef,
  entryDigest,
  joinDigests,
  type ReadersOf,
  redactionOf,
  refKey,
  type StoredEntry,
  type SyncStore,
  summaryOf,
} from "@sillwood/bench/book";
import type { IDBPTransaction } from "idb";
import { type BookDb, type BookSchema, type KeptEntry, STRICT } from "./book-db.ts";

type Writing = IDBPTransaction<BookSchema, ["entries", "cells", "away"], "readwrite">;

/** The book in IndexedDB: the fourth store of the house, with the same contract as the others. */
export interface BookStore extends SyncStore {
  /** Appends entries written here; durable when it resolves. They count as away from the server until it names them. */
  write(entries: readonly AcceptedEntry[], now_ms: number): Promise<AppendResult>;
  /** All texts, in batches, in the order of ids. */
  readAll(onBatch: (texts: readonly string[]) => void, batch_n?: number): Promise<void>;
  count(): Promise<number>;
  /** How many entries the server has not named, and since when. */
  away(): Promise<{ readonly n: number; readonly oldest_ms?: number }>;
  /** Names of all that are away, before a pass: what is written while it runs stays away. */
  awayKeys(): Promise<readonly string[]>;
  /** After a sync pass: of those away before it, exactly these are still unnamed. */
  setAway(unnamed: readonly EntryRef[], before: readonly string[], now_ms: number): Promise<void>;
}

export function bookStore(db: BookDb): BookStore {
  const begin = () => db.transaction(["entries", "cells", "away"], "readwrite", STRICT);
  return {
    summary: async (readersOf) => summaryOf(await db.getAll("cells"), readersOf),
    refs: (bucket, readersOf) => refsOf(db, bucket, readersOf),
    get: (refs) => getEntries(db, refs),
    append: async (batch) => {
      const writing = begin();
      const result = await appendIn(writing, batch);
      await writing.done;
      return result;
    },
    write: async (entries, now_ms) => {
      const writing = begin();
      for (const entry of entries)
        await writing
          .objectStore("away")
          .put({ key: refKey({ id: entry.entry.id, hash: entry.hash }), at_ms: now_ms });
      const result = await appendIn(writing, { entries, redacted: [] });
      await writing.done;
      return result;
    },
    readAll: async (onBatch, batch_n = 2000) => {
      let from: IDBKeyRange | null = null;
      for (;;) {
        const batch: readonly KeptEntry[] = await db.getAll("entries", from, batch_n);
        const last = batch.at(-1);
        if (!last) return;
        onBatch(batch.flatMap(({ text }) => (text === undefined ? [] : [text])));
        if (batch.length < batch_n) return;
        from = IDBKeyRange.lowerBound([last.id, last.hash], true);
      }
    },
    count: () => db.count("entries"),
    away: async () => {
      const all = await db.getAll("away");
      const oldest_ms = all.reduce((least, { at_ms }) => Math.min(least, at_ms), Number.POSITIVE_INFINITY);
      return { n: all.length, ...(Number.isFinite(oldest_ms) ? { oldest_ms } : {}) };
    },
    awayKeys: () => db.getAllKeys("away"),
    setAway: async (unnamed, before, now_ms) => {
      const writing = db.transaction("away", "readwrite", STRICT);
      const still = new Set(unnamed.map(refKey));
      for (const key of before) {
        if (!still.delete(key)) await writing.store.delete(key);
      }
      // A server that came back from an old copy no longer names what it once had.
      for (const key of still) await writing.store.put({ key, at_ms: now_ms });
      await writing.done;
    },
  };
}

async function appendIn(writing: Writing, { entries, redacted }: AppendBatch): Promise<AppendResult> {
  const kept = writing.objectStore("entries");
  const stored: EntryRef[] = [];
  const setAside: EntryRef[] = [];
  let added_n = 0;
  for (const { entry, hash, text } of entries) {
    const ref = { id: entry.id, hash };
    stored.push(ref);
    if (await kept.getKey([entry.id, hash])) continue;
    await kept.put({ ...ref, ...filed(entry), text });
    await addToCell(writing, cellOf(entry), ref);
    added_n++;
    const named = redactionOf(entry);
    const body = named && (await kept.get([named.id, named.hash]));
    if (body) await kept.put(withoutText(body));
  }
  for (const shell of redacted) {
    const ref = { id: shell.id, hash: shell.hash };
    if (!(await isRedacted(writing, ref))) {
      setAside.push(ref);
      continue;
    }
    stored.push(ref);
    const body = await kept.get([shell.id, shell.hash]);
    if (body) {
      await kept.put(withoutText(body));
      continue;
    }
    await kept.put({ ...ref, ...filed(shell) });
    await addToCell(writing, cellOf(shell), ref);
    added_n++;
  }
  return { stored, added_n, setAside };
}

const cellName = ({ device, month, kind }: Cell) => `${device}/${month}/${kind}`;

const filed = (entry: { readonly id: string; readonly device: string; readonly kind: string }) => ({
  cell: cellName(cellOf(entry)),
  device: entry.device,
  kind: entry.kind,
});

const withoutText = ({ text: _text, ...rest }: KeptEntry): KeptEntry => rest;

async function addToCell(writing: Writing, cell: Cell, ref: EntryRef) {
  const cells = writing.objectStore("cells");
  const name = cellName(cell);
  const before = await cells.get(name);
  await cells.put({ name, cell, digest: joinDigests(before?.digest ?? EMPTY_DIGEST, entryDigest(ref)) });
}

/** Whether a redaction that names the entry is here. Redactions are rare, so they are looked through. */
async function isRedacted(writing: Writing, ref: EntryRef): Promise<boolean> {
  for (const { name } of await writing.objectStore("cells").getAll()) {
    if (!name.endsWith("/book.redacted")) continue;
    for (const { text } of await writing.objectStore("entries").index("cell").getAll(name)) {
      const named = text === undefined ? undefined : redactionOf(JSON.parse(text));
      if (named && refKey(named) === refKey(ref)) return true;
    }
  }
  return false;
}

async function refsOf(db: BookDb, bucket: string, readersOf: ReadersOf): Promise<EntryRef[]> {
  const refs: EntryRef[] = [];
  for (const { name, cell } of await db.getAll("cells")) {
    if (bucketOf(cell, readersOf) !== bucket) continue;
    for (const [id, hash] of await db.getAllKeysFromIndex("entries", "cell", name))
      refs.push({ id: id as EntryRef["id"], hash });
  }
  return refs;
}

async function getEntries(db: BookDb, refs: readonly EntryRef[]): Promise<StoredEntry[]> {
  const reading = db.transaction("entries");
  const found = await Promise.all(refs.map(({ id, hash }) => reading.store.get([id, hash])));
  return found.flatMap((kept): StoredEntry[] => {
    if (!kept) return [];
    const ref = { id: kept.id as EntryRef["id"], hash: kept.hash };
    return kept.text === undefined
      ? [{ ...ref, device: kept.device, kind: kept.kind, redacted: true }]
      : [{ ...ref, text: kept.text }];
  });
}
