export const HOUR_ms = 3_600_000;
export const DAY_ms = 86_400_000;

/** One local day of a zone: 23, 24 or 25 hours long. */
export interface LocalDay {
  /** YYYY-MM-DD. */
  readonly date: string;
  readonly midnight_ms: number;
  readonly dayOfYear_d: number;
  /** 0 Sunday to 6 Saturday. */
  readonly weekday: number;
}

const formats = new Map<string, Intl.DateTimeFormat>();

/** Hours by which the zone's clocks are ahead of UTC at an instant. */
function offset_h(zone: string, at_ms: number): number {
  let format = formats.get(zone);
  if (!format) {
    format = new Intl.DateTimeFormat("en-US", {
      timeZone: zone,
      hourCycle: "h23",
      year: "numeric",
      month: "numeric",
      day: "numeric",
      hour: "numeric",
      minute: "numeric",
      second: "numeric",
    });
    formats.set(zone, format);
  }
  const part = new Map<string, number>(
    format.formatToParts(at_ms).map(({ type, value }) => [type, Number(value)]),
  );
  const of = (type: string) => part.get(type) ?? 0;
  const asUtc_ms = Date.UTC(of("year"), of("month") - 1, of("day"), of("hour"), of("minute"), of("second"));
  return (asUtc_ms - Math.floor(at_ms / 1000) * 1000) / HOUR_ms;
}

/** The date that the zone's calendars show at an instant. */
export function dateAt(zone: string, at_ms: number): string {
  return new Date(at_ms + offset_h(zone, at_ms) * HOUR_ms).toISOString().slice(0, 10);
}

/** The instant at which a zone's clocks show a date and hour (fractions allowed). */
export function instantOf(zone: string, date: string, hour: number): number {
  const asUtc_ms = Date.parse(`${date}T00:00:00Z`) + hour * HOUR_ms;
  // Two passes: the offset at the guess may be that of the other side of a clock change.
  const guess_ms = asUtc_ms - offset_h(zone, asUtc_ms) * HOUR_ms;
  return asUtc_ms - offset_h(zone, guess_ms) * HOUR_ms;
}

/** A date so many days later (earlier when negative). */
export function dayAfter(date: string, days_d: number): string {
  return new Date(Date.parse(`${date}T00:00:00Z`) + days_d * DAY_ms).toISOString().slice(0, 10);
}

/** Day of the year, 1 to 366. */
export function dayOfYear_d(date: string): number {
  return (
    Math.round((Date.parse(`${date}T00:00:00Z`) - Date.UTC(Number(date.slice(0, 4)), 0, 1)) / DAY_ms) + 1
  );
}

/** The local days from one date on. */
export function localDays(zone: string, from: string, days_n: number): LocalDay[] {
  return Array.from({ length: days_n }, (_, i) => {
    const date = dayAfter(from, i);
    return {
      date,
      midnight_ms: instantOf(zone, date, 0),
      dayOfYear_d: dayOfYear_d(date),
      weekday: new Date(`${date}T00:00:00Z`).getUTCDay(),
    };
  });
}
