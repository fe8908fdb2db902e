import type { UnitSystem } from "@sillwood/bench/words";
import type { InputValue, ScienceFunction, ScienceInput } from "@sillwood/science/catalogue";
import { DataError, dataError, type Trouble, UsageError } from "../errors.ts";
import { nearest } from "../text/nearest.ts";
import { readNumber } from "../typed/read-number.ts";
import { inputSaid, rangeOf } from "./say-input.ts";

export interface Inputs {
  readonly values: Readonly<Record<string, InputValue>>;
  /** Names that were left out and took their usual value. */
  readonly usual: readonly string[];
}

/** The inputs of one sum from `key=value` words. */
export function inputsFromWords(
  chosen: ScienceFunction,
  words: readonly string[],
  units: UnitSystem,
): Inputs {
  return inputsOf(chosen, valuesFromWords(chosen, words), units);
}

/** `key=value` words by their key. */
export function valuesFromWords(
  chosen: ScienceFunction,
  words: readonly string[],
): ReadonlyMap<string, string> {
  const typed = new Map<string, string>();
  for (const word of words) {
    const at = word.indexOf("=");
    if (at < 1)
      throw new UsageError(
        `${JSON.stringify(word.slice(0, 60))} is no key=value. Inputs: ${chosen.inputs.map(({ name }) => name).join(", ")}.`,
      );
    const key = word.slice(0, at);
    if (typed.has(key)) throw dataError(key, `${key} is given twice; expected once`, word.slice(at + 1));
    typed.set(key, word.slice(at + 1));
  }
  return typed;
}

/**
 * Typed values as the formula takes them. Names may be given without their unit where that is clear, numbers with a unit.
 *
 * @throws DataError with every problem: field, value, limit, unit
 */
export function inputsOf(
  chosen: ScienceFunction,
  typed: ReadonlyMap<string, string>,
  units: UnitSystem,
): Inputs {
  const values: Record<string, InputValue> = {};
  const troubles: Trouble[] = [];
  for (const [key, text] of typed) {
    const exact = chosen.inputs.find(({ name }) => name === key);
    const input = exact ?? only(chosen.inputs.filter(({ name }) => name.split("_")[0] === key));
    if (!input) troubles.push(unknownInput(chosen, key));
    else if (text.trim() === "")
      troubles.push({
        path: input.name,
        message: `${input.name} is empty; expected ${inputSaid(input)}`,
        ...limitOf(input),
      });
    else {
      const value = readInput(input, text.trim(), exact && input.name.includes("_") ? "own" : units);
      if ("trouble" in value) troubles.push(value.trouble);
      else values[input.name] = value.value;
    }
  }
  const missing = chosen.inputs.filter(({ name, optional }) => !optional && values[name] === undefined);
  // A sum of one input has nothing to guess: what is missing is asked for. Further inputs take what is usual.
  if (
    troubles.length === 0 &&
    missing.length > 0 &&
    missing.length === chosen.inputs.filter(({ optional }) => !optional).length
  )
    troubles.push(
      ...missing.map((input) => ({
        path: input.name,
        message: `${input.name} is missing; expected ${inputSaid(input)}`,
        slip: `Usual: ${input.name}=${String(input.usual)}.`,
        ...limitOf(input),
      })),
    );
  if (troubles.length > 0) throw new DataError(troubles);
  for (const input of missing) values[input.name] = input.usual;
  return { values, usual: missing.map(({ name }) => name) };
}

const only = <Value>(values: readonly Value[]): Value | undefined =>
  values.length === 1 ? values[0] : undefined;

function readInput(
  input: ScienceInput,
  text: string,
  units: UnitSystem | "own",
): { readonly value: InputValue } | { readonly trouble: Trouble } {
  // Lists, choices and yes or no are read by the formula itself, which names them as well.
  if (input.kind !== "number") return { value: text };
  const read = readNumber(text, input.name.split("_").slice(1).join("_"), units);
  if ("value" in read) return { value: read.value };
  return {
    trouble: {
      path: input.name,
      message: `${input.name} ${JSON.stringify(text.slice(0, 60))} ${read.wrong}${read.wrong.includes("expected") ? "" : `; expected ${inputSaid(input)}`}`,
      value: text.slice(0, 200),
      ...limitOf(input),
    },
  };
}

function unknownInput(chosen: ScienceFunction, key: string): Trouble {
  const names = chosen.inputs.map(({ name }) => name);
  const near = nearest(key, names);
  return {
    path: key.slice(0, 60),
    message: `${chosen.name} has no input ${JSON.stringify(key.slice(0, 60))}; it has ${names.join(", ") || "none"}`,
    limit: names.join(", "),
    ...(near ? { slip: `Meant ${near}?` } : {}),
  };
}

const limitOf = (input: ScienceInput): Pick<Trouble, "limit" | "unit"> => ({
  limit: rangeOf(input) || input.kind,
  ...(input.unit ? { unit: input.unit } : {}),
});
