import { within } from "../errors/index.ts";
import type { InputValue } from "./types.ts";

/**
 * A belief from flat lists: means, and covariances row by row.
 *
 * @source our assumption
 */
export function beliefOf(values: Readonly<Record<string, InputValue>>): {
  readonly mean: readonly number[];
  readonly covariance: readonly (readonly number[])[];
} {
  const mean = values["mean"] as readonly number[];
  const flat = values["covariance"] as readonly number[];
  within("covariances_n", flat.length, mean.length ** 2, mean.length ** 2);
  return { mean, covariance: mean.map((_, row) => flat.slice(row * mean.length, (row + 1) * mean.length)) };
}
