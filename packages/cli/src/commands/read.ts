import { createHash } from "node:crypto";
import { type ListKind, type ListPreview, listColumns, readList } from "@sillwood/bench/pages";
import { type NewFile, withBook } from "../book/session.ts";
import { type Call, type Command, type Outcome, textOption } from "../command.ts";
import { DataError, dataError, type Trouble, troubleLine, UsageError } from "../errors.ts";
import { columns } from "../text/columns.ts";
import { readCsv } from "../text/csv.ts";
import { findThing } from "../typed/find-thing.ts";
import { textOf } from "./enter.ts";

const KINDS: readonly ListKind[] = ["plants", "weighings", "logger", "weather"];

/** The first day: a list of plants, weighings or a logger's file, read with its columns named. */
export const read: Command = {
  verb: "read",
  what: "read a list: plants, weighings, a logger's file, a weather record",
  usage: [
    "plants|weighings|logger|weather FILE.csv [--map ours=theirs,...] [--bench NAME] [--keep]",
    "plants|weighings|logger|weather --columns",
  ],
  options: {
    map: { type: "string", value: "PAIRS", what: "which column is which: weight_g=Gewicht,at=Datum" },
    bench: {
      type: "string",
      value: "NAME",
      what: "where a logger stood, or plants stand whose row names no bench",
    },
    keep: { type: "boolean", what: "write it; without this only the preview is shown" },
    columns: { type: "boolean", what: "our words for the columns" },
  },
  help: [
    "Shows ten rows as they will stand and every error by line and column. Nothing is written before",
    "--keep, and nothing at all while there is an error. FILE may be - for the input.",
  ],
  example: [
    "sillwood read plants plants.csv",
    "sillwood read weighings scale.csv --map number=Pot,weight_g=g --keep",
  ],
  async run(call) {
    const [kindWord, file, more] = call.words;
    const kind = KINDS.find((one) => one === kindWord);
    if (!kind) throw new UsageError(`read what? Expected one of ${KINDS.join(", ")}.`);
    if (call.options["columns"] === true) return columnsOutcome(kind);
    if (file === undefined || more !== undefined)
      throw new UsageError(`read which file? sillwood read ${kind} FILE.csv`);
    const { cells, problems } = readCsv(await textOf(call, file));
    if (problems.length > 0) throw new DataError(problems.map((problem) => ({ path: "file", ...problem })));
    return withBook(call, async (writing) => {
      const bench = textOption(call, "bench");
      const mapping = mappingOf(call, kind);
      const list = readList(writing.desk, kind, cells, {
        newId: writing.newId,
        ...(bench === undefined ? {} : { bench: benchOf(bench, writing.desk) }),
        ...(mapping
          ? {
              mapping: {
                ...readList(writing.desk, kind, cells, { newId: writing.newId }).mapping,
                ...mapping,
              },
            }
          : {}),
      });
      const troubles = list.problems.map(
        ({ line, column, message }): Trouble => ({ path: column, line, column, message }),
      );
      if (call.options["keep"] !== true || troubles.length > 0)
        return preview(list, troubles, call.options["keep"] === true);
      const files = list.files.map(({ text }) => seriesFile(text));
      const hashes = new Map(list.files.map(({ draft }, i) => [draft, (files[i] as NewFile).hash]));
      const drafts = list.drafts.map((draft, i) =>
        hashes.has(i) ? { ...draft, files: [hashes.get(i) as string] } : draft,
      );
      const entries = await writing.keep(drafts, files);
      return {
        json: {
          kept: true,
          entries_n: entries.length,
          rows_n: list.rows_n,
          mapping: list.mapping,
          unmapped: list.unmapped,
          problems: [],
        },
        text: `Kept: ${entries.length} entries from ${list.rows_n} rows.`,
      };
    });
  },
};

function columnsOutcome(kind: ListKind): Outcome {
  const all = listColumns[kind];
  return {
    json: { columns: all.map(({ key, what, needed }) => ({ key, what, needed })) },
    text: columns(all.map(({ key, what, needed }) => [key, needed ? "needed" : "", what])).join("\n"),
  };
}

function mappingOf(call: Call, kind: ListKind): Record<string, string> | undefined {
  const text = textOption(call, "map");
  if (text === undefined) return undefined;
  const keys = listColumns[kind].map(({ key }) => key);
  return Object.fromEntries(
    text.split(",").map((pair) => {
      const [ours = "", theirs = ""] = pair.split("=").map((part) => part.trim());
      if (!keys.includes(ours) || theirs === "")
        throw new UsageError(
          `--map holds ${JSON.stringify(pair.slice(0, 60))}; expected ours=theirs with ours one of ${keys.join(", ")}.`,
        );
      return [ours, theirs];
    }),
  );
}

function benchOf(word: string, desk: Parameters<typeof findThing>[0]): string {
  const found = findThing(desk, "bench", word);
  if ("wrong" in found) throw dataError("bench", found.wrong, word);
  return found.id;
}

function seriesFile(text: string): NewFile {
  const bytes = new TextEncoder().encode(text);
  return { hash: createHash("sha256").update(bytes).digest("hex"), type: "text/csv", bytes };
}

function preview(list: ListPreview, troubles: readonly Trouble[], wanted: boolean): Outcome {
  const pairs = Object.entries(list.mapping).map(([ours, theirs]) => [theirs, "→", ours]);
  return {
    json: {
      kept: false,
      rows_n: list.rows_n,
      mapping: list.mapping,
      unmapped: list.unmapped,
      firstRows: list.firstRows,
      entries_n: list.drafts.length,
      problems: troubles,
    },
    text: [
      ...columns(pairs),
      ...(list.unmapped.length > 0 ? [`not read: ${list.unmapped.join(", ")}`] : []),
      "",
      ...list.firstRows.map((row) => `  ${row}`),
      ...(list.rows_n > list.firstRows.length
        ? [`  … ${list.rows_n - list.firstRows.length} more rows`]
        : []),
      "",
      troubles.length > 0
        ? `Nothing ${wanted ? "was" : "can be"} kept: ${troubles.length} errors.`
        : `${list.drafts.length} entries from ${list.rows_n} rows. Nothing written yet: add --keep.`,
    ].join("\n"),
    complaints: troubles.map(troubleLine),
    code: troubles.length > 0 ? 1 : 0,
  };
}
