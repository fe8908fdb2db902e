import { createReadStream, existsSync, statSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { createInterface } from "node:readline";
import { type AcceptedEntry, importBook, type RedactedEntry } from "@sillwood/bench/book";
import { gate } from "../book/kinds.ts";
import { openForWriting } from "../book/open-book.ts";
import { placeOf } from "../book/place.ts";
import type { Call, Outcome } from "../command.ts";
import { dataError, type Trouble, troubleLine, UsageError } from "../errors.ts";
import { BOOK_FILE, FILES_FOLDER } from "./export.ts";

const BATCH_n = 500;

/** Takes an export in: what is there already stays; damaged lines are named and the rest is taken. */
export async function importBookFrom(call: Call, words: readonly string[]): Promise<Outcome> {
  const [word, more] = words;
  if (word === undefined || more !== undefined)
    throw new UsageError("import from where? sillwood book import FOLDER");
  const given = resolve(call.around.cwd, word);
  const path = existsSync(given) && statSync(given).isDirectory() ? join(given, BOOK_FILE) : given;
  if (!existsSync(path)) throw dataError("file", `there is no export at ${word}`, word);
  const store = await openForWriting(placeOf(call), "sillwood book import");
  try {
    const troubles: Trouble[] = [];
    let [entries_n, added_n, files_n, missing_n] = [0, 0, 0, 0];
    let entries: AcceptedEntry[] = [];
    let redacted: RedactedEntry[] = [];
    const flush = async () => {
      added_n += (await store.append({ entries, redacted })).added_n;
      [entries, redacted] = [[], []];
    };
    for await (const line of importBook(createInterface({ input: createReadStream(path) }), gate)) {
      if (line.what === "damaged")
        troubles.push(...line.problems.map((problem) => ({ ...problem, line: line.line_n })));
      else if (line.what === "entry") entries.push(line.entry);
      else if (line.what === "redacted") redacted.push(line.redacted);
      else if (line.what === "file") {
        const beside = fileBeside(dirname(path), line.file.file);
        if (beside === undefined) missing_n++;
        else {
          await store.files.put(line.file.file, line.file.type, createReadStream(beside));
          files_n++;
        }
      }
      if (line.what === "entry" || line.what === "redacted") entries_n++;
      if (entries.length + redacted.length >= BATCH_n) await flush();
    }
    await flush();
    return {
      json: { entries_n, added_n, files_n, missing_n, problems: troubles },
      text: [
        `${entries_n} entries read, ${added_n} of them new; ${files_n} files.`,
        ...(missing_n > 0
          ? [`${missing_n} files are named but do not lie beside the export; their numbers wait for them.`]
          : []),
      ].join("\n"),
      complaints: troubles.map(troubleLine),
      code: troubles.length > 0 ? 1 : 0,
    };
  } finally {
    await store.close();
  }
}

/** A file of an export lies under its hash; in a backup it lies one folder deeper, as on the disk of a book. */
function fileBeside(folder: string, sha256: string): string | undefined {
  const places = [join(folder, FILES_FOLDER, sha256), join(folder, FILES_FOLDER, sha256.slice(0, 2), sha256)];
  return places.find((path) => existsSync(path));
}
