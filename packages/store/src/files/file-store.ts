import { createHash } from "node:crypto";
import type { FileLine } from "@sillwood/bench/book";
import { FILE_MAX_B, type FileStore } from "../entry-store.ts";
import { StoreError } from "../errors.ts";
import type { Ask } from "../sql/one-at-a-time.ts";

/** Which files there are: a table, or a map in memory. */
export interface FileRows {
  find(hash: string): Promise<FileLine | undefined>;
  add(file: FileLine): Promise<void>;
  remove(hash: string): Promise<void>;
  all(): Promise<readonly FileLine[]>;
}

/** Where their bytes lie. */
export interface FileBytes {
  /** A draft that nobody sees until it is kept. */
  begin(): Promise<{
    add(piece: Uint8Array): Promise<void>;
    /** Makes it durable under its hash, in place of what may lie there. */
    keep(hash: string): Promise<void>;
    abandon(): Promise<void>;
  }>;
  has(hash: string): Promise<boolean>;
  read(hash: string): AsyncIterable<Uint8Array>;
  remove(hash: string): Promise<void>;
}

/** A file store of rows and bytes. The bytes come first, so that a row never promises what is not there. */
export function fileStore(
  rows: FileRows,
  bytes: FileBytes,
  ask: Ask,
): FileStore & { damaged(): Promise<string[]> } {
  const has = async (hash: string) => {
    const row = await rows.find(hash);
    return row && (await bytes.has(hash)) ? row : undefined;
  };
  return {
    has: (hash) => ask(() => has(hash)),
    put: (hash, type, pieces, max_B = FILE_MAX_B) =>
      ask(async () => {
        const there = await has(hash);
        if (there) return there;
        const size_B = await receive(bytes, hash, pieces, max_B);
        await rows.add({ file: hash, size_B, type });
        return (await rows.find(hash)) ?? { file: hash, size_B, type };
      }),
    get: (hash) =>
      ask(async () => {
        const row = await has(hash);
        return row && { ...row, pieces: bytes.read(hash) };
      }),
    async *list() {
      for (const row of await ask(() => rows.all())) if (await bytes.has(row.file)) yield row;
    },
    drop: (hash) =>
      ask(async () => {
        await rows.remove(hash);
        await bytes.remove(hash);
      }),
    damaged: () =>
      ask(async () => {
        const bad: string[] = [];
        for (const { file } of await rows.all()) if (!(await isWhole(bytes, file))) bad.push(file);
        return bad;
      }),
  };
}

async function receive(
  bytes: FileBytes,
  hash: string,
  pieces: AsyncIterable<Uint8Array>,
  max_B: number,
): Promise<number> {
  const draft = await bytes.begin();
  try {
    const hasher = createHash("sha256");
    let size_B = 0;
    for await (const piece of pieces) {
      size_B += piece.length;
      if (size_B > max_B) throw new StoreError("too large", `the file is larger than ${max_B} bytes`);
      hasher.update(piece);
      await draft.add(piece);
    }
    const found = hasher.digest("hex");
    if (found !== hash)
      throw new StoreError("other content", `the file's SHA-256 is ${found}; expected ${hash}`);
    await draft.keep(hash);
    return size_B;
  } catch (error) {
    await draft.abandon();
    throw error;
  }
}

async function isWhole(bytes: FileBytes, hash: string): Promise<boolean> {
  if (!(await bytes.has(hash))) return false;
  const hasher = createHash("sha256");
  for await (const piece of bytes.read(hash)) hasher.update(piece);
  return hasher.digest("hex") === hash;
}
