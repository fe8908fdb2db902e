import { quantityError, unitOfName } from "../errors/index.ts";
import type { InputValue, ScienceFunction, ScienceInput, ScienceOutput } from "./types.ts";

type Arguments = Readonly<Record<string, InputValue>>;

/** What is written down about a function; the rest is worked out from its name. */
export type Description = {
  readonly what: string;
  readonly source: string;
  readonly inputs: readonly ScienceInput[];
  /** names of the parts, when the function gives more than one */
  readonly fields?: readonly string[];
};

function wrong(input: ScienceInput, given: unknown, expected: string): Error {
  const error = quantityError(input.name, given, input.min, input.max);
  error.message = `${input.name} is ${String(given)}; expected ${expected}`;
  return error;
}

function toNumber(input: ScienceInput, given: unknown): number {
  const read = typeof given === "string" && given.trim() !== "" ? Number(given) : given;
  if (typeof read !== "number" || Number.isNaN(read)) {
    throw wrong(input, given, input.unit === "" ? "a number" : `a number in ${input.unit}`);
  }
  return read;
}

function read(input: ScienceInput, given: unknown): InputValue {
  if (input.kind === "number") return toNumber(input, given);
  if (input.kind === "numbers") {
    const items = typeof given === "string" ? given.split(",") : given;
    if (!Array.isArray(items)) throw wrong(input, given, "numbers parted by commas");
    return items.map((item) => toNumber(input, item));
  }
  if (input.kind === "choice") {
    if (input.options?.includes(String(given))) return String(given);
    throw wrong(input, given, `one of ${input.options?.join(", ")}`);
  }
  if (given === true || given === "yes" || given === "true") return true;
  if (given === false || given === "no" || given === "false") return false;
  throw wrong(input, given, "yes or no");
}

function readAll(name: string, inputs: readonly ScienceInput[], given: Arguments): Arguments {
  for (const key of Object.keys(given)) {
    if (inputs.some((input) => input.name === key)) continue;
    const known = inputs.map((input) => input.name).join(", ");
    throw new RangeError(`${name} takes no ${key}; it takes ${known}`);
  }
  const values: Record<string, InputValue> = {};
  for (const input of inputs) {
    const value = given[input.name];
    if (value !== undefined) values[input.name] = read(input, value);
    else if (!input.optional)
      throw wrong(input, "missing", input.kind === "number" ? "a number" : input.kind);
  }
  return values;
}

type Plain = number | string | boolean | number[];

/** Lists of words become one text, lists of notes one line each, rows of a matrix one after the other. */
function plain(value: unknown): Plain {
  if (value === null) return "none";
  if (typeof value === "number" || typeof value === "string" || typeof value === "boolean") return value;
  if (Array.isArray(value)) {
    if (value.length > 0 && value.every((each) => typeof each === "number")) return [...value] as number[];
    if (value.length > 0 && value.every((each) => Array.isArray(each))) return value.flat() as number[];
    if (value.length === 0) return "none";
    return value.map((each) => (typeof each === "string" ? each : noteLine(each))).join("; ");
  }
  throw new TypeError("result cannot be shown");
}

function noteLine(note: { level: string; quantity: string; what: string; likelyCause: string }): string {
  return `${note.level}: ${note.quantity} ${note.what} (likely: ${note.likelyCause})`;
}

/**
 * Describe the public functions of one field for the catalogue.
 *
 * @param field folder of the field
 * @returns a function that describes one of them
 * @source our assumption
 */
export function describeField(field: string) {
  return (
    name: string,
    run: (values: Arguments) => unknown,
    { what, source, inputs, fields }: Description,
  ): ScienceFunction => ({
    name,
    field,
    what,
    source,
    inputs,
    result: {
      name,
      unit: fields ? "" : unitOfName(name),
      fields: (fields ?? [name]).map((each) => ({ name: each, unit: unitOfName(each) })),
    },
    evaluate: (given) => {
      const result = run(readAll(name, inputs, given));
      if (!fields) return { [name]: plain(result) };
      const parts = result as Readonly<Record<string, unknown>>;
      return Object.fromEntries(fields.map((each) => [each, plain(parts[each])])) satisfies ScienceOutput;
    },
  });
}

/** A function that takes one object of named values: the values as they are. */
export const byName =
  <Input>(run: (input: Input) => unknown) =>
  (values: Arguments): unknown =>
    run(values as Input);

/** A function that takes a single value. */
export const single =
  <Input>(run: (input: Input) => unknown) =>
  (values: Arguments): unknown =>
    run(Object.values(values)[0] as Input);
