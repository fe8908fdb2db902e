import type { Draft } from "../round/pages.ts";
import { cellDate_ms, cellNumber } from "./cells.ts";
import type { Desk } from "./desk.ts";
import type { Note, ReadResult, Row } from "./list-rows.ts";

/** Rows of weighings, each with what was poured just after, if that was written. */
export function readWeighings(desk: Desk, rows: readonly Row[], note: Note): ReadResult {
  const { ledger } = desk;
  const byNumber = new Map(desk.living().map((plant) => [desk.numberOf(plant), plant]));
  const drafts: Draft[] = [];
  const lines: number[] = [];
  const firstRows: string[] = [];
  for (const { line, cell } of rows) {
    const plant = byNumber.get(cell("number"));
    if (!plant) note(line, "number", `no living plant has the number “${cell("number")}”`);
    const at_ms = cellDate_ms(cell("at"), ledger.calendar);
    if (at_ms === undefined) note(line, "at", `“${cell("at")}” is no date; expected 2026-04-30 08:15`);
    const weight_g = cellNumber(cell("weight_g"));
    if (weight_g === null) note(line, "weight_g", `weight is “${cell("weight_g")}”; expected grams as 412`);
    if (!plant || at_ms === undefined || weight_g === null) continue;
    const add = (kind: string, data: Draft["data"], later_ms = 0) => {
      const draft: Draft = { kind, on: [plant], data, at_ms: at_ms + later_ms };
      drafts.push(draft);
      lines.push(line);
    };
    add("watering.weighed", { weight_g, state: cell("state") || "as found" });
    const volume_mL = cell("volume_mL") === "" ? undefined : cellNumber(cell("volume_mL"));
    if (volume_mL === null)
      note(line, "volume_mL", `poured is “${cell("volume_mL")}”; expected millilitres as 180`);
    else if (volume_mL !== undefined && volume_mL > 0)
      add("watering.watered", { volume_mL, drained: "unknown" }, 60_000);
    firstRows.push(
      `${cell("number")}: ${desk.say.mass(weight_g)}, ${desk.say.day(at_ms)} ${desk.say.time(at_ms)}`,
    );
  }
  return { drafts, lines, firstRows, files: [] };
}
