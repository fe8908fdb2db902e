import { type AnyEntryKind, checkData, type Json } from "@sillwood/bench/book";
import type { Draft } from "@sillwood/bench/round";
import { instantOf, WHEN_FORMS } from "../book/when.ts";
import type { Trouble } from "../errors.ts";
import { nearest } from "../text/nearest.ts";
import { type Field, fieldsOf, findField } from "./fields.ts";
import { readMoney } from "./money.ts";
import { own } from "./own.ts";
import { readValue } from "./read-value.ts";
import { slipSaid } from "./slip.ts";
import type { TypedValue, Typing } from "./typing.ts";

export type Drafted =
  | { readonly data: Readonly<Record<string, Json>>; readonly at_ms?: number }
  | { readonly troubles: readonly Trouble[] };

/** A clock may be wrong by so much before a time counts as lying ahead. */
const AHEAD_ms = 5 * 60_000;

/** Words for the units of columns that people write without them. */
const ALIASES: Readonly<Record<string, string>> = { grams: "weight", gramm: "weight", gewicht: "weight" };

/**
 * The data of an entry from its typed keys, each problem with field, value, limit, unit and the likely slip.
 *
 * @param base data that stood before (a bench laid again, an entry put right): what is not typed stays
 */
export function dataOf(
  kind: AnyEntryKind,
  typed: readonly TypedValue[],
  typing: Typing,
  base: Readonly<Record<string, Json>> = {},
): Drafted {
  const fields = fieldsOf(kind.schema);
  const data: Record<string, Json> = { ...base };
  const troubles: Trouble[] = [];
  const read = new Set<string>();
  let at_ms: number | undefined;
  for (const { key, text } of typed) {
    if (key.toLowerCase() === "when") {
      const when = readWhen(text, typing);
      if (typeof when === "number") at_ms = when;
      else troubles.push(when);
      continue;
    }
    const found = findField(fields, own(ALIASES, key.toLowerCase()) ?? key);
    if (!found) {
      troubles.push(unknownKey(kind, fields, key, text));
      continue;
    }
    const { field, suffix } = found;
    if (read.has(field.name)) troubles.push(trouble(field, text, "is given twice; expected once"));
    read.add(field.name);
    const money = field.suffix === "minor" && suffix === undefined ? readMoney(text, typed) : undefined;
    const value = money ?? readValue(field, text, typing, suffix);
    if ("wrong" in value) troubles.push(trouble(field, text, value.wrong));
    else data[field.name] = value.value;
  }
  troubles.push(...gateTroubles(kind, data, fields, troubles, typed));
  if (troubles.length > 0) return { troubles };
  return at_ms === undefined ? { data } : { data, at_ms };
}

function readWhen(text: string, { calendar, now_ms }: Typing): number | Trouble {
  const at_ms = instantOf(text, calendar, now_ms);
  const shown = JSON.stringify(text.slice(0, 60));
  if (at_ms === undefined)
    return {
      path: "when",
      message: `when is ${shown}; expected ${WHEN_FORMS}`,
      value: text.slice(0, 200),
      limit: WHEN_FORMS,
    };
  if (at_ms <= now_ms + AHEAD_ms) return at_ms;
  const DAY_ms = 86_400_000;
  return {
    path: "when",
    message: `when is ${shown}, which lies ahead; expected a time that has been`,
    value: text.slice(0, 200),
    limit: `at most ${new Date(now_ms).toISOString()}`,
    ...(at_ms - DAY_ms <= now_ms ? { slip: "Meant yesterday?" } : {}),
  };
}

function trouble(field: Field, text: string, wrong: string): Trouble {
  const glue = wrong.startsWith("expected") ? "; " : /^(no|two|\d|the) /.test(wrong) ? ": " : " ";
  const shown = `${field.what} ${glue === " " ? `${JSON.stringify(text.slice(0, 60))}` : `is ${JSON.stringify(text.slice(0, 60))}`}`;
  return {
    path: `data.${field.name}`,
    message: `${shown}${glue}${wrong}`,
    value: text.slice(0, 200),
    ...limitOf(field),
    ...(field.unit ? { unit: field.unit } : {}),
  };
}

/** What a field takes, in a few letters. */
function limitOf(field: Field): { readonly limit?: string } {
  if (field.options.length > 0) return { limit: field.options.join(", ") };
  if (field.shape === "number" || field.shape === "count")
    return { limit: `${field.min} to ${field.max}${field.unit ? ` ${field.unit}` : ""}` };
  return field.shape === "yes or no" ? { limit: "yes, no" } : {};
}

function unknownKey(kind: AnyEntryKind, fields: readonly Field[], key: string, text: string): Trouble {
  const keys = [...fields.map((field) => field.key), "when"];
  const near = nearest(key, keys);
  return {
    path: `data.${key.slice(0, 60)}`,
    message: `${kind.kind} has no ${JSON.stringify(key.slice(0, 60))}; it has ${keys.join(", ")}`,
    value: text.slice(0, 200),
    limit: keys.join(", "),
    ...(near ? { slip: `Meant ${near}?` } : {}),
  };
}

/** Spots get their ids once the bench is known; nobody types them. */
const isSpotId = (path: string, fields: readonly Field[]): boolean => {
  const [, name, , part] = path.split(".");
  return part === "id" && fields.some((field) => field.name === name && field.shape === "spots");
};

/** What the gate says of the data, without repeating what has been said of the text. */
function gateTroubles(
  kind: AnyEntryKind,
  data: Readonly<Record<string, Json>>,
  fields: readonly Field[],
  said: readonly Trouble[],
  typed: readonly TypedValue[],
): Trouble[] {
  const known = new Set(said.map(({ path }) => path));
  return checkData(kind, data)
    .filter(({ path }) => !known.has(path) && !isSpotId(path, fields))
    .map((problem) => {
      const field = fields.find(({ name }) => problem.path.split(".")[1] === name);
      if (!field) return problem;
      if (data[field.name] === undefined) return missing(kind, field);
      const slip = slipSaid(problem.value, field);
      const written = typed.find(({ key }) => findField([field], key))?.text;
      const exact = typeof problem.value === "number" && written !== undefined && !/^[-\d.]+$/.test(written);
      return {
        ...problem,
        message: exact
          ? `${problem.message} (typed ${JSON.stringify(written.slice(0, 60))})`
          : problem.message,
        ...limitOf(field),
        ...(field.unit ? { unit: field.unit } : {}),
        ...(slip ? { slip } : {}),
      };
    });
}

function missing(kind: AnyEntryKind, field: Field): Trouble {
  const example = (kind.example as Readonly<Record<string, unknown>>)[field.name];
  const shown = typeof example === "object" ? "" : ` Expected as ${field.key}=${String(example)}`;
  return {
    path: `data.${field.name}`,
    message: `${field.what} is missing.${shown}`,
    ...limitOf(field),
    ...(field.unit ? { unit: field.unit } : {}),
  };
}

/** A draft with its time: what was typed, else what `--at` says, else now. */
export const withTime = (draft: Draft, at_ms: number | undefined): Draft =>
  at_ms === undefined ? draft : { ...draft, at_ms };
