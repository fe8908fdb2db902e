import type { Draft } from "@sillwood/bench/round";
import type { Trouble } from "../errors.ts";
import type { Roster } from "../typed/new-plant.ts";
import type { TypedValue, Typing } from "../typed/typing.ts";
import { draftEntry } from "./draft-entry.ts";
import { isKind, kindNamed } from "./typed-words.ts";

export interface FromFile {
  readonly drafts: readonly Draft[];
  readonly troubles: readonly Trouble[];
}

export interface RowOptions {
  /** Kind and subjects of rows that name none. */
  readonly kind?: string;
  readonly words: readonly string[];
  /** Values that every row has. */
  readonly values: readonly TypedValue[];
  readonly at_ms?: number;
}

const WHEN = ["when", "time", "date", "at", "zeit", "datum"];
const ON = ["on", "plant", "plants", "number", "pot", "pflanze", "nummer"];

/** Rows of cells, header first, each an entry: columns are keys, `kind`, `on` (or plant, number) and `when` (or time). */
export function fromRows(
  cells: readonly (readonly string[])[],
  { kind, words, values, at_ms }: RowOptions,
  typing: Typing,
  roster: Roster,
): FromFile {
  const header = (cells[0] ?? []).map((name) => name.trim());
  const drafts: Draft[] = [];
  const troubles: Trouble[] = [];
  if (cells.length < 2)
    troubles.push({ path: "file", message: "the file holds no rows below its header", line: 1 });
  const twice = header.find((name, i) => name !== "" && header.indexOf(name) < i);
  if (twice !== undefined)
    troubles.push({
      path: "file",
      message: "two columns have this name; expected different names",
      line: 1,
      column: twice,
    });
  const named = kind ?? "";
  const takesNumber = named === "plant.brought" || named === "plant.numbered";
  for (const [i, row] of cells.entries()) {
    if (i === 0 || row.every((cell) => cell.trim() === "") || twice !== undefined) continue;
    const typed = header.map((name, column) => ({ key: name, text: (row[column] ?? "").trim() }));
    const filled = typed.filter(({ key, text }) => key !== "" && text !== "");
    const lower = (one: TypedValue) => one.key.toLowerCase();
    const isOn = (one: TypedValue) => ON.includes(lower(one)) && !(takesNumber && lower(one) === "number");
    const on = filled.filter(isOn).flatMap(({ text }) => text.split(/[\s,;]+/).filter(Boolean));
    const kindText = filled.find((one) => lower(one) === "kind")?.text ?? named;
    const found = kindNamed(kindText);
    if (!isKind(found)) {
      troubles.push({ ...found, line: i + 1, column: "kind" });
      continue;
    }
    const own = filled
      .filter((one) => !isOn(one) && lower(one) !== "kind")
      .map((one) => (WHEN.includes(lower(one)) ? { key: "when", text: one.text } : one));
    const result = draftEntry(
      { kind: found, words: on.length > 0 ? on : words, values: [...values, ...own] },
      typing,
      roster,
      at_ms,
    );
    if ("drafts" in result) drafts.push(...result.drafts);
    else troubles.push(...result.troubles.map((trouble) => placed(trouble, i + 1, header)));
  }
  return { drafts, troubles };
}

/** Where a problem stands in the file: the column whose name fits its path. */
function placed(trouble: Trouble, line: number, header: readonly string[]): Trouble {
  const name = trouble.path.replace(/^data\./, "").toLowerCase();
  const key = name.split("_")[0] as string;
  const column =
    header.find((one) => one.toLowerCase() === name) ??
    header.find((one) => one.toLowerCase().split("_")[0] === key) ??
    (trouble.path === "when" ? header.find((one) => WHEN.includes(one.toLowerCase())) : undefined) ??
    (trouble.path === "on" ? header.find((one) => ON.includes(one.toLowerCase())) : undefined);
  return { ...trouble, line, ...(column ? { column } : {}) };
}
