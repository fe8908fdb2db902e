import type { Round, Task } from "@sillwood/bench/round";

/** A row of a printed round: one task of one pot, in walking order. */
export interface SheetRow {
  readonly bench: string;
  readonly benchName: string;
  readonly number: string;
  readonly task: Task;
}

/** Everything the round holds that day, also what may wait: paper has no minutes. */
export function sheetRows(round: Round): readonly SheetRow[] {
  return round.benches.flatMap(({ bench, name, spots }) =>
    spots.flatMap(({ number, tasks, moved }) =>
      [...tasks, ...moved].map((task) => ({ bench, benchName: name, number: number ?? "", task })),
    ),
  );
}

export function byBench(
  rows: readonly SheetRow[],
): readonly { readonly bench: string; readonly name: string; readonly rows: readonly SheetRow[] }[] {
  const benches = new Map<string, { bench: string; name: string; rows: SheetRow[] }>();
  for (const row of rows) {
    const bench = benches.get(row.bench) ?? { bench: row.bench, name: row.benchName, rows: [] };
    bench.rows.push(row);
    benches.set(row.bench, bench);
  }
  return [...benches.values()];
}
