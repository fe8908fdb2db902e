import type { EntryRef, FileLine, Json, StoredEntry, SyncStore } from "@sillwood/bench/book";

/**
 * The book on disk. Entries only ever come in; a body leaves in two ways alone: redaction drops it, and a copy
 * from elsewhere replaces one that no longer matches its hash. Everything that is not an entry, a file or a person card is cache.
 *
 * Every method may throw StoreError; see errors.ts.
 */
export interface EntryStore extends SyncStore {
  /** Name of the book, as it stands in the address of the server. */
  readonly book: string;
  /** Number of entries, redacted ones counted, damaged ones not. */
  count_n(): Promise<number>;
  /** The fast path of a cold start: canonical texts of all entries that have a body, in chunks, in no promised order. */
  texts(): AsyncIterable<readonly string[]>;
  /** All entries, redacted ones too, by id: for export. */
  all(): AsyncIterable<readonly StoredEntry[]>;
  /**
   * Rehashes bodies and recounts digests. A body that does not match its hash leaves the digest, so that the next sync fetches it again.
   *
   * @param part `all`, or `next`: one month of one device, in turn, as each start does
   */
  verify(part: "all" | "next"): Promise<VerifyReport>;
  readonly files: FileStore;
  readonly cache: CacheStore;
  readonly people: PersonCards;
  readonly keys: DeviceKeys;
  readonly aside: AsideShelf;
  /** Writes a copy that opens on its own, and the plain export with its files, into a folder. */
  backup(folder: string): Promise<BackupReport>;
  close(): Promise<void>;
}

export interface VerifyReport {
  readonly checked_n: number;
  /** Damaged now, whether found just now or before. */
  readonly damaged: readonly EntryRef[];
  /** Digests that did not match their entries and were counted anew. */
  readonly recounted_n: number;
  /** Hashes of files whose bytes are gone or changed; looked at with `all` only. */
  readonly damagedFiles: readonly string[];
}

export interface BackupReport {
  readonly entries_n: number;
  readonly files_n: number;
  /** Paths of what was written, the plain export first. */
  readonly paths: readonly string[];
}

/** Largest file [B]: a photo as the phone sends it, or a month of readings. Our assumption. */
export const FILE_MAX_B = 16 * 1024 * 1024;

/** Photos and parts of series, by SHA-256. Never changed; putting one twice is the same as once. */
export interface FileStore {
  has(hash: string): Promise<FileLine | undefined>;
  /**
   * Takes a file in pieces; it is there, whole and durable, when the promise resolves.
   *
   * @throws StoreError "other content" when the bytes have another hash, "too large" past `max_B` (FILE_MAX_B when left out)
   */
  put(hash: string, type: string, pieces: AsyncIterable<Uint8Array>, max_B?: number): Promise<FileLine>;
  get(hash: string): Promise<(FileLine & { readonly pieces: AsyncIterable<Uint8Array> }) | undefined>;
  list(): AsyncIterable<FileLine>;
  /** Forgets a file whose bytes are damaged, so that it can be put again. */
  drop(hash: string): Promise<void>;
}

/** May be emptied at any time: whoever reads it can always compute anew. */
export interface CacheStore {
  get(key: string): Promise<string | undefined>;
  put(key: string, value: string): Promise<void>;
  /** Drops every key that starts so; all of them for the empty text. */
  drop(prefix: string): Promise<void>;
}

/** Names and addresses live here, outside the book: editable and erasable. */
export interface PersonCards {
  get(id: string): Promise<Json | undefined>;
  put(id: string, card: Json): Promise<void>;
  erase(id: string): Promise<void>;
  ids(): Promise<readonly string[]>;
}

/** What a paired device may do here. The key itself is on the device alone; kept is its SHA-256. */
export interface DeviceKey {
  readonly hash: string;
  readonly device: string;
  readonly person: string;
  readonly role: "grower" | "helper" | "viewer";
  /** What its holder calls it. */
  readonly name: string;
  readonly made_ms: number;
  readonly seen_ms: number;
  readonly closed_ms?: number;
}

/** Keys of devices: outside the book, gone with the server. That a device was closed stands in the book. */
export interface DeviceKeys {
  add(key: DeviceKey): Promise<void>;
  find(hash: string): Promise<DeviceKey | undefined>;
  /** By device, the oldest first. */
  list(): Promise<readonly DeviceKey[]>;
  /** Closes the keys of a device that were made up to then and stand open. Returns how many. */
  close(device: string, at_ms: number): Promise<number>;
  seen(hash: string, at_ms: number): Promise<void>;
}

/** Why an entry waits for the grower. */
export type AsideWhy = "closed" | "for another" | "viewer" | "only the grower";

export interface AsideEntry extends EntryRef {
  /** The device that brought it, which need not be the one that wrote it. */
  readonly device: string;
  readonly why: AsideWhy;
  readonly came_ms: number;
  /** Canonical text; undefined once dropped: its name stays, so that it does not come back. */
  readonly text?: string;
}

/** Entries that wait for the grower: unfolded, in no digest, sent to nobody else. */
export interface AsideShelf {
  /** Durable when it resolves. What lies there already, dropped or not, stays as it is. */
  put(entries: readonly AsideEntry[]): Promise<void>;
  list(): Promise<readonly AsideEntry[]>;
  /** Forgets the text and keeps the name. */
  drop(ref: EntryRef): Promise<void>;
  /** Forgets it wholly, once it is in the book. */
  clear(ref: EntryRef): Promise<void>;
}
