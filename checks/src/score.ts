import { allowedFor, type Comparison, compare } from "./compare.ts";
import type { Binding, CheckRow, CheckValue } from "./row.ts";

export type KeyScore = Comparison & { readonly key: string };

export type RowScore = {
  readonly id: string;
  readonly what: string;
  readonly source: string;
  readonly fromMemory: boolean;
  /** false when the binding computes nothing for one of its keys, or fails on it */
  readonly bound: boolean;
  readonly ok: boolean;
  readonly keys: readonly KeyScore[];
};

export type TableScore = {
  readonly field: string;
  readonly rows: readonly RowScore[];
  readonly rows_n: number;
  readonly passed_n: number;
  readonly unbound_n: number;
  /** mean and greatest error in tolerances, over numeric keys of rows without a slip there */
  readonly meanError: number;
  readonly maxError: number;
};

/** A printed slip: we must not reproduce it, and must give the corrected value where one is known. */
function scoreSlip(row: CheckRow, key: string, ours: unknown): KeyScore {
  const printed = row.expect[key] as CheckValue;
  const corrected = row.expect_corrected?.[key];
  const allowed = allowedFor(row, key);
  if (typeof corrected === "number" && typeof printed === "number" && corrected !== printed) {
    // Half way between print and correction there is no telling which one we gave.
    const half = Math.abs(corrected - printed) / 2;
    const tight = { ...allowed, abs: Math.min(allowed.abs ?? half, half) };
    const { ok, said } = compare(ours, corrected, tight);
    return { key, ok, said: `slip: print has ${printed}; ${said}` };
  }
  if (corrected !== undefined) {
    const { ok, said } = compare(ours, corrected, { ...allowed, abs: allowed.abs ?? 0 });
    return { key, ok, said: `slip: ${said}` };
  }
  const same = compare(ours, printed, { ...allowed, abs: allowed.abs ?? 0 });
  return { key, ok: !same.ok, said: `slip: must differ; ${same.said}` };
}

/** `computed < expect` and the like. */
function scoreRelation(row: CheckRow, key: string, relation: string, ours: unknown): KeyScore {
  const printed = row.expect[key];
  const said = `${relation}: ${String(ours)}, expect ${String(printed)}`;
  if (typeof ours !== "number" || typeof printed !== "number") return { key, ok: false, said };
  return { key, ok: relation.includes("<") ? ours < printed : ours > printed, said };
}

/** Bounds of a habit of the trade: a number inside, a list all inside, or a range that covers; a bare true is a judgement. */
function scoreBounds(key: string, bounds: readonly (number | null)[], ours: unknown): KeyScore {
  const [low, high] = [bounds[0] ?? -Infinity, bounds[1] ?? Infinity];
  const said = `${JSON.stringify(ours)}, bounds ${JSON.stringify(bounds)}`;
  if (typeof ours === "boolean") return { key, ok: ours, said };
  const list = (Array.isArray(ours) ? ours : [ours]) as readonly unknown[];
  if (list.length === 0 || !list.every((each) => typeof each === "number")) return { key, ok: false, said };
  if (key.endsWith("must_cover")) {
    return { key, ok: list.length === 2 && (list[0] as number) <= low && (list[1] as number) >= high, said };
  }
  return { key, ok: list.every((each) => (each as number) >= low && (each as number) <= high), said };
}

function scoreKeys(row: CheckRow, ours: Readonly<Record<string, unknown>>): readonly KeyScore[] {
  if (row.bounds) {
    return Object.entries(row.bounds).map(([key, bounds]) => scoreBounds(key, bounds, ours[key]));
  }
  const slips = new Set(row.slip === true ? row.slip_keys : []);
  const expected = Object.entries(row.expect).map(([key, printed]): KeyScore => {
    if (slips.has(key)) return scoreSlip(row, key, ours[key]);
    const relation = row.compare?.[key];
    if (relation !== undefined) return scoreRelation(row, key, relation, ours[key]);
    return { key, ...compare(ours[key], printed, allowedFor(row, key)) };
  });
  // A correction may be of another kind than the print (a flag instead of a number).
  const others = Object.entries(row.expect_corrected ?? {}).filter(([key]) => !(key in row.expect));
  const corrections = others.map(([key, value]): KeyScore => {
    const allowed =
      typeof value === "number" ? { abs: undefined, rel: 1e-3, unit: "" } : allowedFor(row, key);
    return { key, ...compare(ours[key], value, allowed) };
  });
  return [...expected, ...corrections];
}

function scoreRow(row: CheckRow, binding: Binding): RowScore {
  const fromMemory = row.seen === "from memory";
  const head = { id: row.id, what: row.what, source: row.source, fromMemory };
  let ours: Readonly<Record<string, unknown>>;
  try {
    ours = binding.compute(row);
  } catch (error) {
    const said = error instanceof Error ? error.message : String(error);
    return { ...head, bound: false, ok: false, keys: [{ key: "", ok: false, said }] };
  }
  const wanted = row.bounds ? Object.keys(row.bounds) : Object.keys(row.expect);
  const missing = wanted.filter((key) => ours[key] === undefined);
  const keys = scoreKeys(row, ours);
  const bound = wanted.length > 0 ? missing.length === 0 : Object.keys(ours).length > 0;
  return { ...head, bound, ok: bound && keys.every((key) => key.ok), keys };
}

/**
 * Score a table of check rows against what we compute.
 *
 * @param rows the rows of one field, from the delivered tables or from anywhere in the same form
 * @param binding what ties their keys to our functions
 * @returns one score a row, and the field's tally
 */
export function scoreTable(rows: readonly CheckRow[], binding: Binding): TableScore {
  const scores = rows.map((row) => scoreRow(row, binding));
  const errors = scores.flatMap((row) =>
    row.keys.flatMap((key) => (key.error === undefined ? [] : [key.error])),
  );
  return {
    field: binding.field,
    rows: scores,
    rows_n: scores.length,
    passed_n: scores.filter((row) => row.ok).length,
    unbound_n: scores.filter((row) => !row.bound).length,
    meanError: errors.length > 0 ? errors.reduce((sum, each) => sum + each, 0) / errors.length : 0,
    maxError: errors.reduce((worst, each) => Math.max(worst, each), 0),
  };
}
