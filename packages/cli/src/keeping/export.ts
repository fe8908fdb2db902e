import { createWriteStream, existsSync, mkdirSync, readdirSync } from "node:fs";
import { rename } from "node:fs/promises";
import { join, resolve } from "node:path";
import { Readable } from "node:stream";
import { pipeline } from "node:stream/promises";
import { exportBook } from "@sillwood/bench/book";
import { openForReading } from "../book/open-book.ts";
import { placeOf } from "../book/place.ts";
import type { Call, Outcome } from "../command.ts";
import { dataError, UsageError } from "../errors.ts";

export const BOOK_FILE = "book.ndjson";
export const FILES_FOLDER = "files";

/** The whole book as plain text, one entry a line, and its files under their hashes. */
export async function exportBookTo(call: Call, words: readonly string[]): Promise<Outcome> {
  const [word, more] = words;
  if (word === undefined || more !== undefined)
    throw new UsageError("export into which folder? sillwood book export FOLDER");
  const folder = resolve(call.around.cwd, word);
  if (existsSync(folder) && readdirSync(folder).length > 0)
    throw dataError("folder", `${word} is not empty; an export never writes over anything`, word);
  const store = await openForReading(placeOf(call));
  try {
    mkdirSync(join(folder, FILES_FOLDER), { recursive: true });
    const path = join(folder, BOOK_FILE);
    let lines_n = 0;
    async function* lines() {
      for await (const line of exportBook(store.book, store.all(), store.files.list())) {
        lines_n++;
        yield `${line}\n`;
      }
    }
    // A half-written export must not be taken for a whole one: it gets its name last.
    await pipeline(Readable.from(lines()), createWriteStream(`${path}.new`));
    let files_n = 0;
    for await (const { file: sha256 } of store.files.list()) {
      const file = await store.files.get(sha256);
      if (!file) continue;
      await pipeline(Readable.from(file.pieces), createWriteStream(join(folder, FILES_FOLDER, sha256)));
      files_n++;
    }
    await rename(`${path}.new`, path);
    const entries_n = lines_n - 2 - files_n;
    return {
      json: { entries_n, files_n, path },
      text: `${entries_n} entries and ${files_n} files are in ${folder}.`,
    };
  } finally {
    await store.close();
  }
}
