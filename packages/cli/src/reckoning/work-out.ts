import type { ScienceFunction, ScienceOutput } from "@sillwood/science/catalogue";
import { QuantityError } from "@sillwood/science/errors";
import { DataError, dataError } from "../errors.ts";
import type { Inputs } from "./inputs.ts";

/**
 * One sum.
 *
 * @throws DataError for a value out of range, and for a sum that has no finite answer
 */
export function workOut(chosen: ScienceFunction, values: Inputs["values"]): ScienceOutput {
  const result = evaluated(chosen, values);
  const bad = Object.entries(result).find(([, value]) => [value].flat().some(isNoAnswer));
  if (bad) throw dataError(bad[0], `${bad[0]} has no finite value for these inputs; expected others`);
  return result;
}

const isNoAnswer = (value: unknown): boolean => typeof value === "number" && !Number.isFinite(value);

function evaluated(chosen: ScienceFunction, values: Inputs["values"]): ScienceOutput {
  try {
    return chosen.evaluate(values);
  } catch (error) {
    if (!(error instanceof QuantityError)) throw dataError("", (error as Error).message);
    const { name, message, min, max, unit, value } = error;
    throw new DataError([
      {
        path: name,
        message,
        ...(Number.isFinite(min) || Number.isFinite(max) ? { limit: limitSaid(min, max) } : {}),
        ...(unit ? { unit } : {}),
        ...(typeof value === "number" && Number.isFinite(value) ? { value } : {}),
        ...fahrenheit(error),
      },
    ]);
  }
}

const limitSaid = (min: number, max: number): string =>
  Number.isFinite(min) ? (Number.isFinite(max) ? `${min} to ${max}` : `at least ${min}`) : `at most ${max}`;

/** A temperature that would fit if it were meant in °F is said so. */
function fahrenheit({ unit, value, min, max }: QuantityError): { slip?: string } {
  const celsius = typeof value === "number" ? Math.round(((value - 32) * 5) / 9) : Number.NaN;
  return unit === "°C" && celsius >= min && celsius <= max
    ? { slip: `Meant °F? That is ${celsius} °C.` }
    : {};
}
