import type { ScienceFunction } from "@sillwood/science/catalogue";
import type { Call, Outcome } from "../command.ts";
import { DataError, dataError, type Trouble, troubleLine } from "../errors.ts";
import { printCsv, readCsv } from "../text/csv.ts";
import { inputsOf, valuesFromWords } from "./inputs.ts";
import { workOut } from "./work-out.ts";

/**
 * A sum for each row of a table that is headed by the names of inputs: the table again with the results behind. A row with a problem
 * keeps its cells and has no result; the problem is named by line and column.
 */
export function workOutTable(
  chosen: ScienceFunction,
  text: string,
  words: readonly string[],
  call: Call,
): Outcome {
  const same = valuesFromWords(chosen, words);
  const { cells, problems } = readCsv(text);
  if (problems.length > 0) throw new DataError(problems.map((problem) => ({ path: "file", ...problem })));
  if (cells.length < 2) throw dataError("file", "the table holds no rows below its header");
  const header = (cells[0] ?? []).map((name) => name.trim());
  const fields = chosen.result.fields.map(({ name }) => name);
  const rows: Readonly<Record<string, unknown>>[] = [];
  const troubles: Trouble[] = [];
  for (const [i, row] of cells.entries()) {
    if (i === 0) continue;
    try {
      const typed = new Map([...same, ...header.map((name, column) => [name, row[column] ?? ""] as const)]);
      const { values } = inputsOf(chosen, typed, call.units);
      rows.push({ ...values, ...workOut(chosen, values) });
    } catch (error) {
      if (!(error instanceof DataError)) throw error;
      const column = (path: string) =>
        header.find((name) => path === name || path.split("_")[0] === name) ?? path;
      troubles.push(
        ...error.troubles.map((trouble) => ({ ...trouble, line: i + 1, column: column(trouble.path) })),
      );
      rows.push({});
    }
  }
  return {
    json: { name: chosen.name, rows, problems: troubles },
    text: printCsv([
      [...header, ...fields],
      ...cells
        .slice(1)
        .map((row, i) => [
          ...header.map((_, column) => row[column] ?? ""),
          ...fields.map((name) => cellOf(rows[i]?.[name])),
        ]),
    ]),
    complaints: troubles.map(troubleLine),
    code: troubles.length > 0 ? 1 : 0,
  };
}

const cellOf = (value: unknown): string =>
  value === undefined ? "" : Array.isArray(value) ? value.map(String).join(" ") : String(value);
