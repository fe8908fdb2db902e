/**
 * A quantity outside the range in which a formula means anything.
 *
 * Its `name` is the argument's name with unit suffix (`air_C`), so that a form can find the field; tell the class by
 * `instanceof`.
 */
export class QuantityError extends Error {
  override readonly name: string;
  readonly value: unknown;
  readonly unit: string;
  readonly min: number;
  readonly max: number;

  constructor(name: string, value: unknown, unit: string, min: number, max: number, message: string) {
    super(message);
    this.name = name;
    this.value = value;
    this.unit = unit;
    this.min = min;
    this.max = max;
  }
}
