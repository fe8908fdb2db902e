import { within } from "./errors/index.ts";

/** A number that is used unless someone gives a better one; shown on screen as what its `kind` says. */
export type Assumption = {
  /** name of the parameter, with its unit suffix */
  readonly key: string;
  readonly what: string;
  readonly value: number;
  readonly unit: string;
  /** between which values the grower may set it */
  readonly min: number;
  readonly max: number;
  readonly source: string;
  readonly kind: "published" | "assumed" | "common practice";
};

/**
 * Pick values by key out of a field's list of assumptions, as the defaults of its functions.
 *
 * @param list the assumptions of a field
 * @param given values that someone set; each must lie in the range its assumption allows
 * @returns one number per key
 * @throws QuantityError when a given value lies outside the range of its assumption
 * @source our assumption
 */
export function valuesOf<Key extends string>(
  list: readonly (Assumption & { readonly key: Key })[],
  given: { readonly [K in Key]?: number | undefined } = {},
): Readonly<Record<Key, number>> {
  const values = {} as Record<Key, number>;
  for (const { key, value, min, max } of list) {
    const set = given[key];
    if (set !== undefined) within(key, set, min, max);
    values[key] = set ?? value;
  }
  return values;
}
