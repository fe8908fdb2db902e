import { catalogue, type ScienceFunction } from "@sillwood/science/catalogue";
import { type Command, textOption } from "../command.ts";
import { inputsFromWords } from "../reckoning/inputs.ts";
import { formulaShape, formulaText, listFormulas } from "../reckoning/list-formulas.ts";
import { workOutTable } from "../reckoning/table.ts";
import { workOut } from "../reckoning/work-out.ts";
import { columns } from "../text/columns.ts";
import { widthFor } from "../text/width.ts";
import { wrap } from "../text/wrap.ts";
import { textOf } from "./enter.ts";

/** Every formula of the house, on its own. */
export const reckon: Command = {
  verb: "reckon",
  what: "any formula of the house: list them, or work one out",
  usage: ["[WORD]", "NAME key=value ...", "NAME [key=value ...] --table FILE.csv"],
  options: {
    table: {
      type: "string",
      value: "FILE",
      what: "a row of inputs for each sum, headed by their names; CSV out",
    },
    about: { type: "boolean", what: "inputs, units, ranges and source of NAME, without a sum" },
  },
  help: [
    "Without a name it lists every formula, or those in whose name or words WORD stands.",
    "Inputs are in the unit of their name, or carry one: air_C=21, air=70F. What is left out",
    "takes its usual value, and says so.",
  ],
  example: ["sillwood reckon dew", "sillwood reckon saturationVapourPressure_kPa air_C=20"],
  async run(call) {
    const [name, ...words] = call.words;
    const width_n = widthFor(call);
    const chosen = catalogue.find((one) => one.name === name);
    if (!chosen) return listFormulas(name, words, width_n);
    if (call.options["about"] === true)
      return { json: { function: formulaShape(chosen) }, text: formulaText(chosen, width_n) };
    const table = textOption(call, "table");
    if (table !== undefined) return workOutTable(chosen, await textOf(call, table), words, call);
    const { values, usual } = inputsFromWords(chosen, words, call.units);
    const result = workOut(chosen, values);
    return {
      json: { name: chosen.name, inputs: values, usual, result, source: chosen.source },
      text: resultText(chosen, result, usual, width_n),
    };
  },
};

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
