import type { Json } from "@sillwood/bench/book";
import { instantOf, isRealDate, WHEN_FORMS } from "../book/when.ts";
import { nearest } from "../text/nearest.ts";
import { compass_deg } from "./compass.ts";
import type { Field } from "./fields.ts";
import { findThing, sortOfField } from "./find-thing.ts";
import { potOf } from "./pot-text.ts";
import { readNumber } from "./read-number.ts";
import { spotsOf } from "./spots-text.ts";
import type { Typing } from "./typing.ts";
import { suffixOf } from "./units.ts";

/** What a typed text says; `wrong` goes on from "volume poured is “x”". */
export type ReadValue = { readonly value: Json } | { readonly wrong: string };

const YES = ["yes", "y", "true", "ja", "j", "1", "on"];
const NO = ["no", "n", "false", "nein", "0", "off"];
const WEEKDAYS = ["sun", "mon", "tue", "wed", "thu", "fri", "sat"];
const WEEKDAYS_DE = ["so", "mo", "di", "mi", "do", "fr", "sa"];

/**
 * The value of a field from its text.
 *
 * @param suffix the unit that stood in the key, if one did: then a bare number is in it
 */
export function readValue(field: Field, typed: string, typing: Typing, suffix?: string): ReadValue {
  const text = typed.trim();
  if (text === "") return { wrong: "expected a value; leave the whole key out where there is none" };
  switch (field.shape) {
    case "number":
    case "count":
      return readQuantity(field, text, typing, suffix);
    case "instant":
      return readInstant(text, typing);
    case "choice":
      return readChoice(text, field.options);
    case "yes or no":
      return readYesNo(text);
    case "date":
      return readDate(text, typing);
    case "id":
      return readId(field, text, typing);
    case "pot": {
      const pot = potOf(text, typing.units);
      return "wrong" in pot ? { wrong: pot.wrong } : { value: pot.pot };
    }
    case "spots":
      return spotsOf(text);
    case "list of counts":
      return readCounts(text);
    case "list of numbers":
      return readNumbers(field, text, typing, suffix);
    case "list of words":
      return readWords(text, field.options);
    case "text":
      return { value: text };
    case "anything":
      return readJson(text);
  }
}

function readQuantity(
  field: Field,
  text: string,
  { units }: Typing,
  typedSuffix: string | undefined,
): ReadValue {
  const suffix = suffixOf(field.suffix, field.unit);
  if (field.suffix === "deg") {
    const point_deg = compass_deg(text);
    if (point_deg !== undefined) return { value: point_deg };
  }
  const clock = field.suffix === "h" ? /^(\d{1,2}):([0-5]\d)$/.exec(text) : null;
  if (clock) return { value: Number(clock[1]) + Number(clock[2]) / 60 };
  const other = typedSuffix !== undefined && typedSuffix !== field.suffix;
  const written = other && /^[\d.,+\-−½¼¾⅛⅜⅝⅞e ]+$/i.test(text) ? `${text} ${typedSuffix}` : text;
  return readNumber(written, suffix, typedSuffix === undefined ? units : "own");
}

function readInstant(text: string, { calendar, now_ms }: Typing): ReadValue {
  const at_ms = instantOf(text, calendar, now_ms);
  return at_ms === undefined ? { wrong: `expected a time as ${WHEN_FORMS}` } : { value: at_ms };
}

function readChoice(text: string, options: readonly string[]): ReadValue {
  const found = options.find((option) => option.toLowerCase() === text.toLowerCase().replaceAll("-", " "));
  if (found !== undefined) return { value: found };
  // Only the likeliest is offered; the gate's own words list them all.
  const near = nearest(text, options);
  return { wrong: `expected one of ${options.join(", ")}${near ? `. Meant ${near}?` : ""}` };
}

function readYesNo(text: string): ReadValue {
  const word = text.toLowerCase();
  if (YES.includes(word)) return { value: true };
  return NO.includes(word) ? { value: false } : { wrong: "expected yes or no" };
}

function readDate(text: string, { calendar, now_ms }: Typing): ReadValue {
  if (isRealDate(text)) return { value: text };
  const at_ms = /^\d+$/.test(text) ? undefined : instantOf(text, calendar, now_ms);
  return at_ms === undefined
    ? { wrong: "expected a date as 2026-04-30 or 30.4.2026" }
    : { value: calendar.dateOf(at_ms) };
}

function readId(field: Field, text: string, { desk, newId }: Typing): ReadValue {
  if (text === "new" && field.name === "into") return { value: newId() };
  const found = findThing(desk, sortOfField(field.name), text);
  return "id" in found ? { value: found.id } : { wrong: found.wrong };
}

function readCounts(text: string): ReadValue {
  if (/^(daily|every day|täglich)$/i.test(text)) return { value: [0, 1, 2, 3, 4, 5, 6] };
  const counts: number[] = [];
  for (const word of text
    .toLowerCase()
    .split(/[\s,;]+/)
    .filter(Boolean)) {
    const named = Math.max(WEEKDAYS.indexOf(word.slice(0, 3)), WEEKDAYS_DE.indexOf(word));
    const count = named >= 0 ? named : Number(word);
    if (!Number.isInteger(count)) return { wrong: "expected days as mon,wed,fri or daily" };
    counts.push(count);
  }
  return { value: counts };
}

/** "6.5, 7, 5.5", "6,5 7 5,5" or "6,5; 7": a comma parts numbers where neither spaces nor semicolons do. */
function readNumbers(field: Field, text: string, typing: Typing, suffix?: string): ReadValue {
  const parts = text.includes(";") ? text.split(";") : text.split(/\s/.test(text) ? /,?\s+/ : ",");
  const numbers: number[] = [];
  for (const part of parts.map((each) => each.trim()).filter(Boolean)) {
    const read = readQuantity(field, part, typing, suffix);
    if ("wrong" in read) return { wrong: `“${part}” ${read.wrong}` };
    numbers.push(read.value as number);
  }
  return { value: numbers };
}

function readWords(text: string, options: readonly string[]): ReadValue {
  const words = text.split(/\s*[,;]\s*/).filter(Boolean);
  const strange = options.length > 0 ? words.find((word) => !options.includes(word)) : undefined;
  return strange === undefined ? { value: words } : { wrong: `expected some of ${options.join(", ")}` };
}

function readJson(text: string): ReadValue {
  try {
    return { value: JSON.parse(text) as Json };
  } catch {
    return { wrong: "expected JSON" };
  }
}
