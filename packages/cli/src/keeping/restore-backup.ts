import { copyFileSync, cpSync, existsSync, renameSync, rmSync } from "node:fs";
import { join, resolve } from "node:path";
import { openSqlite } from "@sillwood/store/sqlite";
import { openForWriting } from "../book/open-book.ts";
import { placeOf, placeSaid } from "../book/place.ts";
import type { Call, Outcome } from "../command.ts";
import { dataError, UsageError } from "../errors.ts";
import { BOOK_FILE, FILES_FOLDER } from "./export.ts";
import { compare, listIn } from "./hold-against.ts";
import { importBookFrom } from "./import.ts";

const COPY_FILE = "book.sqlite";

/** Whether the one word names a folder with a backup, and not an entry. */
export const isBackup = (call: Call, words: readonly string[]): boolean =>
  words.length === 1 && existsSync(join(resolve(call.around.cwd, words[0] as string), BOOK_FILE));

/**
 * A book from a backup: its checked copy with people's cards and phones' keys where it has one, else its plain lines. What comes out is
 * held against the backup's own list before anybody is told that it is whole.
 */
export async function restoreBackup(call: Call, words: readonly string[]): Promise<Outcome> {
  const [word = ""] = words;
  const folder = resolve(call.around.cwd, word);
  if (call.options["book"] === undefined)
    throw new UsageError("restore where to? sillwood book restore FOLDER --book NEW.sillwood");
  const place = placeOf(call);
  const copy = join(folder, COPY_FILE);
  if (place.engine === "sqlite") {
    if (existsSync(place.path))
      throw dataError(
        "book",
        `there is a book at ${placeSaid(place)}; restore never writes over one`,
        place.path,
      );
    if (existsSync(copy)) {
      // The book gets its name last: a restore that broke off leaves no half of one.
      const files = join(folder, FILES_FOLDER);
      if (existsSync(files)) cpSync(files, `${place.path}-files`, { recursive: true });
      rmSync(`${place.path}.part`, { force: true });
      copyFileSync(copy, `${place.path}.part`);
      renameSync(`${place.path}.part`, place.path);
    }
  }
  const list = listIn(folder);
  if (place.engine === "sqlite" && !existsSync(copy))
    // The new book keeps the old one's name, by which phones and backups know it.
    await (await openSqlite({ path: place.path, book: list.book, label: "sillwood book restore" })).close();
  if (place.engine === "postgres" || !existsSync(copy)) await importBookFrom(call, [word]);
  const store = await openForWriting(place, "sillwood book restore");
  try {
    const { checked_n, damaged, damagedFiles } = await store.verify("all");
    const { gone } = await compare(store, folder, list);
    const sound = damaged.length === 0 && damagedFiles.length === 0 && gone.length === 0;
    return {
      json: { entries_n: checked_n, damaged, damagedFiles, gone, sound },
      text: sound
        ? `${placeSaid(place)}: ${checked_n} entries, all sound and all of the backup.`
        : `${placeSaid(place)}: ${checked_n} entries; ${damaged.length} damaged, ${damagedFiles.length} files damaged, ${gone.length} of the backup missing.`,
      code: sound ? 0 : 1,
    };
  } finally {
    await store.close();
  }
}
