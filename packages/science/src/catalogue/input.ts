import type { Assumption } from "../assumption.ts";
import { unitOfName } from "../errors/index.ts";
import { inputWords } from "./input-words.ts";
import type { ScienceInput } from "./types.ts";

const wordsFor = (name: string): string => {
  const words = inputWords[name];
  if (words === undefined) throw new Error(`no words for input ${name}; add it to input-words.ts`);
  return words;
};

const part = (
  name: string,
  rest: Omit<ScienceInput, "name" | "what" | "unit" | "optional">,
): ScienceInput => ({
  name,
  what: wordsFor(name),
  unit: unitOfName(name),
  optional: false,
  ...rest,
});

/** A number with the range that the function enforces and a value that is usual. */
export const number = (name: string, min: number, max: number, usual: number): ScienceInput =>
  part(name, { kind: "number", min, max, usual });

/** A number of which any value is looked at. */
export const anyNumber = (name: string, usual: number): ScienceInput =>
  number(name, Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY, usual);

/** A list of numbers, each inside the range. */
export const numbers = (name: string, min: number, max: number, usual: readonly number[]): ScienceInput =>
  part(name, { kind: "numbers", min, max, usual });

export const choice = (name: string, options: readonly string[], usual: string): ScienceInput =>
  part(name, { kind: "choice", options, usual, min: -Infinity, max: Infinity });

export const yesOrNo = (name: string, usual: boolean): ScienceInput =>
  part(name, { kind: "yes or no", usual, min: -Infinity, max: Infinity });

export const optional = (input: ScienceInput): ScienceInput => ({ ...input, optional: true });

/** Optional inputs that stand for assumptions of a field: range, usual value and words are the assumption's own. */
export const assumed = (list: readonly Assumption[], ...keys: readonly string[]): readonly ScienceInput[] =>
  keys.map((key) => {
    const assumption = list.find((each) => each.key === key);
    if (!assumption) throw new Error(`no assumption ${key}`);
    const { min, max, value, what, unit } = assumption;
    return { name: key, kind: "number", what, unit, min, max, usual: value, optional: true };
  });
