/// <reference lib="esnext.temporal" />

/**
 * Local days of one zone. The engine needs `globalThis.Temporal`: native in new browsers, else the polyfill that the
 * entry points (worker, server, shell, tests) load before the engine starts.
 */
export interface Calendar {
  readonly zone: string;
  /** Local date of an instant, YYYY-MM-DD. */
  dateOf(at_ms: number): string;
  /** First instant of a local date, epoch ms. Days have 23, 24 or 25 hours. */
  midnight_ms(date: string): number;
  /** The first local midnight after an instant, epoch ms. */
  nextMidnight_ms(at_ms: number): number;
  /** Instant of an hour of the local clock, 0 to 23, epoch ms. */
  hour_ms(date: string, hour_h: number): number;
}

const DAY_ms = 86_400_000;

/** Dates and day numbers that were asked for: a book asks for a few thousand again and again; more than this many are forgotten. */
const KEPT_n = 50_000;
const dayNumbers = new Map<string, number>();
const datesOfDays = new Map<number, string>();

/** Days from 1970-01-01 to a date; negative before. */
export function dayNumber(date: string): number {
  let day_n = dayNumbers.get(date);
  if (day_n === undefined) {
    day_n = Math.round(Date.UTC(+date.slice(0, 4), +date.slice(5, 7) - 1, +date.slice(8, 10)) / DAY_ms);
    if (dayNumbers.size >= KEPT_n) dayNumbers.clear();
    dayNumbers.set(date, day_n);
  }
  return day_n;
}

/** The date a number of days from 1970-01-01. */
function dateOfDayNumber(day_n: number): string {
  let date = datesOfDays.get(day_n);
  if (date === undefined) {
    date = new Date(day_n * DAY_ms).toISOString().slice(0, 10);
    if (datesOfDays.size >= KEPT_n) datesOfDays.clear();
    datesOfDays.set(day_n, date);
  }
  return date;
}

/** A date some days later (earlier when negative). */
export const addDays = (date: string, days_n: number): string => dateOfDayNumber(dayNumber(date) + days_n);

/** Day of the year, 1 to 366. */
export const dayOfYear_d = (date: string): number =>
  dayNumber(date) - dayNumber(`${date.slice(0, 4)}-01-01`) + 1;

/** 0 Sunday to 6 Saturday. */
export const weekdayOf = (date: string): number => (((dayNumber(date) + 4) % 7) + 7) % 7;

/** No zone has changed its clock and changed it back within so few days: between two midnights of one offset it holds. */
const STRETCH_d = 4;

const calendars = new Map<string, Calendar>();

/**
 * The calendar of a zone; midnights are computed once and kept.
 *
 * @param zone IANA name
 * @throws RangeError when the zone is unknown, Error when Temporal has not been loaded
 */
export function calendarOf(zone: string): Calendar {
  const known = calendars.get(zone);
  if (known) return known;
  if (typeof Temporal === "undefined")
    throw new Error("Temporal is missing: load temporal-polyfill/global before the engine starts");
  const midnights = new Map<number, number>();
  const hours = new Map<string, number>();
  const asked = (day_n: number): number =>
    Temporal.PlainDate.from(dateOfDayNumber(day_n)).toZonedDateTime({ timeZone: zone }).epochMilliseconds;
  const offsets = new Map<number, number>();
  /** Local clock less UTC at the midnight that begins so many stretches of days after 1970. */
  const offset_ms = (stretch_n: number): number => {
    let offset = offsets.get(stretch_n);
    if (offset === undefined) {
      offset = stretch_n * STRETCH_d * DAY_ms - asked(stretch_n * STRETCH_d);
      offsets.set(stretch_n, offset);
    }
    return offset;
  };
  const midnightOfDay = (day_n: number): number => {
    let at_ms = midnights.get(day_n);
    if (at_ms === undefined) {
      const stretch_n = Math.floor(day_n / STRETCH_d);
      const offset = offset_ms(stretch_n);
      at_ms = offset === offset_ms(stretch_n + 1) ? day_n * DAY_ms - offset : asked(day_n);
      midnights.set(day_n, at_ms);
    }
    return at_ms;
  };
  // The last answer: who asks of one instant asks of the next one, which mostly falls on the same day.
  let lastDay_n = 0;
  let lastFrom_ms = Number.POSITIVE_INFINITY;
  let lastTo_ms = Number.NEGATIVE_INFINITY;
  const dayOf = (at_ms: number): number => {
    if (at_ms >= lastFrom_ms && at_ms < lastTo_ms) return lastDay_n;
    // Local and UTC dates differ by one day at most.
    let day_n = Math.floor(at_ms / DAY_ms);
    if (midnightOfDay(day_n) > at_ms) day_n--;
    else if (midnightOfDay(day_n + 1) <= at_ms) day_n++;
    lastDay_n = day_n;
    lastFrom_ms = midnightOfDay(day_n);
    lastTo_ms = midnightOfDay(day_n + 1);
    return day_n;
  };
  const calendar: Calendar = {
    zone,
    dateOf: (at_ms) => dateOfDayNumber(dayOf(at_ms)),
    midnight_ms: (date) => midnightOfDay(dayNumber(date)),
    nextMidnight_ms: (at_ms) => midnightOfDay(dayOf(at_ms) + 1),
    hour_ms: (date, hour_h) => {
      const known_ms = hours.get(`${date} ${hour_h}`);
      if (known_ms !== undefined) return known_ms;
      const time = Temporal.PlainTime.from({
        hour: Math.floor(hour_h),
        minute: Math.round((hour_h % 1) * 60),
      });
      const at_ms = Temporal.PlainDate.from(date).toZonedDateTime({
        timeZone: zone,
        plainTime: time,
      }).epochMilliseconds;
      hours.set(`${date} ${hour_h}`, at_ms);
      return at_ms;
    },
  };
  // Asking once proves the zone.
  calendar.midnight_ms("2026-01-01");
  calendars.set(zone, calendar);
  return calendar;
}
