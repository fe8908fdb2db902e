import type { Calendar } from "@sillwood/bench/places";

/** An instant as JSON gives it: ISO 8601 in UTC. */
export const iso = (at_ms: number): string => new Date(Math.round(at_ms)).toISOString();

export interface DatedQuantiles {
  readonly p10: Dated;
  readonly p25: Dated;
  readonly p50: Dated;
  readonly p75: Dated;
  readonly p90: Dated;
}
interface Dated {
  readonly instant: string;
  /** On the local calendar. */
  readonly date: string;
}

/** Quantiles of equally likely instants, between neighbours in a straight line; each instant stands for the middle of its share. */
export function datedQuantiles(dates_ms: readonly number[], calendar: Calendar): DatedQuantiles | undefined {
  if (dates_ms.length === 0) return undefined;
  const sorted = [...dates_ms].sort((a, b) => a - b);
  const at = (share: number): Dated => {
    const place = Math.min(sorted.length - 1, Math.max(0, share * sorted.length - 0.5));
    const below = sorted[Math.floor(place)] as number;
    const above = sorted[Math.ceil(place)] as number;
    const at_ms = below + (above - below) * (place - Math.floor(place));
    return { instant: iso(at_ms), date: calendar.dateOf(at_ms) };
  };
  return { p10: at(0.1), p25: at(0.25), p50: at(0.5), p75: at(0.75), p90: at(0.9) };
}
