import { clockText, EARLIEST_ms, type Entry, LATEST_ms } from "@sillwood/bench/book";
import { type Calendar, calendarOf } from "@sillwood/bench/places";
import { type Call, textOption } from "../command.ts";
import { UsageError } from "../errors.ts";
import { siteZone } from "./load-book.ts";
import { instantOf, WHEN_FORMS } from "./when.ts";

/** The zone that `--zone` names. */
export function zoneOption(call: Call): string | undefined {
  const zone = textOption(call, "zone");
  if (zone === undefined) return undefined;
  try {
    new Intl.DateTimeFormat("en", { timeZone: zone });
  } catch {
    throw new UsageError(`--zone is ${JSON.stringify(zone)}; expected an IANA name, as Europe/Berlin.`);
  }
  return zone;
}

/** The calendar on which this person types: the zone asked for, else the book's site, else the device's. */
export const typingCalendar = (call: Call, entries: readonly Entry[]): Calendar =>
  calendarOf(zoneOption(call) ?? siteZone(entries) ?? call.around.zone);

/** An instant given by an option, epoch ms; undefined when it was not given. */
export function instantOption(call: Call, name: string, calendar: Calendar): number | undefined {
  const text = textOption(call, name);
  if (text === undefined) return undefined;
  const at_ms = instantOf(text, calendar, call.around.now_ms());
  if (at_ms === undefined || at_ms < EARLIEST_ms || at_ms >= LATEST_ms)
    throw new UsageError(
      `--${name} is ${JSON.stringify(text)}; expected an instant of the years 2000 to 2200, as ${WHEN_FORMS}.`,
    );
  return at_ms;
}

/** The last logical clock that counts as written at an instant. */
export const knownUntil = (known_ms: number): string => clockText(known_ms, 0xffff);
