import { readFile } from "node:fs/promises";
import { resolve } from "node:path";
import { doubtsOf } from "@sillwood/bench/pages";
import type { Draft } from "@sillwood/bench/round";
import { type NewFile, readBook, type Writing, withBook } from "../book/session.ts";
import { type Call, type Command, type Outcome, textOption } from "../command.ts";
import { doneDrafts } from "../entering/done.ts";
import { draftEntry } from "../entering/draft-entry.ts";
import { fromNdjson } from "../entering/from-ndjson.ts";
import { fromRows } from "../entering/from-rows.ts";
import { kindShape, kindsText, typedKinds } from "../entering/list-kinds.ts";
import { readPhoto } from "../entering/photo.ts";
import { isKind, kindNamed, partWords } from "../entering/typed-words.ts";
import { wroteOutcome } from "../entering/wrote.ts";
import { DataError, dataError, UsageError } from "../errors.ts";
import { readCsv } from "../text/csv.ts";
import { widthFor } from "../text/width.ts";
import { rosterOf } from "../typed/new-plant.ts";
import type { Typing } from "../typed/typing.ts";

/** Every act is an entry: this verb writes them. */
export const enter: Command = {
  verb: "enter",
  what: "write what was seen or done into the book",
  usage: [
    "KIND WHAT... key=value ... [--photo FILE]",
    "[KIND WHAT...] --from FILE.csv|FILE.ndjson|-",
    "done PLANT...",
    "[KIND] --list",
  ],
  options: {
    list: { type: "boolean", what: "all kinds with their fields, units, ranges and an example" },
    from: {
      type: "string",
      value: "FILE",
      what: "a row (CSV) or a line (NDJSON) for each entry; - reads the input",
    },
    photo: { type: "string", value: "FILE", what: "a JPEG or PNG; where it was taken is left out" },
    true: { type: "boolean", what: "what was asked about is right: write it as typed" },
    try: { type: "boolean", what: "say what would be written, and write nothing" },
  },
  help: [
    "WHAT is a plant's number, several of them, @BENCH for all that stand there, a name, or",
    "new for something that has just come: it gets an id, and a plant the next free number.",
    "Values may carry a unit (volume=6.5floz, air=70F) and a comma for the point. when= says",
    'when it happened: when="yesterday 8:00", when=2h ago. A new plant may say window=S,',
    "window=outdoors or bench=NAME in place of a spot; the bench is laid when there is none.",
    "done writes the advised act of each plant. All entries of one command are kept, or none.",
  ],
  example: [
    "sillwood enter plant.brought new habit=thin pot=12x9 medium=spongy window=S",
    'sillwood enter watered 127 128 volume=180mL when="yesterday 8:00"',
  ],
  async run(call) {
    if (call.options["list"] === true) return list(call);
    const from = textOption(call, "from");
    const [name, ...words] = call.words;
    if (name === undefined && from === undefined)
      throw new UsageError(
        "enter what? A kind, what it is about, and its values. All kinds: sillwood enter --list",
      );
    if (name === "done") return done(call, words);
    return withBook(call, async (writing) => {
      const typing: Typing = { ...writing, units: call.units };
      const drafts =
        from === undefined
          ? typed(name as string, words, typing, writing)
          : await read(call, from, typing, writing);
      const photo = textOption(call, "photo");
      const file = photo === undefined ? undefined : await readPhoto(call.around.cwd, photo);
      return keep(call, writing, file ? withFile(drafts, file) : drafts, file ? [file] : []);
    });
  },
};

function list(call: Call): Outcome {
  const [name] = call.words;
  const found = name === undefined ? undefined : kindNamed(name);
  if (found && !isKind(found)) throw new DataError([found]);
  const chosen = found ? [found] : typedKinds();
  return { json: { kinds: chosen.map(kindShape) }, text: kindsText(chosen) };
}

function typed(name: string, words: readonly string[], typing: Typing, writing: Writing): readonly Draft[] {
  const kind = kindNamed(name);
  if (!isKind(kind)) throw new DataError([kind]);
  const { subjects, values } = partWords(words);
  const result = draftEntry({ kind, words: subjects, values }, typing, rosterOf(typing), writing.at_ms);
  if ("troubles" in result) throw new DataError(result.troubles);
  return result.drafts;
}

async function read(call: Call, from: string, typing: Typing, writing: Writing): Promise<readonly Draft[]> {
  const text = await textOf(call, from);
  const [kind, ...words] = call.words;
  const { subjects, values } = partWords(words);
  const at = writing.at_ms === undefined ? {} : { at_ms: writing.at_ms };
  const isNdjson = /\.(ndjson|jsonl)$/i.test(from) || (from === "-" && text.trimStart().startsWith("{"));
  if (isNdjson) return sound(fromNdjson(text, typing, writing.at_ms));
  const { cells, problems } = readCsv(text);
  if (problems.length > 0) throw new DataError(problems.map((problem) => ({ path: "file", ...problem })));
  const named = kind === undefined ? {} : { kind };
  return sound(fromRows(cells, { ...named, words: subjects, values, ...at }, typing, rosterOf(typing)));
}

function sound({ drafts, troubles }: ReturnType<typeof fromNdjson>): readonly Draft[] {
  if (troubles.length > 0) throw new DataError(troubles);
  return drafts;
}

/** The text of a file that was named, or of the input for `-`. */
export async function textOf(call: Call, from: string): Promise<string> {
  if (from === "-") return call.around.input();
  try {
    return await readFile(resolve(call.around.cwd, from), "utf8");
  } catch {
    throw dataError("file", `there is no file ${JSON.stringify(from)} to read`, from);
  }
}

/** A photo belongs to the last draft: the entry itself, after what it needed. */
const withFile = (drafts: readonly Draft[], { hash }: NewFile): readonly Draft[] =>
  drafts.map((draft, i) => (i === drafts.length - 1 ? { ...draft, files: [hash] } : draft));

async function done(call: Call, words: readonly string[]): Promise<Outcome> {
  if (words.length === 0) throw new UsageError("done on which plants? Their numbers, or @BENCH.");
  const reading = await readBook(call);
  const past = call.options["at"] === undefined ? undefined : reading.now_ms;
  const drafts = doneDrafts(reading, words, past);
  return withBook(call, (writing) => keep(call, writing, drafts, []));
}

/** Asks about what is possible but hardly meant; nothing is written until somebody says that it is right. */
function doubt({ desk }: Writing, drafts: readonly Draft[]): void {
  const troubles = doubtsOf(desk, drafts).map(({ plant, path, value, most, meant, unit }) => ({
    path,
    message: `${desk.say.volume(value)} is more than pot ${desk.numberOf(plant)} can hold, about ${desk.say.volume(most)}`,
    slip: `Meant ${desk.say.volume(meant)}? If it is right: --true.`,
    value,
    limit: `about ${Math.round(most)}`,
    unit,
  }));
  if (troubles.length > 0) throw new DataError(troubles);
}

async function keep(
  call: Call,
  writing: Writing,
  drafts: readonly Draft[],
  files: readonly NewFile[],
): Promise<Outcome> {
  const tried = call.options["try"] === true;
  if (call.options["true"] !== true) doubt(writing, drafts);
  const entries = tried ? writing.judge(drafts) : await writing.keep(drafts, files);
  return wroteOutcome(entries, writing.deskNow(), { width_n: widthFor(call), tried });
}
