interface Day {
  readonly from_ms: number;
  readonly to_ms: number;
}

/** How many of the twenty dates fall on each day; the past counts as today, what lies further is told apart. */
export function beadsByDay(
  dates_ms: readonly number[],
  days: readonly Day[],
): { readonly columns: readonly number[]; readonly beyond_n: number } {
  const columns = days.map(() => 0);
  let beyond_n = 0;
  for (const at_ms of dates_ms) {
    const place_n = days.findIndex(({ to_ms }) => at_ms < to_ms);
    if (place_n < 0) beyond_n++;
    else columns[place_n] = (columns[place_n] ?? 0) + 1;
  }
  return { columns, beyond_n };
}

export const beadsBefore = (dates_ms: readonly number[], at_ms: number): number =>
  dates_ms.filter((date_ms) => date_ms < at_ms).length;
