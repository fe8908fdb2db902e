import { createWriteStream } from "node:fs";
import { mkdir, open, rename, rm, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { Readable } from "node:stream";
import { pipeline } from "node:stream/promises";
import { exportBook } from "@sillwood/bench/book";
import type { BackupReport, EntryStore } from "./entry-store.ts";
import { diskBytes, syncFolder } from "./files/disk.ts";

/** The plain export: `book.ndjson` and a folder `files` beside it. Written under another name first, so that a good old one stays until the new one is whole. */
export async function writeExport(store: EntryStore, folder: string): Promise<BackupReport> {
  await mkdir(folder, { recursive: true });
  const files = diskBytes(join(folder, "files"));
  let files_n = 0;
  for await (const { file } of store.files.list()) {
    files_n++;
    if (!(await files.has(file))) await copyFile(store, file, files);
  }
  const path = join(folder, "book.ndjson");
  let entries_n = -2 - files_n;
  const lines = exportBook(store.book, store.all(), store.files.list());
  async function* text() {
    for await (const line of lines) {
      entries_n++;
      yield `${line}\n`;
    }
  }
  const part = `${path}.part`;
  await rm(part, { force: true });
  await pipeline(Readable.from(text()), createWriteStream(part));
  await syncFile(part);
  // The list after the lines, by the same rule: one that is there belongs to a whole export.
  const list = join(folder, LIST_FILE);
  const digests = await store.summary(() => "all");
  await writeFile(
    `${list}.part`,
    `${JSON.stringify({ book: store.book, entries_n, digests }, undefined, 1)}\n`,
  );
  await syncFile(`${list}.part`);
  await rename(part, path);
  await rename(`${list}.part`, list);
  await syncFolder(folder);
  return { entries_n, files_n, paths: [path, list] };
}

/** Beside the lines: how many entries each device wrote in each month, with their digests, to hold a book against later. */
export const LIST_FILE = "digests.json";

async function copyFile(store: EntryStore, hash: string, files: ReturnType<typeof diskBytes>): Promise<void> {
  const found = await store.files.get(hash);
  if (!found) return;
  const draft = await files.begin();
  try {
    for await (const piece of found.pieces) await draft.add(piece);
    await draft.keep(hash);
  } catch (error) {
    await draft.abandon();
    throw error;
  }
}

export async function syncFile(path: string): Promise<void> {
  const file = await open(path, "r+");
  try {
    await file.sync();
  } finally {
    await file.close();
  }
}
