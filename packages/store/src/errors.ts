/** What can go wrong with a book on disk, by name, so that server, shell and screens can say what to do. */
export type StoreFault =
  /** No room left on the disk: nothing was written; goes on after room returns. */
  | "full"
  /** Another process is writing for longer than we wait. */
  | "busy"
  /** File or folder may not be written. */
  | "read-only"
  /** Another process has the book open for writing. */
  | "in use"
  /** We had it open, and another process took it over (a long sleep, a clock that jumped). */
  | "taken over"
  /** The file fails its check. */
  | "damaged"
  /** Written by a newer version of this program. */
  | "newer"
  /** The SQLite library is older than the fix that this book relies on. */
  | "old sqlite"
  /** The file lies on a network disk, where its locks can't be trusted. */
  | "network disk"
  /** The file is a database, but no book. */
  | "not a book"
  /** The bytes of a file don't have the hash they came under. */
  | "other content"
  /** A file is larger than allowed. */
  | "too large"
  | "closed"
  | "failed";

/** @example new StoreError("full", "no room left on the disk") */
export class StoreError extends Error {
  override readonly name = "StoreError";
  readonly fault: StoreFault;
  constructor(fault: StoreFault, message: string, cause?: unknown) {
    super(message, cause === undefined ? undefined : { cause });
    this.fault = fault;
  }
}

/** Turns an error of SQLite, PostgreSQL or the file system into a StoreError; passes StoreErrors on. */
export function storeError(error: unknown): StoreError {
  if (error instanceof StoreError) return error;
  const code = String((error as { code?: unknown })?.code ?? "");
  const message = error instanceof Error ? error.message : String(error);
  if (/^SQLITE_FULL|^ENOSPC|^EDQUOT|^53100/.test(code))
    return new StoreError("full", `no room left on the disk (${message})`, error);
  if (/^SQLITE_BUSY|^SQLITE_LOCKED|^55P03/.test(code))
    return new StoreError("busy", `another program is writing into the book (${message})`, error);
  if (/^SQLITE_READONLY|^SQLITE_CANTOPEN|^SQLITE_PERM|^EACCES|^EPERM|^EROFS|^25006/.test(code))
    return new StoreError("read-only", `the book can't be written here (${message})`, error);
  if (/^SQLITE_CORRUPT|^SQLITE_NOTADB|^XX00/.test(code))
    return new StoreError("damaged", `the book's file is damaged (${message})`, error);
  return new StoreError("failed", message, error);
}
