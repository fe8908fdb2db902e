import { describe, expect, it } from "vitest";
import type { DeviceId, EntryId, Json } from "../book/entry.ts";
import { penOf } from "../book/write.ts";
import { createLedger } from "../house/index.ts";
import { deskAt } from "./desk.ts";
import { assumedSite } from "./first-answer.ts";
import { logLine } from "./log-page.ts";

const PLANT = "01980000-0000-7000-8000-00000000000b";
const NOW_ms = Date.UTC(2026, 0, 14, 8);

function lineAfter(...corrections: readonly Json[]) {
  const ledger = createLedger({ crafts: [], site: assumedSite("UTC", { language: "en", units: "metric" }) });
  let at_ms = NOW_ms;
  const pen = penOf({
    device: "01980000-0000-7000-8000-000000000001" as DeviceId,
    by: "01980000-0000-7000-8000-000000000002",
    zone: "UTC",
    kinds: ledger.kinds,
    now_ms: () => ++at_ms,
    random: () => 0.5,
  });
  const brought = pen.write({ kind: "plant.brought", on: [PLANT], data: { habit: "thin" } });
  const note = pen.write({ kind: "plant.noted", on: [PLANT], data: { text: "leans" } });
  const entries = corrections.map((data) =>
    pen.write({ kind: "book.corrected", on: [], data, corrects: [note.id as EntryId] }),
  );
  ledger.add([brought, note, ...entries]);
  const desk = deskAt(ledger, { now_ms: NOW_ms + 60_000, language: "en", units: "metric" });
  const line = logLine(desk, note.id);
  return { said: line?.said, state: line?.state, ruled: line?.ruledThrough.map(({ said }) => said) };
}

const right = { data: { text: "stands straight" } };

describe("an entry and what was said of it since", () => {
  it("is ruled through when it was put right", () => {
    expect(lineAfter(right)).toEqual({
      said: "“stands straight”",
      state: "in force",
      ruled: ["“leans”"],
    });
  });
  it("is ruled through when it was withdrawn", () => {
    expect(lineAfter(right, { withdrawn: true })).toEqual({
      said: undefined,
      state: "withdrawn",
      ruled: ["“leans”", "“stands straight”"],
    });
  });
  it("stands as it stood when it was taken back in", () => {
    expect(lineAfter(right, { withdrawn: true }, { restored: true })).toEqual({
      said: "“stands straight”",
      state: "in force",
      ruled: ["“leans”"],
    });
  });
});
