import { createHash } from "node:crypto";
import {
  type AppendBatch,
  type AppendResult,
  bucketOf,
  type Cell,
  cellOf,
  type Digest,
  EMPTY_DIGEST,
  type EntryRef,
  entryDigest,
  type FileLine,
  type Json,
  joinDigests,
  lessDigest,
  redactionOf,
  refKey,
  type StoredEntry,
  summaryOf,
} from "@sillwood/bench/book";
import { writeExport } from "../backup.ts";
import type { EntryStore } from "../entry-store.ts";
import { fileStore } from "../files/file-store.ts";
import { storeGate } from "../sql/one-at-a-time.ts";
import { memoryBytes } from "./memory-bytes.ts";
import { memoryAside, memoryKeys } from "./memory-devices.ts";

interface Row {
  readonly ref: EntryRef;
  readonly cell: Cell;
  text: string | null;
}

/** A book in memory, for tests and simulations. Keeps every rule of the contract but durability. `rows` lets a test damage one. */
export function memoryStore(book = "main"): EntryStore & { readonly rows: Map<string, Row> } {
  const rows = new Map<string, Row>();
  const redactions = new Set<string>();
  const damage = new Map<string, EntryRef>();
  const digests = new Map<string, { cell: Cell; digest: Digest }>();
  const fileRows = new Map<string, FileLine>();
  const cache = new Map<string, string>();
  const people = new Map<string, string>();
  const { ask, close } = storeGate();

  const count = (row: Row, join: typeof joinDigests | typeof lessDigest) => {
    const key = `${row.cell.device}/${row.cell.month}/${row.cell.kind}`;
    const digest = join(digests.get(key)?.digest ?? EMPTY_DIGEST, entryDigest(row.ref));
    digests.set(key, { cell: row.cell, digest });
  };
  const put = (ref: EntryRef, cell: Cell, text: string | null): boolean => {
    const key = refKey(ref);
    const there = rows.get(key);
    if (there && !damage.delete(key)) return false;
    const row = there ?? { ref, cell, text };
    row.text = text;
    rows.set(key, row);
    count(row, joinDigests);
    return !there;
  };

  function append({ entries, redacted }: AppendBatch): AppendResult {
    const stored: EntryRef[] = [];
    const setAside: EntryRef[] = [];
    let added_n = 0;
    for (const { entry, hash, text } of entries) {
      const ref = { id: entry.id, hash };
      if (put(ref, cellOf(entry), redactions.has(refKey(ref)) ? null : text)) added_n++;
      stored.push(ref);
      const target = redactionOf(entry);
      if (!target) continue;
      redactions.add(refKey(target));
      const row = rows.get(refKey(target));
      if (row) put(row.ref, row.cell, null);
      if (row) row.text = null;
    }
    for (const shell of redacted) {
      const ref = { id: shell.id, hash: shell.hash };
      if (!redactions.has(refKey(ref))) {
        setAside.push(ref);
        continue;
      }
      if (put(ref, cellOf(shell), null)) added_n++;
      stored.push(ref);
    }
    return { stored, added_n, setAside };
  }

  const whole = () => [...rows.values()].filter((row) => !damage.has(refKey(row.ref)));
  const storedOf = ({ ref, cell, text }: Row): StoredEntry =>
    text === null ? { ...ref, device: cell.device, kind: cell.kind, redacted: true } : { ...ref, text };
  const isWhole = ({ ref, text }: Row) =>
    text === null
      ? redactions.has(refKey(ref))
      : createHash("sha256").update(text).digest("hex") === ref.hash;

  const files = fileStore(
    {
      find: async (hash) => fileRows.get(hash),
      add: async (file) => void (fileRows.has(file.file) || fileRows.set(file.file, file)),
      remove: async (hash) => void fileRows.delete(hash),
      all: async () => [...fileRows.values()].sort((a, b) => (a.file < b.file ? -1 : 1)),
    },
    memoryBytes(),
    ask,
  );
  const store: EntryStore & { readonly rows: Map<string, Row> } = {
    book,
    rows,
    append: (batch) => ask(() => append(batch)),
    summary: (readersOf) => ask(() => summaryOf(digests.values(), readersOf)),
    refs: (bucket, readersOf) =>
      ask(() =>
        whole()
          .filter(({ cell }) => bucketOf(cell, readersOf) === bucket)
          .map(({ ref }) => ref),
      ),
    get: (refs) =>
      ask(() =>
        refs.flatMap((ref) => (damage.has(refKey(ref)) ? [] : (rows.get(refKey(ref)) ?? []))).map(storedOf),
      ),
    count_n: () => ask(() => whole().length),
    async *texts() {
      yield whole().flatMap(({ text }) => text ?? []);
    },
    async *all() {
      yield whole().map(storedOf);
    },
    verify: () =>
      ask(async () => {
        for (const row of whole())
          if (!isWhole(row)) {
            damage.set(refKey(row.ref), row.ref);
            count(row, lessDigest);
          }
        return {
          checked_n: rows.size,
          damaged: [...damage.values()],
          recounted_n: 0,
          damagedFiles: await files.damaged(),
        };
      }),
    files,
    cache: {
      get: (key) => ask(() => cache.get(key)),
      put: (key, value) => ask(() => void cache.set(key, value)),
      drop: (prefix) =>
        ask(() => {
          for (const key of [...cache.keys()]) if (key.startsWith(prefix)) cache.delete(key);
        }),
    },
    people: {
      get: (id) => ask(() => (people.has(id) ? (JSON.parse(people.get(id) as string) as Json) : undefined)),
      put: (id, card) => ask(() => void people.set(id, JSON.stringify(card))),
      erase: (id) => ask(() => void people.delete(id)),
      ids: () => ask(() => [...people.keys()].sort()),
    },
    keys: memoryKeys(ask),
    aside: memoryAside(ask),
    backup: (folder) => ask(() => writeExport(store, folder)),
    close: () => close(async () => undefined),
  };
  return store;
}
