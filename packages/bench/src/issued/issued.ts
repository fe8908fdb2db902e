import type { Clock, Entry, EntryId, Sha256 } from "../book/entry.ts";
import { compareClock } from "../book/order.ts";
import { FORECAST_ISSUED, type IssuedData } from "./kinds.ts";

/** A day's forecasts that are in force. */
export interface Issued extends IssuedData {
  readonly entry: EntryId;
  readonly clock: Clock;
  /** When they were issued, clock errors of the device taken out. */
  readonly at_ms: number;
  readonly file: Sha256;
}

/** By book day. */
export type IssuedDays = ReadonlyMap<string, Issued>;

export const isIssued = (entry: Entry): boolean => entry.kind === FORECAST_ISSUED;

/** What was issued on each book day: of two for one day the earlier clock counts, whichever came first. */
export function issuedDays(entries: Iterable<Entry>): IssuedDays {
  const days = new Map<string, Issued>();
  for (const entry of entries) {
    const file = entry.files?.[0];
    if (!isIssued(entry) || file === undefined) continue;
    const data = entry.data as unknown as IssuedData;
    const before = days.get(data.date);
    if (before && compareClock({ clock: before.clock, id: before.entry }, entry) <= 0) continue;
    days.set(data.date, { ...data, entry: entry.id, clock: entry.clock, at_ms: entry.at_ms, file });
  }
  return days;
}
