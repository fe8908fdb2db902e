import type { FieldShape, KindShape } from "../fields/form-shape.ts";

/** A field of an entry that a result could fill. */
export interface Fit {
  readonly kind: string;
  readonly subject: string;
  readonly field: FieldShape;
  /** Which part of the result, and its value in the field's unit. */
  readonly part: string;
  readonly value: number;
}

interface Part {
  readonly name: string;
  readonly unit: string;
  readonly value: number | string | boolean | readonly number[];
}

/** Digits that a result keeps on its way into an entry: more than any input is worth. */
const DIGITS_n = 4;

/** Science writes mol m⁻² d⁻¹ where the book says mol/m² a day; a gram of water poured is a millilitre. */
const BOOK_UNITS: Readonly<Record<string, readonly string[]>> = {
  "mol m⁻² d⁻¹": ["mol/m² a day"],
  "m s⁻¹": ["m/s"],
  g: ["g", "mL"],
};

/** Where a result belongs: fields of entries that are counted in its unit and whose range holds it. */
export function fitsOf(parts: readonly Part[], kinds: readonly KindShape[]): readonly Fit[] {
  return parts.flatMap(({ name, unit, value }) => {
    if (typeof value !== "number" || unit === "") return [];
    const rounded = Number(value.toPrecision(DIGITS_n));
    const units = BOOK_UNITS[unit] ?? [unit];
    return kinds.flatMap(({ kind, subject, fields }) =>
      fields
        .filter(
          (field) =>
            field.type === "number" &&
            units.includes(field.unit) &&
            rounded >= field.min &&
            rounded <= field.max,
        )
        .map((field): Fit => ({ kind, subject, field, part: name, value: rounded })),
    );
  });
}

/** The entry's own page with the value in its field. */
export const pathOf = ({ kind, subject, field, value }: Fit, plant: string | undefined): string =>
  `/write/${kind}${plant && subject === "plant" ? `/${plant}` : ""}?${field.key}=${value}`;

/** What an address asks to be filled in: numbers for fields of this name. */
export function filledFrom(
  search: URLSearchParams,
  fields: readonly FieldShape[],
): Readonly<Record<string, number>> {
  return Object.fromEntries(
    fields.flatMap(({ key, type, min, max }) => {
      const value = Number(search.get(key) ?? Number.NaN);
      return type === "number" && value >= min && value <= max ? [[key, value]] : [];
    }),
  );
}
