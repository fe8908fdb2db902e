import type { Clock, EntryId } from "./entry.ts";

/**
 * One closed part of a series (logger, weather record, forecast as issued) as a plain text file that one entry names by its
 * content hash. Comma separated, UTF-8, one row per instant in UTC, one column per quantity with its unit in its name:
 *
 *     instant,air_C,humidity_frac
 *     2026-11-25T13:00:00.000Z,21.4,0.52
 *     2026-11-25T13:10:00.000Z,21.5,
 *
 * An empty cell is a missing reading. Instants rise strictly. The same readings always give the same bytes.
 */
export interface SeriesPart {
  /** Names with unit suffix, as `air_C`; each once. */
  readonly quantities: readonly string[];
  /** Epoch milliseconds, strictly rising. */
  readonly at_ms: readonly number[];
  /** [quantity][instant]; null where nothing was read. */
  readonly values: readonly (readonly (number | null)[])[];
}

/** A part with the place of its entry in the book. */
export interface PlacedPart {
  readonly clock: Clock;
  readonly id: EntryId;
  readonly part: SeriesPart;
}

/** Limits on one part (our assumption): a month at one reading a minute, with room. */
export const SERIES_LIMITS = { rows_n: 50_000, quantities_n: 40, name_n: 60 } as const;

/** A part that is not what it should be; `line_n` counts from 1, 0 when it is about the whole. */
export class SeriesError extends Error {
  override readonly name = "SeriesError";
  readonly line_n: number;
  constructor(line_n: number, message: string) {
    super(line_n > 0 ? `line ${line_n}: ${message}` : message);
    this.line_n = line_n;
  }
}

const NAME = /^[a-z][A-Za-z0-9]*(_[A-Za-z0-9]+)*$/;
const NUMBER = /^-?(0|[1-9]\d*)(\.\d+)?(e[+-]?\d+)?$/;

/**
 * The text of a part.
 *
 * @throws SeriesError when the part is not rectangular, not rising, not finite, or beyond SERIES_LIMITS
 */
export function printSeries(part: SeriesPart): string {
  const { quantities, at_ms, values } = part;
  checkNames(quantities, 0);
  if (at_ms.length > SERIES_LIMITS.rows_n)
    throw new SeriesError(0, `${at_ms.length} rows; at most ${SERIES_LIMITS.rows_n}`);
  if (values.length !== quantities.length || values.some((column) => column.length !== at_ms.length))
    throw new SeriesError(0, "every quantity needs one value (or null) per instant");
  let text = `instant,${quantities.join(",")}\n`;
  for (let row = 0; row < at_ms.length; row++) {
    const at = at_ms[row] as number;
    if (row > 0 && at <= (at_ms[row - 1] as number)) throw new SeriesError(row + 2, "instants must rise");
    text += `${instantText(at, row + 2)}`;
    for (const column of values) text += `,${cellText(column[row] as number | null, row + 2)}`;
    text += "\n";
  }
  return text;
}

/**
 * Reads the text of a part.
 *
 * @throws SeriesError naming the line, the column, the value and what was expected
 */
export function parseSeries(text: string): SeriesPart {
  const lines = text.replace(/^\uFEFF/, "").split(/\r?\n/);
  while (lines.at(-1) === "") lines.pop();
  const [first, ...quantities] = (lines[0] ?? "").split(",");
  if (first !== "instant") throw new SeriesError(1, "the first column is called instant");
  checkNames(quantities, 1);
  if (lines.length - 1 > SERIES_LIMITS.rows_n)
    throw new SeriesError(0, `${lines.length - 1} rows; at most ${SERIES_LIMITS.rows_n}`);
  const at_ms: number[] = [];
  const values: (number | null)[][] = quantities.map(() => []);
  for (let i = 1; i < lines.length; i++) {
    const cells = (lines[i] as string).split(",");
    if (cells.length !== quantities.length + 1)
      throw new SeriesError(i + 1, `${cells.length} cells; expected ${quantities.length + 1}`);
    const at = parseInstant(cells[0] as string, i + 1);
    if (at_ms.length > 0 && at <= (at_ms.at(-1) as number))
      throw new SeriesError(i + 1, "instants must rise");
    at_ms.push(at);
    for (let q = 0; q < quantities.length; q++)
      values[q]?.push(parseCell(cells[q + 1] as string, quantities[q] as string, i + 1));
  }
  return { quantities, at_ms, values };
}

function checkNames(names: readonly string[], line_n: number): void {
  if (names.length < 1 || names.length > SERIES_LIMITS.quantities_n)
    throw new SeriesError(line_n, `${names.length} quantities; expected 1 to ${SERIES_LIMITS.quantities_n}`);
  for (const name of names)
    if (!NAME.test(name) || name.length > SERIES_LIMITS.name_n || name === "instant")
      throw new SeriesError(
        line_n,
        `${JSON.stringify(name.slice(0, 80))} is no quantity with a unit, as air_C`,
      );
  if (new Set(names).size < names.length) throw new SeriesError(line_n, "a quantity stands there twice");
}

function instantText(at_ms: number, line_n: number): string {
  if (!Number.isInteger(at_ms) || at_ms < -62_135_596_800_000 || at_ms > 253_402_300_799_999)
    throw new SeriesError(line_n, `instant is ${at_ms} ms; expected whole ms in the years 1 to 9999`);
  return new Date(at_ms).toISOString();
}

function parseInstant(text: string, line_n: number): number {
  const at_ms = /^\d{4}-\d\d-\d\dT\d\d:\d\d(:\d\d(\.\d{1,3})?)?Z$/.test(text) ? Date.parse(text) : Number.NaN;
  // A day that its month has not got, or an hour 24, would be read as one of the days after.
  if (!Number.isFinite(at_ms) || new Date(at_ms).getUTCDate() !== +text.slice(8, 10))
    throw new SeriesError(
      line_n,
      `instant is ${JSON.stringify(text.slice(0, 60))}; expected one as 2026-11-25T13:00:00Z`,
    );
  return at_ms;
}

function cellText(value: number | null, line_n: number): string {
  if (value === null) return "";
  if (!Number.isFinite(value)) throw new SeriesError(line_n, `value is ${value}; expected a finite number`);
  return JSON.stringify(value);
}

function parseCell(text: string, quantity: string, line_n: number): number | null {
  if (text === "") return null;
  const value = NUMBER.test(text) ? Number(text) : Number.NaN;
  if (!Number.isFinite(value))
    throw new SeriesError(
      line_n,
      `${quantity} is ${JSON.stringify(text.slice(0, 60))}; expected a number or nothing`,
    );
  return value;
}
