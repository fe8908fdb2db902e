import {
  type AcceptedEntry,
  type AppendBatch,
  type AppendResult,
  bucketOf,
  type Cell,
  cellOf,
  type Digest,
  EMPTY_DIGEST,
  type Entry,
  type EntryRef,
  entryDigest,
  joinDigests,
  REDACTED,
  type ReadersOf,
  redactionOf,
  refKey,
  type StoredEntry,
  type SyncStore,
  summaryOf,
} from "@sillwood/bench/book";
import type { IDBPTransaction } from "idb";
import { type BookDb, type BookSchema, type KeptEntry, STRICT, wholly } from "./book-db.ts";

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
      return wholly(writing, () => appendIn(writing, batch));
    },
    write: async (entries, now_ms) => {
      const writing = begin();
      return wholly(writing, async () => {
        for (const entry of entries)
          await writing
            .objectStore("away")
            .put({ key: refKey({ id: entry.entry.id, hash: entry.hash }), at_ms: now_ms });
        return appendIn(writing, { entries, redacted: [] });
      });
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
      await wholly(writing, async () => {
        const still = new Set(unnamed.map(refKey));
        for (const key of before) {
          if (!still.delete(key)) await writing.store.delete(key);
        }
        // A server that came back from an old copy no longer names what it once had.
        for (const key of still) await writing.store.put({ key, at_ms: now_ms });
      });
    },
  };
}

async function appendIn(writing: Writing, { entries, redacted }: AppendBatch): Promise<AppendResult> {
  const kept = writing.objectStore("entries");
  const counted = new Map<string, { readonly cell: Cell; readonly digest: Digest }>();
  const stored: EntryRef[] = [];
  const setAside: EntryRef[] = [];
  let added_n = 0;
  const count = (cell: Cell, ref: EntryRef) => {
    const before = counted.get(cellName(cell))?.digest ?? EMPTY_DIGEST;
    counted.set(cellName(cell), { cell, digest: joinDigests(before, entryDigest(ref)) });
    added_n++;
  };
  // Asked all at once: a new device takes in a whole book, and a question each would cost it a minute.
  const known = await Promise.all(entries.map(({ entry, hash }) => kept.getKey([entry.id, hash])));
  const gone = await redactedKeys(writing, entries);
  const inBatch = new Set<string>();
  const puts: Promise<unknown>[] = [];
  for (const [place_n, { entry, hash, text }] of entries.entries()) {
    const ref = { id: entry.id, hash };
    stored.push(ref);
    if (known[place_n] || inBatch.has(refKey(ref))) continue;
    inBatch.add(refKey(ref));
    // A body that somebody else still had when the redaction was here already is not taken in again.
    const put = kept.put({ ...ref, ...filed(entry), ...(gone.has(refKey(ref)) ? {} : { text }) });
    // The first that fails is told; the others go down with the transaction.
    put.catch(() => undefined);
    puts.push(put);
    count(cellOf(entry), ref);
  }
  await Promise.all(puts);
  for (const { entry } of entries) {
    const named = redactionOf(entry);
    const body = named && (await kept.get([named.id, named.hash]));
    if (body) await kept.put(withoutText(body));
  }
  for (const shell of redacted) {
    const ref = { id: shell.id, hash: shell.hash };
    if (!gone.has(refKey(ref))) {
      setAside.push(ref);
      continue;
    }
    stored.push(ref);
    const body = await kept.get([shell.id, shell.hash]);
    if (body) await kept.put(withoutText(body));
    else {
      await kept.put({ ...ref, ...filed(shell) });
      count(cellOf(shell), ref);
    }
  }
  const cells = writing.objectStore("cells");
  for (const [name, { cell, digest }] of counted) {
    const before = await cells.get(name);
    await cells.put({ name, cell, digest: joinDigests(before?.digest ?? EMPTY_DIGEST, digest) });
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

/** Names of all entries that a redaction here or in the batch names. Redactions are rare, so they are looked through. */
async function redactedKeys(writing: Writing, batch: readonly AcceptedEntry[]): Promise<ReadonlySet<string>> {
  const keys = new Set<string>();
  const note = (entry: Entry) => {
    const named = redactionOf(entry);
    if (named) keys.add(refKey(named));
  };
  for (const { entry } of batch) note(entry);
  for (const name of await writing.objectStore("cells").getAllKeys()) {
    if (!name.endsWith(`/${REDACTED}`)) continue;
    for (const { text } of await writing.objectStore("entries").index("cell").getAll(name))
      if (text !== undefined) note(JSON.parse(text) as Entry);
  }
  return keys;
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
