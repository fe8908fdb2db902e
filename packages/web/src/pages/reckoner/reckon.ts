import type { Origin } from "@sillwood/bench/working";
import type { InputValue, ScienceFunction, ScienceInput } from "@sillwood/science/catalogue";

/** One value that goes into a sum. What nobody gave is the usual one, shown as assumed. */
export interface Given {
  readonly value: InputValue;
  readonly origin: Origin;
  readonly from: string;
}
export type AllGiven = Readonly<Record<string, Given | undefined>>;

export type Reckoned =
  | {
      readonly fields: readonly {
        readonly name: string;
        readonly unit: string;
        readonly value: number | string | boolean | readonly number[];
      }[];
      readonly origin: Origin;
    }
  | { readonly problem: string; readonly field?: string };

/** Runs a function of the catalogue. Every refusal names field, value, limit and unit; nothing throws to the screen. */
export function reckon(sum: ScienceFunction, given: AllGiven): Reckoned {
  const values: Record<string, InputValue> = {};
  const origins: Origin[] = [];
  for (const input of sum.inputs) {
    const one = given[input.name];
    if (one) {
      values[input.name] = one.value;
      origins.push(one.origin);
    } else if (!input.optional) {
      values[input.name] = input.usual;
      origins.push("assumed");
    }
  }
  try {
    const output = sum.evaluate(values);
    const fields = sum.result.fields.map(({ name, unit }) => ({ name, unit, value: output[name] ?? "" }));
    if (fields.some(({ value }) => typeof value === "number" && !Number.isFinite(value)))
      return { problem: "no finite number comes out" };
    return {
      fields,
      origin: origins.includes("assumed") ? "assumed" : origins.includes("learned") ? "learned" : "measured",
    };
  } catch (error) {
    const { message, name } = error as Error;
    return sum.inputs.some((input) => input.name === name)
      ? { problem: message, field: name }
      : { problem: message };
  }
}

/** Functions whose words hold everything that was typed; `called` is their name in the person's language. */
export function findSums(
  all: readonly ScienceFunction[],
  wanted: string,
  called: (name: string) => string = (name) => name,
): readonly ScienceFunction[] {
  const parts = wanted.toLocaleLowerCase().split(/\s+/).filter(Boolean);
  return all.filter(({ name, what, field, inputs }) => {
    const text =
      `${name} ${called(name)} ${what} ${field} ${inputs.map((input) => input.what).join(" ")}`.toLocaleLowerCase();
    return parts.every((part) => text.includes(part));
  });
}

/** A list as people type it: numbers parted by commas, semicolons or spaces; undefined when one is none. */
export function readNumbers(text: string): readonly number[] | undefined {
  const parts = text.split(/[;\s]+|,\s+|,(?=\d+[.,]|\d+,)/).filter((part) => part !== "");
  const numbers = parts.map((part) => Number(part.replace("−", "-")));
  return numbers.length > 0 && numbers.every(Number.isFinite) ? numbers : undefined;
}

/** The number an input of a list would show. */
export const usualSaid = ({ usual }: ScienceInput): string =>
  Array.isArray(usual) ? usual.join("; ") : String(usual);
