import { addDays } from "./days.ts";

/** When something happened, as people say it. */
export type WhenChoice = "now" | "this morning" | "yesterday" | "other";

export interface When {
  readonly choice: WhenChoice;
  /** Of "other": local date and time as the fields hold them. */
  readonly date: string;
  readonly time: string;
}

export const NOW: When = { choice: "now", date: "", time: "" };

/** "This morning" and "yesterday" stand for the hour of the round. @source our assumption */
const ROUND = "08:00";

/**
 * The instant that is meant, on the clock of `zone`; undefined for now (the device's clock is read when it is written);
 * null while a date is not whole or lies ahead.
 */
export function instantOf(when: When, now_ms: number, zone: string): number | undefined | null {
  if (when.choice === "now") return undefined;
  const today = localDate(now_ms, zone);
  const date = when.choice === "other" ? when.date : when.choice === "yesterday" ? addDays(today, -1) : today;
  const time = when.choice === "other" ? when.time || ROUND : ROUND;
  const at_ms = fromLocal_ms(date, time, zone);
  if (at_ms === undefined) return null;
  // Before eight "this morning" is just now.
  if (at_ms > now_ms) return when.choice === "this morning" ? undefined : null;
  return at_ms;
}

const formats = new Map<string, Intl.DateTimeFormat>();
function parts(at_ms: number, zone: string): Record<string, string> {
  let format = formats.get(zone);
  if (!format) {
    format = new Intl.DateTimeFormat("en-GB", {
      timeZone: zone,
      year: "numeric",
      month: "2-digit",
      day: "2-digit",
      hour: "2-digit",
      minute: "2-digit",
      hourCycle: "h23",
    });
    formats.set(zone, format);
  }
  return Object.fromEntries(format.formatToParts(at_ms).map(({ type, value }) => [type, value]));
}

export function localDate(at_ms: number, zone: string): string {
  const { year, month, day } = parts(at_ms, zone);
  return `${year}-${month}-${day}`;
}

export function localTime(at_ms: number, zone: string): string {
  const { hour, minute } = parts(at_ms, zone);
  return `${hour}:${minute}`;
}

/** The instant at which a clock in the zone shows this date and time; of two (clocks set back) the earlier. */
export function fromLocal_ms(date: string, time: string, zone: string): number | undefined {
  const asUtc_ms = Date.parse(`${date}T${time}:00Z`);
  if (!/^\d{4}-\d\d-\d\d$/.test(date) || !/^\d\d:\d\d$/.test(time) || !Number.isFinite(asUtc_ms))
    return undefined;
  const offsetAt_ms = (at_ms: number) =>
    Date.parse(`${localDate(at_ms, zone)}T${localTime(at_ms, zone)}:00Z`) -
    Math.floor(at_ms / 60_000) * 60_000;
  // The offset a day before and after are the only two candidates; the right one shows the wanted clock.
  const candidates = [offsetAt_ms(asUtc_ms - 86_400_000), offsetAt_ms(asUtc_ms + 86_400_000)]
    .map((offset_ms) => asUtc_ms - offset_ms)
    .sort((a, b) => a - b);
  const shows = (at_ms: number) => localDate(at_ms, zone) === date && localTime(at_ms, zone) === time;
  // An hour that clocks skip in spring is taken as the hour after.
  return candidates.find(shows) ?? candidates[candidates.length - 1];
}
