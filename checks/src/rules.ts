import type { Binding, CheckRow } from "./row.ts";

/** How one expected quantity is computed from others of the row: the row's inputs, or what other rules give. */
export type Rule = {
  readonly gives: string | RegExp;
  readonly needs: readonly string[];
  readonly compute: (values: Readonly<Record<string, unknown>>) => unknown;
};

/** A rule on numbers. */
export const rule = <const Name extends string>(
  gives: string | RegExp,
  needs: readonly Name[],
  compute: (values: { readonly [Each in Name]: number }) => unknown,
): Rule => ({ gives, needs, compute: compute as Rule["compute"] });

/** A rule on other values, whose types the caller names. */
export const ruleOn = <Values extends object>(
  gives: string | RegExp,
  needs: readonly (keyof Values & string)[],
  compute: (values: Values) => unknown,
): Rule => ({ gives, needs, compute: compute as unknown as Rule["compute"] });

/** Another spelling of a key, or a key that follows from another by conversion. */
export type Alias = {
  readonly of: string;
  readonly from: string | RegExp;
  readonly convert?: (value: never) => unknown;
};

export const alias = (of: string, from: string | RegExp, convert?: (value: number) => unknown): Alias =>
  convert ? { of, from, convert: convert as Alias["convert"] & {} } : { of, from };

function withAliases(row: CheckRow, aliases: readonly Alias[]): Map<string, unknown> {
  const given = new Map<string, unknown>(Object.entries(row.inputs));
  given.set("what", row.what);
  // How long a printed series is, never what is in it.
  const lengths = Object.values(row.expect).map((value) => (Array.isArray(value) ? value.length : 0));
  given.set("series_n", Math.max(0, ...lengths));
  for (const { of, from, convert } of aliases) {
    if (given.has(of)) continue;
    const key = [...given.keys()].find((each) =>
      typeof from === "string" ? each === from : from.test(each),
    );
    if (key === undefined) continue;
    const value = given.get(key);
    given.set(of, convert ? convert(value as never) : value);
  }
  return given;
}

const gives = (each: Rule, key: string): boolean =>
  typeof each.gives === "string" ? each.gives === key : each.gives.test(key);

/**
 * A binding from rules: each expected key is computed by the first rule whose needs can be met, directly from the row's
 * inputs or through other rules. Rules with more needs come first, so that a row which says more is computed by the fuller
 * formula. Rows are known by the quantities they hold, never by their id: a new row of a known shape needs nothing.
 */
export function bindByRules(field: string, rules: readonly Rule[], aliases: readonly Alias[] = []): Binding {
  const fullest = rules.toSorted((one, other) => other.needs.length - one.needs.length);
  const compute = (row: CheckRow): Record<string, unknown> => {
    const given = withAliases(row, aliases);
    const found = new Map<string, unknown>();
    const underway = new Set<string>();
    const lookUp = (key: string): unknown => (given.has(key) ? given.get(key) : derive(key));
    const derive = (key: string): unknown => {
      // What follows from an input by mere conversion is computed by the alias.
      if (given.has(key) && !(key in row.inputs)) return given.get(key);
      if (found.has(key)) return found.get(key);
      if (underway.has(key)) return undefined;
      underway.add(key);
      let result: unknown;
      for (const each of fullest) {
        if (result !== undefined) break;
        if (!gives(each, key)) continue;
        const values = each.needs.map((need) => [need, lookUp(need)] as const);
        if (values.every(([, value]) => value !== undefined))
          result = each.compute(Object.fromEntries(values));
      }
      underway.delete(key);
      found.set(key, result);
      return result;
    };
    const wanted = [
      ...Object.keys(row.expect),
      ...Object.keys(row.expect_corrected ?? {}),
      ...Object.keys(row.bounds ?? {}),
    ];
    return Object.fromEntries(wanted.map((key) => [key, derive(key)]));
  };
  return { field, compute };
}
