import { resolve } from "node:path";
import { houseAddress, mustExist, openForWriting } from "../book/open-book.ts";
import { type BookPlace, placeOf, placeSaid } from "../book/place.ts";
import { type Call, type Outcome, textOption } from "../command.ts";
import { dataError, UsageError } from "../errors.ts";
import { holdAgainst } from "./hold-against.ts";
import { backupInto, lastBackup, rollBackup } from "./rolling.ts";

/** Rehashes every entry and file, recounts the digests, and holds the book against the last backup that is known. */
export async function verify(call: Call, words: readonly string[]): Promise<Outcome> {
  const [word, more] = words;
  if (more !== undefined)
    throw new UsageError("verify looks at the whole book: sillwood book verify [FOLDER of a backup]");
  const place = placeOf(call);
  const store = await openAlone(place, "sillwood book verify");
  try {
    const { checked_n, damaged, recounted_n, damagedFiles } = await store.verify("all");
    const folder = word === undefined ? await lastBackup(store) : resolve(call.around.cwd, word);
    const against = folder === undefined ? undefined : await holdAgainst(store, folder);
    const gone = against?.gone ?? [];
    const sound = damaged.length === 0 && damagedFiles.length === 0 && gone.length === 0;
    const lines = [
      `${placeSaid(place)}: ${checked_n} entries looked at, ${sound ? "all sound" : `${damaged.length} damaged`}.`,
      ...(recounted_n > 0 ? [`${recounted_n} digests did not fit their entries and were counted anew.`] : []),
      ...damaged.map(
        ({ id }) =>
          `  entry ${id} no longer fits its hash; a good copy replaces it at the next sync or import`,
      ),
      ...damagedFiles.map(
        (hash) => `  file ${hash} is gone or changed; it is fetched again when a device has it`,
      ),
    ];
    if (against)
      lines.push(
        gone.length === 0
          ? `All ${against.entries_n} entries of the backup in ${folder} are in the book.`
          : `${gone.length} entries of the backup in ${folder} are not in the book: sillwood book import ${folder} brings them back.`,
        ...gone.slice(0, SHOWN_MAX_n).map(({ id }) => `  entry ${id} is gone`),
      );
    return {
      json: {
        checked_n,
        damaged,
        recounted_n,
        damagedFiles,
        backup: against ? { folder, entries_n: against.entries_n, gone } : null,
        sound,
      },
      text: lines.join("\n"),
      code: sound ? 0 : 1,
    };
  } finally {
    await store.close();
  }
}

/** A copy that opens on its own, and the plain export beside it. */
export async function backup(call: Call, words: readonly string[]): Promise<Outcome> {
  const [folder, more] = words;
  if (folder === undefined || more !== undefined)
    throw new UsageError("backup into which folder? sillwood book backup FOLDER");
  const store = await openAlone(placeOf(call), "sillwood book backup");
  try {
    const into = resolve(call.around.cwd, folder);
    const keep_n = keepOption(call);
    const { entries_n, files_n, paths } =
      keep_n === undefined
        ? await backupInto(store, into)
        : await rollBackup(store, into, { now_ms: call.around.now_ms(), keep_n });
    return {
      json: { entries_n, files_n, paths },
      text: [`${entries_n} entries and ${files_n} files are in`, ...paths.map((path) => `  ${path}`)].join(
        "\n",
      ),
    };
  } finally {
    await store.close();
  }
}

/** Most names of lost entries that are printed. */
const SHOWN_MAX_n = 20;

function keepOption(call: Call): number | undefined {
  const typed = textOption(call, "keep");
  if (typed === undefined) return undefined;
  const keep_n = /^\d{1,4}$/.test(typed) ? Number(typed) : 0;
  if (keep_n < 1) throw new UsageError(`--keep is ${JSON.stringify(typed)}; expected 1 to 9999 backups.`);
  return keep_n;
}

/** Both need the book to themselves for a moment. */
async function openAlone(place: BookPlace, label: string) {
  mustExist(place);
  try {
    return await openForWriting(place, label);
  } catch (error) {
    const address = houseAddress(error);
    if (address === undefined) throw error;
    throw dataError(
      "book",
      `the house at ${address} has the book open; stop it first. An export can be made beside it: sillwood book export FOLDER`,
    );
  }
}
