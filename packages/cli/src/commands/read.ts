import { type ListKind, listColumns } from "@sillwood/bench/pages";
import { withBook } from "../book/session.ts";
import { type Call, type Command, type Outcome, textOption } from "../command.ts";
import { DataError, troubleLine, UsageError } from "../errors.ts";
import { type Gathered, gather } from "../reading/gather.ts";
import { columns } from "../text/columns.ts";
import { readCsv } from "../text/csv.ts";
import { textOf } from "./enter.ts";

const KINDS: readonly ListKind[] = ["plants", "weighings", "logger", "weather"];

/** The first day: a list of plants, weighings or a logger's file, read with its columns named. */
export const read: Command = {
  verb: "read",
  what: "read a list: plants, weighings, a logger's file, a weather record",
  usage: [
    "plants|weighings|logger|weather FILE.csv [--map ours=theirs,...] [--keep]",
    "plants|weighings|logger|weather --columns",
  ],
  options: {
    map: { type: "string", value: "PAIRS", what: "which column is which: weight_g=Gewicht,at=Datum" },
    bench: {
      type: "string",
      value: "NAME",
      what: "where a logger stood, or plants stand whose row names no bench",
    },
    plant: { type: "string", value: "PLANT", what: "whose weights they are, where no column says so" },
    keep: { type: "boolean", what: "write it; without this only the preview is shown" },
    columns: { type: "boolean", what: "our words for the columns" },
  },
  help: [
    "Shows ten rows as they will stand and every error by line and column. Nothing is written",
    "before --keep, and nothing at all while there is an error. FILE may be - for the input.",
    "Units are read from headers and cells: Temp (°F), weight_oz, 180mL. Beside weights, columns",
    "air, humidity and light are read too, as the air and light of the bench.",
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
      const gathered = gather(call, kind, cells, mappingOf(call, kind), writing);
      if (call.options["keep"] !== true || gathered.troubles.length > 0)
        return preview(gathered, call.options["keep"] === true);
      const entries = await writing.keep(gathered.drafts, gathered.files);
      return {
        json: { kept: true, ...shapeOf(gathered), entries_n: entries.length },
        text: `Kept: ${countSaid(entries.length, gathered.list.rows_n)}.`,
        complaints: gathered.notes,
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

function mappingOf(call: Call, kind: ListKind): Record<string, string> {
  const text = textOption(call, "map");
  if (text === undefined) return {};
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

const shapeOf = ({ list, mapping, unmapped, drafts, troubles, notes }: Gathered) => ({
  rows_n: list.rows_n,
  entries_n: drafts.length,
  mapping,
  unmapped,
  firstRows: list.firstRows,
  problems: troubles,
  notes,
});

function preview(gathered: Gathered, wanted: boolean): Outcome {
  const { list, mapping, unmapped, drafts, troubles, notes } = gathered;
  const pairs = Object.entries(mapping).map(([ours, theirs]) => [theirs, "→", ours]);
  return {
    json: { kept: false, ...shapeOf(gathered) },
    text: [
      ...columns(pairs),
      ...(unmapped.length > 0 ? [`not read: ${unmapped.join(", ")}`] : []),
      "",
      ...list.firstRows.map((row) => `  ${row}`),
      ...(list.rows_n > list.firstRows.length
        ? [`  … ${list.rows_n - list.firstRows.length} more rows`]
        : []),
      "",
      troubles.length > 0
        ? `Nothing ${wanted ? "was" : "can be"} kept: ${troubles.length} ${troubles.length === 1 ? "error" : "errors"}.`
        : `${countSaid(drafts.length, list.rows_n)}. Nothing written yet: add --keep.`,
    ].join("\n"),
    complaints: [...troubles.map(troubleLine), ...notes],
    code: troubles.length > 0 ? 1 : 0,
  };
}

const countSaid = (entries_n: number, rows_n: number): string =>
  `${entries_n} ${entries_n === 1 ? "entry" : "entries"} from ${rows_n} ${rows_n === 1 ? "row" : "rows"}`;
