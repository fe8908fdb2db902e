import { resolve } from "node:path";
import { houseAddress, mustExist, openForWriting } from "../book/open-book.ts";
import { type BookPlace, placeOf, placeSaid } from "../book/place.ts";
import type { Call, Outcome } from "../command.ts";
import { dataError, UsageError } from "../errors.ts";

/** Rehashes every entry and file and recounts the digests. */
export async function verify(call: Call, words: readonly string[]): Promise<Outcome> {
  if (words.length > 0) throw new UsageError("verify takes no words: it looks at the whole book.");
  const place = placeOf(call);
  const store = await openAlone(place, "sillwood book verify");
  try {
    const { checked_n, damaged, recounted_n, damagedFiles } = await store.verify("all");
    const sound = damaged.length === 0 && damagedFiles.length === 0;
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
    return {
      json: { checked_n, damaged, recounted_n, damagedFiles, sound },
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
    const { entries_n, files_n, paths } = await store.backup(resolve(call.around.cwd, folder));
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
