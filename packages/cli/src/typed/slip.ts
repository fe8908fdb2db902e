import type { Field } from "./fields.ts";

/** What a number outside its range most likely was meant to be, in the unit of the field; undefined when nothing likely fits. */
export function slipOf(
  value: number,
  { min, max, suffix }: Pick<Field, "min" | "max" | "suffix">,
): number | undefined {
  const fits = (one: number) => one >= min && one <= max;
  if (!Number.isFinite(value) || fits(value)) return undefined;
  const candidates: number[] = [];
  if (suffix === "C") candidates.push((value - 32) / 1.8);
  if (suffix === "frac") candidates.push(value / 100);
  if (value > max) candidates.push(value / 10, value / 100, value / 1000);
  if (value < 0) candidates.push(-value);
  if (value > 0 && value < min) candidates.push(value * 10, value * 1000);
  const found = candidates.find(fits);
  return found === undefined ? undefined : Number(found.toPrecision(4));
}

/** The slip as a question; empty when there is none. */
export function slipSaid(value: unknown, field: Field): string {
  const slip = typeof value === "number" ? slipOf(value, field) : undefined;
  return slip === undefined ? "" : `Meant ${slip}${field.unit ? ` ${field.unit}` : ""}?`;
}
