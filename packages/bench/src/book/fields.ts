import * as v from "valibot";

/**
 * Building blocks for entry schemas, so that every refusal names the field, the value, the limit and the unit
 * in the same way. The unit of a number is the suffix of its name and travels as metadata (JSON Schema, CLI, screens).
 */
export interface FieldFacts {
  readonly what: string;
  readonly unit: string;
  readonly min: number;
  readonly max: number;
}

const said = (what: string, unit: string, input: unknown, min: number, max: number) =>
  `${what} is ${typeof input === "number" ? input : JSON.stringify(input)}${unit && ` ${unit}`}; expected ${min} to ${max}${unit && ` ${unit}`}`;

/** A finite number with unit and valid range, both ends included. */
export function quantity(what: string, unit: string, min: number, max: number) {
  const message = (issue: { readonly input: unknown }) => said(what, unit, issue.input, min, max);
  return v.pipe(
    v.number(message),
    v.finite(message),
    v.minValue(min, message),
    v.maxValue(max, message),
    v.metadata({ what, unit, min, max }),
  );
}

/** A whole count with valid range. */
export function count(what: string, min: number, max: number) {
  const message = (issue: { readonly input: unknown }) =>
    `${said(what, "", issue.input, min, max)}, a whole number`;
  return v.pipe(
    v.number(message),
    v.integer(message),
    v.minValue(min, message),
    v.maxValue(max, message),
    v.metadata({ what, unit: "", min, max }),
  );
}

/** Text that somebody typed; never a name, address or number of a buyer or helper (those stand on person cards). */
export function text(what: string, longest: number) {
  return v.pipe(
    v.string(`${what} is not text`),
    v.trim(),
    v.minLength(1, `${what} is empty`),
    v.maxLength(longest, `${what} is longer than ${longest} characters`),
    v.metadata({ what, unit: "", min: 1, max: longest }),
  );
}

/** One of a few words. */
export function choice<const Options extends readonly [string, ...string[]]>(what: string, options: Options) {
  return v.picklist(
    options,
    (issue) => `${what} is ${JSON.stringify(issue.input)}; expected one of ${options.join(", ")}`,
  );
}

/** The id of something in the book. */
export function id(what: string) {
  return v.pipe(
    v.string(`${what} is not an id`),
    v.minLength(1, `${what} is empty`),
    v.maxLength(64, `${what} is longer than 64 characters`),
    v.regex(/^[\w.:-]+$/, `${what} holds a character that no id has`),
    v.metadata({ what, unit: "", min: 1, max: 64 }),
  );
}

/** A calendar date, YYYY-MM-DD. */
export function day(what: string) {
  return v.pipe(
    v.string(`${what} is not a date`),
    v.isoDate((issue) => `${what} is ${JSON.stringify(issue.input)}; expected a date as 2026-04-30`),
    v.metadata({ what, unit: "date", min: 0, max: 0 }),
  );
}
