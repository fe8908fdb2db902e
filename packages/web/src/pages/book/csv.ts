import type { LogLine } from "@sillwood/bench/round";

/** A cell that a spreadsheet would run as a formula gets a quote before it; the rest is quoted where it must be. */
export function cell(text: string): string {
  const safe = /^[=+\-@\t\r]/.test(text) ? `'${text}` : text;
  return /[",\n\r;]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

const HEAD = ["at", "kind", "on", "said", "by", "state", "earlier", "data"] as const;

/** The log as a table: one row an entry, newest first, values in SI as the book keeps them. */
export function logTable(lines: readonly LogLine[]): string {
  const rows = lines.map(({ at_ms, kind, on, said, by, state, ruledThrough, data }) => [
    new Date(at_ms).toISOString(),
    kind,
    on,
    said ?? "",
    by,
    state,
    ruledThrough.map((one) => `${one.said} (${one.by})`).join("; "),
    JSON.stringify(data),
  ]);
  return [HEAD, ...rows].map((row) => `${row.map(cell).join(",")}\r\n`).join("");
}
