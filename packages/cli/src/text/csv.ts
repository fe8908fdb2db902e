import papaparse from "papaparse";

/** A file of cells, header first, as people and loggers write them: comma, semicolon or tab, with or without a byte order mark. */
export function readCsv(text: string): {
  readonly cells: readonly (readonly string[])[];
  readonly problems: readonly { readonly line: number; readonly message: string }[];
} {
  const { data, errors } = papaparse.parse<string[]>(text.replace(/^\uFEFF/, ""), { skipEmptyLines: false });
  while (data.length > 0 && (data.at(-1) ?? []).every((cell) => cell.trim() === "")) data.pop();
  return {
    cells: data,
    problems: errors
      .filter(({ type }) => type === "Quotes")
      .map(({ row, message }) => ({ line: (row ?? 0) + 1, message: `${message}; expected a closing quote` })),
  };
}

/** Cells that a spreadsheet would take for a formula get an apostrophe; plain numbers stay as they are. */
const harmless = (cell: string): string =>
  /^[=+\-@\t\r]/.test(cell) && !/^-?\d+(\.\d+)?(e[+-]?\d+)?$/i.test(cell) ? `'${cell}` : cell;

const quoted = (cell: string): string => (/[",\n\r]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell);

/** Rows as comma-separated text with a line end after each. */
export const printCsv = (rows: readonly (readonly string[])[]): string =>
  rows.map((row) => `${row.map((cell) => quoted(harmless(cell))).join(",")}\n`).join("");
