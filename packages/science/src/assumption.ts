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
  const usual = usualOf(list) as Usual<Key>;
  let values: Record<Key, number> | undefined;
  for (const name in given) {
    const assumption = usual.byKey.get(name as Key);
    if (!assumption) continue;
    const set = given[assumption.key];
    if (set === undefined) continue;
    within(assumption.key, set, assumption.min, assumption.max);
    values ??= { ...usual.values };
    values[assumption.key] = set;
  }
  return values ?? usual.values;
}

type Usual<Key extends string> = {
  readonly byKey: ReadonlyMap<Key, Assumption & { readonly key: Key }>;
  readonly values: Readonly<Record<Key, number>>;
};

// Most callers set nothing: they all get the same object, since writing one out for every leaf of every hour costs more
// than the leaf.
const known = new WeakMap<readonly Assumption[], Usual<string>>();

function usualOf(list: readonly Assumption[]): Usual<string> {
  let usual = known.get(list);
  if (!usual) {
    usual = {
      byKey: new Map(list.map((assumption) => [assumption.key, assumption])),
      values: Object.freeze(Object.fromEntries(list.map(({ key, value }) => [key, value]))),
    };
    known.set(list, usual);
  }
  return usual;
}
