import { addDays, type Calendar, weekdayOf } from "@sillwood/bench/places";
import { own } from "../typed/own.ts";

const ISO = /^(\d{4}-\d\d-\d\d)(?:[T ](\d\d?):(\d\d)(?::(\d\d)(?:\.\d+)?)?)?(Z|[+-]\d\d:?\d\d)?$/;
const DOTTED = /^(\d{1,2})\.(\d{1,2})\.(\d{4})(?:[ ,]+(.+))?$/;
const CLOCK = /^(\d{1,2})(?:[:.](\d\d))?\s*(am|pm|h|uhr)?$/i;
const AGO =
  /^(?:-|vor )?(\d+(?:[.,]\d+)?)\s*(min|minutes?|minuten|h|hours?|stunden?|d|days?|tagen?)(?: ago)?$/i;
const DAYS: Readonly<Record<string, number>> = {
  today: 0,
  heute: 0,
  yesterday: -1,
  gestern: -1,
  vorgestern: -2,
  tomorrow: 1,
  morgen: 1,
};
const WEEKDAYS = [
  ["sun", "so", "su"],
  ["mon", "mo"],
  ["tue", "di", "tu"],
  ["wed", "mi", "we"],
  ["thu", "do", "th"],
  ["fri", "fr"],
  ["sat", "sa"],
] as const;
const MINUTE_ms = 60_000;
/** A date without a time is taken at noon: nobody can be wrong by more than half a day. */
const NOON_h = 12;

/** The forms that `instantOf` reads, for messages. */
export const WHEN_FORMS = "2026-04-30 08:15, 8:15, yesterday 8:00, mon 7:30, 2h ago or 2026-04-30T06:15:00Z";

/**
 * An instant as people write it, read on one local calendar: ISO with or without zone, 30.4.2026 8:15, a time of today, a near
 * day with or without time, a weekday (the last one), or so long ago. Month before day is never guessed.
 *
 * @returns epoch milliseconds; undefined when the text is none of these
 */
export function instantOf(typed: string, calendar: Calendar, now_ms: number): number | undefined {
  const text = typed.trim().replace(/\s+/g, " ");
  if (/^(now|jetzt)$/i.test(text)) return now_ms;
  const iso = ISO.exec(text);
  if (iso) return isoInstant(iso, text, calendar);
  const dotted = DOTTED.exec(text);
  if (dotted) {
    const [, day = "", month = "", year = "", time] = dotted;
    return onDate(`${year}-${month.padStart(2, "0")}-${day.padStart(2, "0")}`, time, calendar);
  }
  const ago = AGO.exec(text);
  if (ago && /ago|^-|^vor /i.test(text)) {
    const unit = (ago[2] as string)[0]?.toLowerCase();
    const each_ms =
      unit === "m" ? MINUTE_ms : unit === "h" || unit === "s" ? 60 * MINUTE_ms : 1440 * MINUTE_ms;
    return Math.round(now_ms - Number((ago[1] as string).replace(",", ".")) * each_ms);
  }
  const today = calendar.dateOf(now_ms);
  if (CLOCK.test(text)) return /[:.apmuh]/i.test(text) ? onDate(today, text, calendar) : undefined;
  const [word = "", ...rest] = text.toLowerCase().split(" ");
  const shift_d = own(DAYS, word) ?? lastWeekday(word, today);
  return shift_d === undefined ? undefined : onDate(addDays(today, shift_d), rest.join(" "), calendar);
}

function isoInstant(parts: RegExpExecArray, text: string, calendar: Calendar): number | undefined {
  const [, date = "", hour, minute, second, zone] = parts;
  if (!isRealDate(date)) return undefined;
  if (zone !== undefined) {
    const at_ms = Date.parse(text.replace(" ", "T").replace(/T(\d):/, "T0$1:"));
    return Number.isFinite(at_ms) ? at_ms : undefined;
  }
  return hour === undefined
    ? onDate(date, undefined, calendar)
    : atTime(date, Number(hour), Number(minute), Number(second ?? 0), calendar);
}

function onDate(date: string, time: string | undefined, calendar: Calendar): number | undefined {
  if (!isRealDate(date)) return undefined;
  if (time === undefined || time === "") return atTime(date, NOON_h, 0, 0, calendar);
  const clock = CLOCK.exec(time.trim());
  if (!clock) return undefined;
  const half = (clock[3] ?? "").toLowerCase();
  let hour = Number(clock[1]);
  if ((half === "am" || half === "pm") && (hour < 1 || hour > 12)) return undefined;
  if (half === "am" && hour === 12) hour = 0;
  if (half === "pm" && hour < 12) hour += 12;
  return atTime(date, hour, Number(clock[2] ?? 0), 0, calendar);
}

function atTime(
  date: string,
  hour: number,
  minute: number,
  second: number,
  calendar: Calendar,
): number | undefined {
  if (hour > 23 || minute > 59 || second > 59) return undefined;
  return calendar.hour_ms(date, hour) + (minute * 60 + second) * 1000;
}

/** Whether a date is in the calendar: no 30 February. */
export function isRealDate(date: string): boolean {
  if (!/^\d{4}-\d\d-\d\d$/.test(date)) return false;
  const real = new Date(`${date}T00:00:00Z`);
  return Number.isFinite(real.getTime()) && real.toISOString().slice(0, 10) === date;
}

function lastWeekday(word: string, today: string): number | undefined {
  const wanted = WEEKDAYS.findIndex((names) =>
    names.some((name) => (name.length > 2 ? word.startsWith(name) : word === name)),
  );
  if (wanted < 0) return undefined;
  return -((weekdayOf(today) - wanted + 7) % 7);
}
