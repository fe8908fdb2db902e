import { QuantityError } from "./quantity-error.ts";
import { unitOfName } from "./unit-of-name.ts";
import { wordsOfName } from "./words-of-name.ts";

const shown = (value: unknown): string =>
  typeof value === "number"
    ? String(Number.isFinite(value) ? Number(value.toPrecision(6)) : value)
    : String(value);

/**
 * The error for a quantity outside its range; the one place where such a message is worded.
 *
 * @param name name of the argument, with unit suffix
 * @param value what was given
 * @param min least accepted value
 * @param max greatest accepted value
 * @returns the error, not thrown
 * @source our assumption
 */
export function quantityError(name: string, value: unknown, min: number, max: number): QuantityError {
  const unit = unitOfName(name);
  const tail = unit === "" ? "" : ` ${unit}`;
  const range =
    max === Number.POSITIVE_INFINITY
      ? `${shown(min)}${tail} or more`
      : `${shown(min)} to ${shown(max)}${tail}`;
  return new QuantityError(
    name,
    value,
    unit,
    min,
    max,
    `${wordsOfName(name)} is ${shown(value)}${tail}; expected ${range}`,
  );
}

/**
 * Demand that a quantity is a finite number inside its range, ends included.
 *
 * @param name name of the argument, with unit suffix
 * @param value what was given
 * @param min least accepted value
 * @param max greatest accepted value
 * @throws QuantityError outside the range, for NaN, for infinities, and for what is no number
 * @source our assumption
 */
export function within(name: string, value: number, min: number, max: number): void {
  // Written so that NaN fails too. The type test is for callers that skip the compiler (forms, JSON).
  if (typeof value === "number" && value >= min && value <= max && value - value === 0) return;
  throw quantityError(name, value, min, max);
}
