import { existsSync, mkdirSync, statfsSync } from "node:fs";
import { dirname } from "node:path";
import Database from "better-sqlite3";
import { StoreError, storeError } from "../errors.ts";

/** The first SQLite without the log-reset fault that could lose commits when two connections write and checkpoint at once. */
export const SQLITE_LEAST = "3.51.3";

/** Marks the file as a book: "SILL" in ASCII. */
const APPLICATION_ID = 0x53494c4c;

/** Types of network file systems as Linux numbers them (statfs): NFS, SMB, CIFS, SMB2, AFS, Coda. */
const NETWORK = new Set([0x6969, 0x517b, 0xff534d42, 0xfe534d42, 0x5346414f, 0x73757245]);

/**
 * Opens a database file the one way in which a book may be opened, and refuses to go on where durability can't be had.
 *
 * @throws StoreError "network disk", "old sqlite", "damaged", "not a book", "read-only", "failed"
 */
export function openChecked(path: string): Database.Database {
  let db: Database.Database | undefined;
  try {
    if (path !== ":memory:") refuseNetworkDisk(path);
    const leftOpen = existsSync(`${path}-wal`);
    db = new Database(path);
    refuseOldSqlite(String(db.prepare("select sqlite_version()").pluck().get()));
    refuseStranger(db);
    db.pragma("journal_mode = WAL");
    // The library opens an existing book with NORMAL unless told: a power cut could then take back what was acknowledged.
    db.pragma("synchronous = FULL");
    db.pragma("foreign_keys = ON");
    db.pragma("busy_timeout = 5000");
    db.pragma("trusted_schema = OFF");
    // What a redaction drops is overwritten, not only unlinked.
    db.pragma("secure_delete = ON");
    assertDurable(db);
    // A log that was left behind tells of a crash. A file that was closed well is gone through by `verify`, once the book is
    // open: in a book of years that takes as long as everything else that a start does.
    if (leftOpen) assertSound(db);
    return db;
  } catch (error) {
    db?.close();
    throw storeError(error);
  }
}

/** Goes through the whole file. @throws StoreError "damaged" where its pages do not hang together */
export function assertSound(db: Database.Database): void {
  const check = db.pragma("quick_check(1)", { simple: true });
  if (check !== "ok") throw new StoreError("damaged", `the book's file fails its check: ${check}`);
}

/** @throws StoreError "failed" unless every commit is synced */
export function assertDurable(db: Database.Database): void {
  const synchronous = db.pragma("synchronous", { simple: true });
  if (synchronous !== 2)
    throw new StoreError("failed", `synchronous is ${synchronous}; a book needs 2 (FULL)`);
  const journal = db.pragma("journal_mode", { simple: true });
  if (journal !== "wal" && !db.memory)
    throw new StoreError("failed", `journal_mode is ${journal}; a book needs wal`);
}

/** @throws StoreError "old sqlite" for anything before SQLITE_LEAST */
export function refuseOldSqlite(version: string): void {
  const [a, b] = [version, SQLITE_LEAST].map((text) => text.split(".").map(Number)) as [number[], number[]];
  const order = a.map((part, i) => part - (b[i] ?? 0)).find((difference) => difference !== 0) ?? 0;
  if (order < 0)
    throw new StoreError(
      "old sqlite",
      `SQLite is ${version}; a book needs ${SQLITE_LEAST} or later (earlier ones can lose commits)`,
    );
}

function refuseStranger(db: Database.Database): void {
  const id = db.pragma("application_id", { simple: true });
  if (id === APPLICATION_ID) return;
  const tables_n = db.prepare("select count(*) from sqlite_master").pluck().get();
  if (id !== 0 || tables_n !== 0)
    throw new StoreError("not a book", "the file is a database of another program");
  db.pragma(`application_id = ${APPLICATION_ID}`);
}

function refuseNetworkDisk(path: string): void {
  const folder = dirname(path);
  if (!existsSync(folder)) mkdirSync(folder, { recursive: true });
  const { type } = statfsSync(folder);
  if (process.platform === "linux" && NETWORK.has(type))
    throw new StoreError(
      "network disk",
      `${folder} is a network disk, whose locks can't be trusted; keep the book on a disk of this machine`,
    );
}
