import { createHash } from "node:crypto";

/** Rows of a series as a text file, with what the entry that names it says of it. */
export interface SeriesFile {
  /** Lower-case hexadecimal SHA-256 of the text. */
  readonly hash: string;
  readonly text: string;
  readonly quantities: readonly string[];
  readonly from_ms: number;
  readonly to_ms: number;
  readonly rows_n: number;
}

export interface SeriesRow {
  readonly at_ms: number;
  readonly values: readonly number[];
}

/** One part of a series: comma separated, first column the instant in UTC, a line end after each row. */
export function seriesFile(quantities: readonly string[], rows: readonly SeriesRow[]): SeriesFile {
  const first = rows[0];
  const last = rows[rows.length - 1];
  if (!first || !last) throw new RangeError("a series needs a row");
  const lines = rows.map(({ at_ms, values }) =>
    [new Date(at_ms).toISOString(), ...values.map(String)].join(","),
  );
  const text = `${[["instant", ...quantities].join(","), ...lines].join("\n")}\n`;
  return {
    hash: createHash("sha256").update(text, "utf8").digest("hex"),
    text,
    quantities,
    from_ms: first.at_ms,
    to_ms: last.at_ms,
    rows_n: rows.length,
  };
}

/** Rows sorted into local months, each of which becomes a part. */
export function byMonth<Row>(rows: readonly Row[], monthOf: (row: Row) => string): Row[][] {
  const months = new Map<string, Row[]>();
  for (const row of rows) {
    const month = monthOf(row);
    const list = months.get(month);
    if (list) list.push(row);
    else months.set(month, [row]);
  }
  return [...months.values()];
}
