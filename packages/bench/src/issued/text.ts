import type { PlantId, Sha256 } from "../book/entry.ts";
import { isSha256 } from "../book/hash.ts";

/**
 * Forecasts as issued on one book day: a plain text file that one entry names by its content hash. The same forecasts always
 * give the same bytes. UTF-8, comma separated, each row begins with what it holds; times are whole minutes from `issued`:
 *
 *     forecasts,1
 *     date,2026-03-12
 *     issued,2026-03-12T07:00:12.345Z
 *     engine,2.1
 *     inputs,(SHA-256 of what they rest on)
 *     dates,(plant),water,-2880,0,35,120 ...        since when, then twenty equally likely waits
 *     ahead,(plant),use_g,1020,31.2,5.1,2460 ...    for each stretch: its end, mean and sd
 *
 * `since` is when the work was last done as far as was known, empty when never. Rows rise by plant, `dates` before `ahead`, by name.
 */
export interface Forecasts {
  readonly date: string;
  readonly issued_ms: number;
  readonly engine: string;
  readonly inputs: Sha256;
  readonly dates: readonly DatesRow[];
  readonly ahead: readonly AheadRow[];
}

export interface DatesRow {
  readonly plant: PlantId;
  readonly work: string;
  /** Minutes from issue, 0 or less. */
  readonly since_min?: number;
  /** Twenty equally likely waits, ascending. */
  readonly dates_min: readonly number[];
}

/** An amount in each of the coming stretches: the first begins at the issue, each other where the one before ends. */
export interface AheadRow {
  readonly plant: PlantId;
  /** With its unit: `use_g`. */
  readonly name: string;
  readonly stretches: readonly { readonly to_min: number; readonly mean: number; readonly sd: number }[];
}

/** Limits on one file (our assumption): far past any bench, small enough that no file can stop a phone. */
export const FORECAST_LIMITS = {
  rows_n: 40_000,
  dates_n: 20,
  stretches_n: 40,
  /** Four years. */
  wait_min: 2_103_840,
  amount: 1e9,
} as const;

/** A file that is not what it should be; `line_n` counts from 1, 0 when it is about the whole. */
export class ForecastsError extends Error {
  override readonly name = "ForecastsError";
  readonly line_n: number;
  readonly field: string;
  readonly trouble: string;
  constructor(line_n: number, field: string, trouble: string) {
    super(`${line_n > 0 ? `line ${line_n}, ` : ""}${field}: ${trouble}`);
    this.line_n = line_n;
    this.field = field;
    this.trouble = trouble;
  }
}

const HEAD = ["forecasts", "date", "issued", "engine", "inputs"] as const;
const PLANT = /^[\w.:-]{1,64}$/;
const NAME = /^[a-z][A-Za-z0-9_]{0,39}$/;
const ENGINE = /^[A-Za-z0-9.+-]{1,40}$/;

/**
 * The text of a day's forecasts; rows may come in any order.
 *
 * @throws ForecastsError when a value is not what the format holds
 */
export function printForecasts(forecasts: Forecasts): string {
  const { date, issued_ms, engine, inputs } = forecasts;
  const rows = [
    ...forecasts.dates.map((row) => ({
      key: keyOf("dates", row.plant, row.work),
      cells: ["dates", row.plant, row.work, row.since_min ?? "", ...row.dates_min],
    })),
    ...forecasts.ahead.map((row) => ({
      key: keyOf("ahead", row.plant, row.name),
      cells: [
        "ahead",
        row.plant,
        row.name,
        ...row.stretches.flatMap(({ to_min, mean, sd }) => [to_min, mean, sd]),
      ],
    })),
  ].sort((a, b) => (a.key < b.key ? -1 : 1));
  const issued = Number.isInteger(issued_ms) ? new Date(issued_ms).toISOString() : String(issued_ms);
  const text = [
    ["forecasts", 1],
    ["date", date],
    ["issued", issued],
    ["engine", engine],
    ["inputs", inputs],
    ...rows.map(({ cells }) => cells),
  ]
    .map((cells) => `${cells.join(",")}\n`)
    .join("");
  // What this prints, everybody must be able to read.
  parseForecasts(text);
  return text;
}

/**
 * Reads the text of a day's forecasts.
 *
 * @param isWanted rows it turns down are passed over unread: who asks about one plant need not read all of them
 * @throws ForecastsError naming the line, the field, the value and what was expected
 */
export function parseForecasts(
  text: string,
  isWanted: (plant: string, name: string) => boolean = () => true,
): Forecasts {
  const lines = text.split("\n");
  if (lines.pop() !== "") throw new ForecastsError(lines.length + 1, "end", "expected a line break");
  const head = HEAD.map((name, i) => headCell(lines[i], name, i + 1));
  const [version, date, issued, engine, inputs] = head as [string, string, string, string, string];
  if (version !== "1") throw new ForecastsError(1, "forecasts", `is ${shown(version)}; expected version 1`);
  if (!/^\d{4}-\d\d-\d\d$/.test(date) || !isSame(Date.parse(`${date}T00:00:00Z`), `${date}T00:00:00.000Z`))
    throw new ForecastsError(2, "date", `is ${shown(date)}; expected a date as 2026-03-12`);
  const issued_ms = Date.parse(issued);
  if (!isSame(issued_ms, issued))
    throw new ForecastsError(
      3,
      "issued",
      `is ${shown(issued)}; expected an instant as 2026-03-12T07:00:12.345Z`,
    );
  if (!ENGINE.test(engine))
    throw new ForecastsError(4, "engine", `is ${shown(engine)}; expected a version as 2.1`);
  if (!isSha256(inputs))
    throw new ForecastsError(5, "inputs", `is ${shown(inputs)}; expected 64 lower-case hexadecimal digits`);
  if (lines.length - HEAD.length > FORECAST_LIMITS.rows_n)
    throw new ForecastsError(0, "rows", `${lines.length - HEAD.length}; at most ${FORECAST_LIMITS.rows_n}`);

  const dates: DatesRow[] = [];
  const ahead: AheadRow[] = [];
  let before = "";
  for (let i = HEAD.length; i < lines.length; i++) {
    const line = lines[i] as string;
    const [what = "", plant = "", name = ""] = line.split(",", 3);
    if (!isWanted(plant, name)) continue;
    const line_n = i + 1;
    if (what !== "dates" && what !== "ahead")
      throw new ForecastsError(line_n, "row", `begins with ${shown(what)}; expected dates or ahead`);
    if (!PLANT.test(plant)) throw new ForecastsError(line_n, "plant", `is ${shown(plant)}; expected an id`);
    if (!NAME.test(name))
      throw new ForecastsError(
        line_n,
        what === "dates" ? "work" : "name",
        `is ${shown(name)}; expected a word`,
      );
    const key = keyOf(what, plant, name);
    if (key <= before) throw new ForecastsError(line_n, "row", "stands twice or out of order");
    before = key;
    const cells = line.split(",").slice(3);
    if (what === "dates") dates.push(datesRow(plant as PlantId, name, cells, line_n));
    else ahead.push(aheadRow(plant as PlantId, name, cells, line_n));
  }
  return { date, issued_ms, engine, inputs, dates, ahead };
}

/**
 * The dates of one plant's work in a text, found without reading the rest; undefined when it was not forecast then.
 *
 * @throws ForecastsError when its row is not what it should be
 */
export function datesIn(text: string, plant: string, work: string): DatesRow | undefined {
  const begin = `\ndates,${plant},${work},`;
  const at = text.indexOf(begin);
  if (at < 0) return undefined;
  const end = text.indexOf("\n", at + 1);
  const cells = text.slice(at + begin.length, end < 0 ? undefined : end).split(",");
  try {
    return datesRow(plant as PlantId, work, cells, 0);
  } catch (error) {
    if (!(error instanceof ForecastsError)) throw error;
    // Lines are only counted for who must be told of one.
    throw new ForecastsError(text.slice(0, at + 1).split("\n").length, error.field, error.trouble);
  }
}

/** Sorts rows by plant, then what, then name; no id and no word holds a space. */
const keyOf = (what: "dates" | "ahead", plant: string, name: string) =>
  `${plant} ${what === "dates" ? 0 : 1} ${name}`;

function headCell(line: string | undefined, name: string, line_n: number): string {
  const [first = "", cell, more] = (line ?? "").split(",");
  if (first !== name || cell === undefined || more !== undefined)
    throw new ForecastsError(
      line_n,
      name,
      `the line is ${shown(line ?? "missing")}; expected ${name} and one value`,
    );
  return cell;
}

function datesRow(plant: PlantId, work: string, cells: readonly string[], line_n: number): DatesRow {
  const { dates_n, wait_min } = FORECAST_LIMITS;
  const [since = "", ...waits] = cells;
  if (waits.length !== dates_n)
    throw new ForecastsError(line_n, "waits", `${waits.length} of them; expected ${dates_n}`);
  const dates_min = waits.map((cell, i) => whole(cell, `wait ${i + 1}`, 0, wait_min, line_n));
  const falls = dates_min.findIndex((wait, i) => i > 0 && wait < (dates_min[i - 1] as number));
  if (falls > 0) throw new ForecastsError(line_n, `wait ${falls + 1}`, "is shorter than the one before");
  return {
    plant,
    work,
    ...(since === "" ? {} : { since_min: whole(since, "since", -wait_min, 0, line_n) }),
    dates_min,
  };
}

function aheadRow(plant: PlantId, name: string, cells: readonly string[], line_n: number): AheadRow {
  const { stretches_n, wait_min, amount } = FORECAST_LIMITS;
  if (cells.length === 0 || cells.length % 3 !== 0 || cells.length > 3 * stretches_n)
    throw new ForecastsError(
      line_n,
      "stretches",
      `${cells.length} cells; expected three (end, mean, sd) for each of 1 to ${stretches_n} stretches`,
    );
  const stretches: AheadRow["stretches"][number][] = [];
  let from_min = 0;
  for (let i = 0; i < cells.length; i += 3) {
    const at = `stretch ${i / 3 + 1}`;
    const to_min = whole(cells[i] as string, `end of ${at}`, from_min + 1, wait_min, line_n);
    const mean = decimal(cells[i + 1] as string, `mean of ${at}`, -amount, amount, line_n);
    const sd = decimal(cells[i + 2] as string, `sd of ${at}`, 0, amount, line_n);
    stretches.push({ to_min, mean, sd });
    from_min = to_min;
  }
  return { plant, name, stretches };
}

function whole(cell: string, field: string, min: number, max: number, line_n: number): number {
  const value = /^-?\d{1,9}$/.test(cell) ? Number(cell) : Number.NaN;
  if (String(value) === cell && value >= min && value <= max) return value;
  throw new ForecastsError(line_n, field, `is ${shown(cell)}; expected ${min} to ${max} whole minutes`);
}

function decimal(cell: string, field: string, min: number, max: number, line_n: number): number {
  const value = cell === "" ? Number.NaN : Number(cell);
  if (String(value) === cell && value >= min && value <= max) return value;
  throw new ForecastsError(line_n, field, `is ${shown(cell)}; expected a number from ${min} to ${max}`);
}

const isSame = (at_ms: number, text: string) =>
  Number.isFinite(at_ms) && new Date(at_ms).toISOString() === text;

const shown = (text: string) => JSON.stringify(text.slice(0, 60));
