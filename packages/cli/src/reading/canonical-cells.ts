import type { UnitSystem } from "@sillwood/bench/words";
import { readNumber } from "../typed/read-number.ts";
import { bareUnit } from "../typed/units.ts";
import { headerUnit } from "./header-unit.ts";

export type Cells = readonly (readonly string[])[];

const PLAIN = /^[+\-−]?\d+(?:[.,]\d+)?$/;

/**
 * Cells with every quantity in the unit of our name for its column, whatever unit stands in the header or in the cell. What can't be
 * read as a number stays as it is: the list names it by line and column.
 *
 * @param mapping ours to theirs
 */
export function canonicalCells(
  cells: Cells,
  mapping: Readonly<Record<string, string>>,
  units: UnitSystem,
): Cells {
  const header = (cells[0] ?? []).map((name) => name.trim());
  const rows = cells.map((row) => [...row]);
  for (const [ours, theirs] of Object.entries(mapping)) {
    const at = header.indexOf(theirs);
    const cut = ours.indexOf("_");
    if (at < 0 || cut < 0) continue;
    const suffix = ours.slice(cut + 1);
    const named = headerUnit(theirs, suffix);
    if ("other" in named) continue;
    const saysOwn = theirs === ours || theirs.endsWith(`_${suffix}`);
    const fallback = units === "us" && !saysOwn ? bareUnit(suffix, "us") : "";
    for (const row of rows.slice(1)) {
      const cell = (row[at] ?? "").trim();
      if (cell === "") continue;
      const unit = named.unit ?? fallback;
      const typed = PLAIN.test(cell) && unit !== "" ? `${cell} ${unit}` : cell;
      if (PLAIN.test(typed)) continue;
      const read = readNumber(typed, suffix, "own");
      if ("value" in read) row[at] = String(read.value);
    }
  }
  return rows;
}

/** Columns whose header names a unit that does not turn into ours, ours to what they are in. */
export function foreignColumns(mapping: Readonly<Record<string, string>>): Readonly<Record<string, string>> {
  return Object.fromEntries(
    Object.entries(mapping).flatMap(([ours, theirs]) => {
      const named = headerUnit(theirs, ours.slice(ours.indexOf("_") + 1));
      return "other" in named ? [[ours, named.other]] : [];
    }),
  );
}
