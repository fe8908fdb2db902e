import type { Call, Command, Outcome } from "../command.ts";
import { UsageError } from "../errors.ts";
import { backup, verify } from "../keeping/checking.ts";
import { exportBookTo } from "../keeping/export.ts";
import { importBookFrom } from "../keeping/import.ts";
import { bookLog } from "../keeping/log.ts";
import { correct, redact, restore, withdraw } from "../keeping/put-right.ts";
import { isBackup, restoreBackup } from "../keeping/restore-backup.ts";

const parts: Readonly<Record<string, (call: Call, words: readonly string[]) => Promise<Outcome>>> = {
  log: bookLog,
  correct,
  withdraw,
  redact,
  restore: (call, words) => (isBackup(call, words) ? restoreBackup(call, words) : restore(call, words)),
  export: exportBookTo,
  import: importBookFrom,
  verify,
  backup,
};

/** The book itself: read, put right, taken out whole, taken in, checked, backed up. */
export const book: Command = {
  verb: "book",
  what: "the log; put right or withdraw; export, import, verify, back up",
  usage: [
    "log [PLANT] [--craft NAME] [--by WHO] [--from DAY] [--to DAY] [--most N]",
    "correct ENTRY... key=value ...",
    "withdraw|restore ENTRY...",
    "redact ENTRY...",
    "export FOLDER",
    "import FOLDER|FILE.ndjson",
    "verify [FOLDER of a backup]",
    "backup FOLDER [--keep N]",
    "restore FOLDER of a backup",
  ],
  options: {
    craft: {
      type: "string",
      value: "NAME",
      what: "only entries of this craft or part: watering, plant, bench",
    },
    from: { type: "string", value: "DAY", what: "from this day on" },
    to: { type: "string", value: "DAY", what: "up to this day, itself not included" },
    keep: { type: "string", value: "N", what: "backup into a dated folder and keep the newest N of them" },
    most: { type: "string", value: "N", what: "at most so many lines, newest first; else 200" },
  },
  help: [
    "ENTRY is an id, or its last letters as the log shows them. Nothing is erased: what is put",
    "right or withdrawn stays in the book, ruled through and signed. Only redact drops the words of an",
    "entry, on every device and for good: for what should never have been written.",
    "restore makes a book from a backup where --book says; it never writes over one that is there.",
    "An export is plain text (NDJSON) with its files beside it; it outlives the program.",
  ],
  example: [
    "sillwood book log 127",
    "sillwood book correct 3f81c2 volume=160",
    "sillwood book export copy-of-the-book",
  ],
  async run(call) {
    const [part = "log", ...words] = call.words;
    const act = Object.hasOwn(parts, part) ? parts[part] : undefined;
    if (!act)
      throw new UsageError(
        `book does not know ${JSON.stringify(part.slice(0, 60))}; expected one of ${Object.keys(parts).join(", ")}.`,
      );
    return act(call, words);
  },
};
