import { createReadStream, existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { createInterface } from "node:readline";
import {
  bucketOf,
  cellOf,
  differingBuckets,
  type EntryRef,
  importBook,
  refKey,
  type Summary,
} from "@sillwood/bench/book";
import { LIST_FILE } from "@sillwood/store/backup";
import type { EntryStore } from "@sillwood/store/entry-store";
import { gate } from "../book/kinds.ts";
import { dataError } from "../errors.ts";
import { BOOK_FILE } from "./export.ts";

export interface HeldAgainst {
  /** Entries of the backup. */
  readonly entries_n: number;
  /** Those that the book does not have: a book only grows, so there should be none. */
  readonly gone: readonly EntryRef[];
}

interface BackupList {
  readonly book: string;
  readonly entries_n: number;
  readonly digests: Summary;
}

const all = () => "all" as const;

/**
 * Holds a book against a backup: where the digests of a device's month agree nothing is looked at twice, elsewhere each entry by name.
 *
 * @throws DataError when the folder holds no whole backup, or one of another book
 */
export async function holdAgainst(store: EntryStore, folder: string): Promise<HeldAgainst> {
  const list = listIn(folder);
  if (list.book !== store.book)
    throw dataError("folder", `the backup in ${folder} is of another book`, list.book);
  return compare(store, folder, list);
}

/** The list of a backup. @throws DataError when the folder holds no whole one */
export function listIn(folder: string): BackupList {
  const path = join(folder, LIST_FILE);
  if (!existsSync(path))
    throw dataError("folder", `there is no whole backup in ${folder}: ${LIST_FILE} is missing`, folder);
  return readList(path);
}

/** As `holdAgainst`, for a book that was just made of this backup, whatever it is called. */
export async function compare(store: EntryStore, folder: string, list: BackupList): Promise<HeldAgainst> {
  const mine = await store.summary(all);
  const unlike = new Set(differingBuckets(list.digests, mine).filter((bucket) => bucket in list.digests));
  const gone: EntryRef[] = [];
  if (unlike.size > 0) {
    const lines = createInterface({ input: createReadStream(join(folder, BOOK_FILE)) });
    const named: EntryRef[] = [];
    for await (const line of importBook(lines, gate)) {
      const found =
        line.what === "entry"
          ? { ref: { id: line.entry.entry.id, hash: line.entry.hash }, cell: cellOf(line.entry.entry) }
          : line.what === "redacted"
            ? { ref: { id: line.redacted.id, hash: line.redacted.hash }, cell: cellOf(line.redacted) }
            : undefined;
      if (found && unlike.has(bucketOf(found.cell, all))) named.push(found.ref);
    }
    for (let i = 0; i < named.length; i += 500) {
      const part = named.slice(i, i + 500);
      const there = new Set((await store.get(part)).map(refKey));
      gone.push(...part.filter((ref) => !there.has(refKey(ref))));
    }
  }
  return { entries_n: list.entries_n, gone };
}

function readList(path: string): BackupList {
  try {
    return JSON.parse(readFileSync(path, "utf8"));
  } catch {
    throw dataError("folder", `the list of the backup can't be read: ${path}`, path);
  }
}
