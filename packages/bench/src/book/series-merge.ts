import { compareClock } from "./order.ts";
import type { PlacedPart, SeriesPart } from "./series.ts";

/**
 * All parts of one name as one series. At each instant and quantity the part with the later clock that has a reading wins,
 * so a second, corrected upload replaces the first without erasing what only the first had. Any order of `parts` gives the same.
 */
export function mergeSeries(parts: readonly PlacedPart[]): SeriesPart {
  const cells = new Map<string, Map<number, number>>();
  const instants = new Set<number>();
  // Earliest first: a later part simply writes over what it knows better.
  for (const { part } of [...parts].sort(compareClock)) {
    for (const at_ms of part.at_ms) instants.add(at_ms);
    part.quantities.forEach((quantity, q) => {
      const column = cells.get(quantity) ?? new Map<number, number>();
      cells.set(quantity, column);
      part.at_ms.forEach((at_ms, row) => {
        const value = part.values[q]?.[row];
        if (value !== null && value !== undefined) column.set(at_ms, value);
      });
    });
  }
  const quantities = [...cells.keys()].sort();
  const at_ms = [...instants].sort((a, b) => a - b);
  const values = quantities.map((quantity) => at_ms.map((at) => cells.get(quantity)?.get(at) ?? null));
  return { quantities, at_ms, values };
}
