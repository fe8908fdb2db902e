import { quantityError, within } from "../errors/index.ts";
import { canonicalSymbol, type QuantityKind, type UnitRow, unitTable } from "./unit-table.ts";

/**
 * Find a unit by what a person wrote.
 *
 * Kind is asked for because "in" is a length of a pot and a depth of rain.
 *
 * @param kind what is measured
 * @param written symbol or one of its other spellings
 * @returns the row of the table, or undefined
 * @source NISTSP811
 */
export function findUnit(kind: QuantityKind, written: string): UnitRow | undefined {
  const wanted = written.trim();
  const rows = unitTable.filter((row) => row.kind === kind);
  return (
    rows.find((row) => row.symbol === wanted || row.also.includes(wanted)) ??
    rows.find((row) => row.symbol.toLowerCase() === wanted.toLowerCase())
  );
}

function demandUnit(kind: QuantityKind, written: string): UnitRow {
  const row = findUnit(kind, written);
  if (row) return row;
  const known = unitTable.filter((each) => each.kind === kind).map((each) => each.symbol);
  const error = quantityError("unit", written, 0, 0);
  error.message = `unit is ${written}; expected one of ${known.join(", ")}`;
  throw error;
}

/**
 * From the grower's unit to the one the engine keeps.
 *
 * canonical = factor × (value + offset)
 *
 * @param input value, kind and unit as written
 * @returns value in the canonical unit of the kind
 * @throws QuantityError for an unknown unit or a value that is not finite
 * @source NISTSP811
 * @example toCanonical({ value: 4, kind: "volume", unit: "US fl oz" }) // 118.294
 * @example toCanonical({ value: 70, kind: "temperature", unit: "°F" }) // 21.111
 */
export function toCanonical(input: {
  readonly value: number;
  readonly kind: QuantityKind;
  readonly unit: string;
}): number {
  within("value", input.value, -1e9, 1e9);
  const row = demandUnit(input.kind, input.unit);
  return row.factor * (input.value + row.offset);
}

/**
 * From the unit the engine keeps to the grower's.
 *
 * value = canonical / factor − offset
 *
 * @param input value in the canonical unit, kind, and the unit wanted
 * @returns value in the unit wanted
 * @throws QuantityError for an unknown unit or a value that is not finite
 * @source NISTSP811
 * @example fromCanonical({ value: 118.294, kind: "volume", unit: "US fl oz" }) // 4.000
 */
export function fromCanonical(input: {
  readonly value: number;
  readonly kind: QuantityKind;
  readonly unit: string;
}): number {
  within("value", input.value, -1e9, 1e9);
  const row = demandUnit(input.kind, input.unit);
  return input.value / row.factor - row.offset;
}

/**
 * The symbol of the unit in which the engine keeps a kind of quantity.
 *
 * @param kind what is measured
 * @returns symbol
 * @source our assumption
 * @example canonicalUnit("mass") // "g"
 */
export function canonicalUnit(kind: QuantityKind): string {
  return canonicalSymbol[kind];
}
