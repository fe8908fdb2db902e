import { checkData } from "../book/kinds.ts";
import type { Desk } from "./desk.ts";
import { type ListKind, listColumns } from "./list-columns.ts";
import type { ListOptions, ListPreview, ListProblem } from "./list-rows.ts";
import { readPlants } from "./read-plants.ts";
import { readLogger, readWeather } from "./read-series.ts";
import { readWeighings } from "./read-weighings.ts";

const FIRST_ROWS_n = 10;
const MOST_PROBLEMS_n = 200;

/**
 * Reads a list that has been cut into rows of cells (header first) into drafts, with every problem by line and column. Pure:
 * nothing is written until somebody keeps it.
 */
export function readList(
  desk: Desk,
  kind: ListKind,
  cells: readonly (readonly string[])[],
  options: ListOptions,
): ListPreview {
  const header = cells[0]?.map((name) => name.trim()) ?? [];
  const mapping = options.mapping ?? recognise(kind, header);
  const problems: ListProblem[] = [];
  const note = (line: number, name: string, message: string) => {
    if (problems.length < MOST_PROBLEMS_n) problems.push({ line, column: mapping[name] ?? name, message });
  };
  for (const { key, needed, what } of listColumns[kind]) {
    const theirs = mapping[key];
    if (theirs !== undefined && !header.includes(theirs)) note(1, key, `no column is called “${theirs}”`);
    if (needed && theirs === undefined) note(1, key, `no column for “${what}”: say which one it is`);
  }
  const rows = cells
    .slice(1)
    .map((row, i) => ({
      line: i + 2,
      cell: (key: string) => (row[header.indexOf(mapping[key] ?? "\u0000")] ?? "").trim(),
    }))
    .filter(({ line }) => (cells[line - 1] ?? []).some((cell) => cell.trim() !== ""));
  if (rows.length === 0) note(1, header[0] ?? "", "the file holds no rows below its header");
  const read = { plants: readPlants, weighings: readWeighings, logger: readLogger, weather: readWeather }[
    kind
  ];
  const { drafts, lines, firstRows, files } =
    problems.length > 0
      ? { drafts: [], lines: [], firstRows: [], files: [] }
      : read(desk, rows, note, options);
  for (const [i, draft] of drafts.entries()) {
    const entryKind = desk.ledger.kinds.find(draft.kind);
    for (const problem of entryKind ? checkData(entryKind, draft.data) : [])
      note(lines[i] ?? 1, problem.path.replace("data.", ""), problem.message);
  }
  return {
    mapping,
    unmapped: header.filter((name) => !Object.values(mapping).includes(name)),
    rows_n: rows.length,
    firstRows: firstRows.slice(0, FIRST_ROWS_n),
    problems,
    drafts: problems.length > 0 ? [] : drafts,
    files,
  };
}

function recognise(kind: ListKind, header: readonly string[]): Record<string, string> {
  const mapping: Record<string, string> = {};
  for (const { key, known } of listColumns[kind]) {
    const theirs = header.find(
      (name) =>
        known.includes(name.toLowerCase()) ||
        known.some((word) => name.toLowerCase().replace(/[\s_(].*$/, "") === word),
    );
    if (theirs && !Object.values(mapping).includes(theirs)) mapping[key] = theirs;
  }
  return mapping;
}
