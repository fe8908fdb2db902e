import type { Cell, Digest } from "@sillwood/bench/book";
import { type DBSchema, type IDBPDatabase, openDB } from "idb";

/** One line of the book on this device: the canonical text as it came, or what a redaction left of it. */
export interface KeptEntry {
  readonly id: string;
  readonly hash: string;
  /** `device/month/kind`: the finest set that is counted. */
  readonly cell: string;
  readonly device: string;
  readonly kind: string;
  /** Undefined once redacted. */
  readonly text?: string;
}

export interface KeptFile {
  readonly sha256: string;
  readonly type: string;
  readonly bytes: ArrayBuffer;
  /** Whether the server has named it. */
  readonly home: 0 | 1;
}

export interface BookSchema extends DBSchema {
  entries: { key: [string, string]; value: KeptEntry; indexes: { cell: string; id: string } };
  cells: { key: string; value: { readonly name: string; readonly cell: Cell; readonly digest: Digest } };
  /** Entries that the server has not named yet, by `id/hash`: what the top line counts. */
  away: { key: string; value: { readonly key: string; readonly at_ms: number } };
  files: { key: string; value: KeptFile; indexes: { home: number } };
  /** Identity, last clock, book id: small things by name. */
  meta: { key: string; value: unknown };
}

export type BookDb = IDBPDatabase<BookSchema>;

/** Flushed by the system before `complete`: an entry shown as kept survives a dead battery. */
export const STRICT = { durability: "strict" } as const;

/**
 * Runs the steps of a transaction and waits for its end: all of them or none. When a step fails, that is told; the end fails with
 * it and must not be heard of again as an error that nobody caught.
 */
export async function wholly<Result>(
  writing: { readonly done: Promise<void>; abort(): void },
  steps: () => Promise<Result>,
): Promise<Result> {
  writing.done.catch(() => undefined);
  let result: Result;
  try {
    result = await steps();
  } catch (error) {
    try {
      writing.abort();
    } catch {
      // It had ended by itself already.
    }
    throw error;
  }
  await writing.done;
  return result;
}

/** Opens the book of this device, or lays it on first use. */
export function openBookDb(name: string): Promise<BookDb> {
  return openDB<BookSchema>(name, 1, {
    upgrade(db) {
      const entries = db.createObjectStore("entries", { keyPath: ["id", "hash"] });
      entries.createIndex("cell", "cell");
      entries.createIndex("id", "id");
      db.createObjectStore("cells", { keyPath: "name" });
      db.createObjectStore("away", { keyPath: "key" });
      db.createObjectStore("files", { keyPath: "sha256" }).createIndex("home", "home");
      db.createObjectStore("meta");
    },
  });
}
