import { printSeries } from "../book/series.ts";
import type { Draft } from "../round/pages.ts";
import { cellDate_ms, cellNumber } from "./cells.ts";
import type { Desk } from "./desk.ts";
import type { ListOptions, Note, ReadResult, Row } from "./list-rows.ts";

const PART_d = 28;

/** What a series of one kind may hold, each quantity with its valid range. */
const QUANTITIES = {
  logger: { air_C: [-40, 60], humidity_frac: [0, 1.05], ppfd_umol_m2_s: [0, 3000] },
  weather: {
    tMax_C: [-40, 60],
    tMin_C: [-60, 50],
    rain_mm: [0, 2000],
    wind_m_s: [0, 40],
    humidity_frac: [0, 1.05],
    radiation_MJ_m2_d: [0, 50],
  },
} as const;
type Range = readonly [min: number, max: number];

/** Rows of a logger file, as parts of a series on one bench. */
export const readLogger = (desk: Desk, rows: readonly Row[], note: Note, options: ListOptions): ReadResult =>
  readSeries("logger", desk, rows, note, options);

/** Rows of a weather record, one a day, for a bench outdoors. */
export const readWeather = (desk: Desk, rows: readonly Row[], note: Note, options: ListOptions): ReadResult =>
  readSeries("weather", desk, rows, note, options);

function readSeries(
  what: keyof typeof QUANTITIES,
  desk: Desk,
  rows: readonly Row[],
  note: Note,
  { bench }: ListOptions,
): ReadResult {
  if (!bench || !desk.ledger.house().places.benches.has(bench)) {
    note(
      1,
      "bench",
      what === "logger" ? "say on which bench the logger stood" : "say which bench stands in this weather",
    );
    return { drafts: [], lines: [], firstRows: [], files: [] };
  }
  const limits: Readonly<Record<string, Range>> = QUANTITIES[what];
  const names = Object.keys(limits);
  const readings: { at_ms: number; values: (number | null)[] }[] = [];
  const firstRows: string[] = [];
  for (const { line, cell } of rows) {
    const at_ms = cellDate_ms(cell("at"), desk.ledger.calendar);
    if (at_ms === undefined) {
      note(line, "at", `“${cell("at")}” is no date; expected 2026-04-30 08:15`);
      continue;
    }
    const values = names.map((name) => {
      if (cell(name) === "") return null;
      let value = cellNumber(cell(name));
      if (name === "humidity_frac" && value !== null && value > 1.05) value /= 100;
      const [min, max] = limits[name] as Range;
      if (value === null || value < min || value > max) {
        note(line, name, `${name} is “${cell(name)}”; expected ${min} to ${max}`);
        return null;
      }
      return value;
    });
    const [high, low] = [values[names.indexOf("tMax_C")], values[names.indexOf("tMin_C")]];
    if (typeof high === "number" && typeof low === "number" && high < low)
      note(line, "tMax_C", `the day's highest, ${high} °C, is below its lowest, ${low} °C. Columns swapped?`);
    readings.push({ at_ms, values });
    firstRows.push(
      `${desk.say.day(at_ms)} ${desk.say.time(at_ms)}: ${values.map((value) => value ?? "–").join(", ")}`,
    );
  }
  return { ...seriesDrafts(what, desk, readings, names, bench), firstRows };
}

/** Cuts readings into parts of at most four weeks, each a file that one entry names. */
function seriesDrafts(
  what: keyof typeof QUANTITIES,
  desk: Desk,
  readings: { at_ms: number; values: (number | null)[] }[],
  names: readonly string[],
  bench: string,
) {
  const sorted = [...new Map(readings.map((reading) => [reading.at_ms, reading])).values()].sort(
    (a, b) => a.at_ms - b.at_ms,
  );
  const used = names.filter((_, i) => sorted.some(({ values }) => values[i] !== null));
  const drafts: Draft[] = [];
  const files: { draft: number; text: string }[] = [];
  for (let start = 0; start < sorted.length; ) {
    const from_ms = (sorted[start] as { at_ms: number }).at_ms;
    let end = start;
    while (end < sorted.length && (sorted[end] as { at_ms: number }).at_ms < from_ms + PART_d * 86_400_000)
      end++;
    const part = sorted.slice(start, end);
    const to_ms = (part[part.length - 1] as { at_ms: number }).at_ms;
    files.push({
      draft: drafts.length,
      text: printSeries({
        quantities: used,
        at_ms: part.map(({ at_ms }) => at_ms),
        values: used.map((name) => part.map(({ values }) => values[names.indexOf(name)] ?? null)),
      }),
    });
    drafts.push({
      kind: "series.part",
      on: [bench],
      data: {
        series: `${desk.say.name(bench)} ${what}`,
        what,
        quantities: used,
        from_ms,
        to_ms,
        rows_n: part.length,
      },
    });
    start = end;
  }
  return { drafts, lines: drafts.map(() => 1), files };
}
