import {
  catalogue,
  type InputValue,
  type ScienceFunction,
  type ScienceInput,
} from "@sillwood/science/catalogue";
import { QuantityError } from "@sillwood/science/errors";
import { type Call, type Command, type Outcome, textOption } from "../command.ts";
import { DataError, dataError, type Trouble, troubleLine, UsageError } from "../errors.ts";
import { columns } from "../text/columns.ts";
import { printCsv, readCsv } from "../text/csv.ts";
import { nearest } from "../text/nearest.ts";
import { widthFor } from "../text/width.ts";
import { wrap } from "../text/wrap.ts";
import { textOf } from "./enter.ts";

/** Every formula of the house, on its own. */
export const reckon: Command = {
  verb: "reckon",
  what: "any formula of the house: list them, or work one out",
  usage: ["[WORD]", "NAME key=value ...", "NAME --table FILE.csv"],
  options: {
    table: {
      type: "string",
      value: "FILE",
      what: "a row of inputs for each sum, headed by their names; prints CSV",
    },
    about: { type: "boolean", what: "inputs, units, range and source of NAME, without working it out" },
  },
  help: [
    "Without a name it lists every formula, or those in whose name or words WORD stands.",
    "Inputs are in the unit of their name; what is left out and has a usual value takes it, and says so.",
  ],
  example: ["sillwood reckon dew", "sillwood reckon saturationVapourPressure_kPa air_C=20"],
  async run(call) {
    const [name, ...words] = call.words;
    const chosen = name === undefined ? undefined : catalogue.find((one) => one.name === name);
    if (!chosen) return list(call, name, words);
    if (call.options["about"] === true)
      return { json: { function: shapeOf(chosen) }, text: aboutText(chosen, widthFor(call)) };
    const table = textOption(call, "table");
    if (table !== undefined) return workOutRows(call, chosen, table, words);
    const { values, usual } = read(chosen, words);
    const result = workOut(chosen, values);
    return {
      json: { name: chosen.name, inputs: values, usual, result, source: chosen.source },
      text: resultText(chosen, result, usual, widthFor(call)),
    };
  },
};

function list(call: Call, word: string | undefined, words: readonly string[]): Outcome {
  const wanted = word?.toLowerCase();
  const found = catalogue.filter(
    ({ name, what, field }) =>
      wanted === undefined || `${name} ${what} ${field}`.toLowerCase().includes(wanted),
  );
  if (found.length === 0 || words.length > 0) {
    const near = nearest(
      word ?? "",
      catalogue.map(({ name }) => name),
    );
    throw new UsageError(
      `no formula is called ${JSON.stringify((word ?? "").slice(0, 60))}.${near ? ` Meant ${near}?` : ""} All of them: sillwood reckon`,
    );
  }
  const width_n = widthFor(call);
  const text =
    found.length === 1
      ? aboutText(found[0] as ScienceFunction, width_n)
      : found.flatMap((one) => listed(one, width_n)).join("\n");
  return { json: { functions: found.map(shapeOf) }, text };
}

const listed = (one: ScienceFunction, width_n: number): string[] => [
  one.name,
  ...wrap(one.what, width_n, 4, 4),
  ...wrap(one.inputs.map(inputSaid).join("; "), width_n, 4, 6),
  ...wrap(`source: ${one.source}`, width_n, 4, 6),
];

const inputSaid = ({ name, min, max, unit, optional, options }: ScienceInput): string => {
  const range = options
    ? options.join("|")
    : Number.isFinite(min) || Number.isFinite(max)
      ? `${bound(min)} to ${bound(max)}${unit && ` ${unit}`}`
      : unit;
  return `${name}${optional ? "?" : ""}${range ? ` ${range}` : ""}`;
};
const bound = (value: number): string => (Number.isFinite(value) ? `${value}` : "any");

function aboutText(one: ScienceFunction, width_n: number): string {
  const rows = one.inputs.map((input) => [
    `${input.name}${input.optional ? "?" : ""}`,
    input.options
      ? input.options.join("|")
      : Number.isFinite(input.min) || Number.isFinite(input.max)
        ? `${bound(input.min)} to ${bound(input.max)}`
        : "",
    input.unit,
    `usual ${JSON.stringify(input.usual)}`,
    input.what,
  ]);
  return [
    one.name,
    ...wrap(one.what, width_n, 2, 2),
    "",
    ...columns(rows, { indent_n: 2 }),
    "",
    ...wrap(`gives ${fieldsSaid(one)}`, width_n, 2, 4),
    ...wrap(`source: ${one.source}`, width_n, 2, 4),
  ].join("\n");
}

const fieldsSaid = ({ result }: ScienceFunction): string =>
  result.fields.map(({ name, unit }) => (unit ? `${name} [${unit}]` : name)).join(", ");

const shapeOf = ({ name, field, what, inputs, result, source }: ScienceFunction) => ({
  name,
  field,
  what,
  inputs: inputs.map((input) => ({
    ...input,
    min: Number.isFinite(input.min) ? input.min : null,
    max: Number.isFinite(input.max) ? input.max : null,
  })),
  result,
  source,
});

interface Inputs {
  readonly values: Readonly<Record<string, InputValue>>;
  /** Names that were left out and took their usual value. */
  readonly usual: readonly string[];
}

function read(chosen: ScienceFunction, words: readonly string[]): Inputs {
  const typed = new Map<string, string>();
  for (const word of words) {
    const at = word.indexOf("=");
    if (at < 1)
      throw new UsageError(
        `${JSON.stringify(word.slice(0, 60))} is no key=value. Inputs: ${chosen.inputs.map(({ name }) => name).join(", ")}.`,
      );
    const key = word.slice(0, at);
    if (typed.has(key)) throw dataError(key, `${key} is given twice; expected once`, word.slice(at + 1));
    typed.set(key, word.slice(at + 1));
  }
  return inputsOf(chosen, typed);
}

/** Names may be given without their unit where that is clear. */
function inputsOf(chosen: ScienceFunction, typed: ReadonlyMap<string, string>): Inputs {
  const values: Record<string, InputValue> = {};
  const troubles: Trouble[] = [];
  for (const [key, text] of typed) {
    const input =
      chosen.inputs.find(({ name }) => name === key) ??
      only(chosen.inputs.filter(({ name }) => name.split("_")[0] === key));
    if (!input) {
      const near = nearest(
        key,
        chosen.inputs.map(({ name }) => name),
      );
      troubles.push({
        path: key.slice(0, 60),
        message: `${chosen.name} has no input ${JSON.stringify(key.slice(0, 60))}; it has ${chosen.inputs.map(({ name }) => name).join(", ") || "none"}`,
        ...(near ? { slip: `Meant ${near}?` } : {}),
      });
    } else if (text.trim() === "")
      troubles.push({
        path: input.name,
        message: `${input.name} is empty; ${inputSaid(input)} was expected`,
      });
    else values[input.name] = text.trim().replace(/^(-?\d+),(\d+)$/, "$1.$2");
  }
  const missing = chosen.inputs.filter(({ name, optional }) => !optional && values[name] === undefined);
  // A sum of one input has nothing to guess: what is missing is asked for. Further inputs take what is usual.
  if (
    troubles.length === 0 &&
    (typed.size === 0 || missing.length === chosen.inputs.length) &&
    missing.length > 0
  )
    troubles.push(
      ...missing.map((input) => ({
        path: input.name,
        message: `${input.name} is missing; expected ${inputSaid(input)}`,
        slip: `Usual: ${input.name}=${String(input.usual)}.`,
      })),
    );
  if (troubles.length > 0) throw new DataError(troubles);
  for (const input of missing) values[input.name] = input.usual;
  return { values, usual: missing.map(({ name }) => name) };
}

const only = <Value>(values: readonly Value[]): Value | undefined =>
  values.length === 1 ? values[0] : undefined;

function workOut(chosen: ScienceFunction, values: Inputs["values"]) {
  try {
    return chosen.evaluate(values);
  } catch (error) {
    if (error instanceof QuantityError)
      throw new DataError([
        {
          path: error.name,
          message: error.message,
          limit: `${error.min} to ${error.max}`,
          unit: error.unit,
          ...(typeof error.value === "number" && Number.isFinite(error.value) ? { value: error.value } : {}),
          ...fahrenheit(error),
        },
      ]);
    throw dataError("", (error as Error).message);
  }
}

/** A temperature that would fit if it were meant in °F is said so. */
function fahrenheit({ unit, value, min, max }: QuantityError): { slip?: string } {
  const celsius = typeof value === "number" ? Math.round(((value - 32) * 5) / 9) : Number.NaN;
  return unit === "°C" && celsius >= min && celsius <= max
    ? { slip: `Meant °F? That is ${celsius} °C.` }
    : {};
}

function resultText(
  chosen: ScienceFunction,
  result: Readonly<Record<string, unknown>>,
  usual: readonly string[],
  width_n: number,
): string {
  const units = new Map(chosen.result.fields.map(({ name, unit }) => [name, unit]));
  const rows = Object.entries(result).map(([name, value]) => [name, shown(value), units.get(name) ?? ""]);
  return [
    ...columns(rows),
    ...(usual.length > 0 ? wrap(`○ assumed, the usual value: ${usual.join(", ")}`, width_n, 0, 2) : []),
    ...wrap(`source: ${chosen.source}`, width_n, 0, 2),
  ].join("\n");
}

const FIGURES_n = 6;
const shown = (value: unknown): string =>
  typeof value === "number"
    ? `${Number(value.toPrecision(FIGURES_n))}`
    : Array.isArray(value)
      ? value.map(shown).join(" ")
      : String(value);

async function workOutRows(
  call: Call,
  chosen: ScienceFunction,
  table: string,
  words: readonly string[],
): Promise<Outcome> {
  const same = new Map(
    words.map((word) => [word.slice(0, Math.max(0, word.indexOf("="))), word.slice(word.indexOf("=") + 1)]),
  );
  const { cells, problems } = readCsv(await textOf(call, table));
  if (problems.length > 0) throw new DataError(problems.map((problem) => ({ path: "file", ...problem })));
  const header = (cells[0] ?? []).map((name) => name.trim());
  if (cells.length < 2) throw dataError("file", "the table holds no rows below its header");
  const fields = chosen.result.fields.map(({ name }) => name);
  const rows: Readonly<Record<string, unknown>>[] = [];
  const troubles: Trouble[] = [];
  for (const [i, row] of cells.entries()) {
    if (i === 0) continue;
    try {
      const typed = new Map([...same, ...header.map((name, column) => [name, row[column] ?? ""] as const)]);
      const { values } = inputsOf(chosen, typed);
      rows.push({ ...values, ...workOut(chosen, values) });
    } catch (error) {
      if (!(error instanceof DataError)) throw error;
      troubles.push(...error.troubles.map((trouble) => ({ ...trouble, line: i + 1, column: trouble.path })));
      rows.push({});
    }
  }
  const text = printCsv([
    [...header, ...fields],
    ...cells
      .slice(1)
      .map((row, i) => [
        ...header.map((_, column) => row[column] ?? ""),
        ...fields.map((name) => (rows[i]?.[name] === undefined ? "" : shown(rows[i]?.[name]))),
      ]),
  ]);
  return {
    json: { name: chosen.name, rows, problems: troubles },
    text,
    complaints: troubles.map(troubleLine),
    code: troubles.length > 0 ? 1 : 0,
  };
}
