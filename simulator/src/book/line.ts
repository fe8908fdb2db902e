/** Anything that JSON can hold. */
export type Json =
  | null
  | boolean
  | number
  | string
  | readonly Json[]
  | { readonly [key: string]: Json | undefined };

/** One line of the book, in the book's own field names. */
export interface Line {
  readonly id: string;
  readonly device: string;
  readonly kind: string;
  readonly v: 1;
  readonly at_ms: number;
  readonly zone: string;
  readonly atFrom: "clock" | "typed";
  readonly clock: string;
  readonly by: string;
  readonly on: readonly string[];
  readonly data: Json;
  readonly files?: readonly string[];
  readonly corrects?: readonly string[];
}

/**
 * A line as text: keys in the order of their code units, no white space, as the book hashes it. Undefined members
 * are left out.
 *
 * @source RFC 8785, section 3.2
 */
export function lineText(line: Line): string {
  return ordered(line as unknown as Json);
}

function ordered(value: Json): string {
  if (value === null || typeof value !== "object") {
    if (typeof value === "number" && !Number.isFinite(value))
      throw new RangeError(`${value} is no number of JSON`);
    return JSON.stringify(value);
  }
  if (Array.isArray(value)) return `[${value.map((item) => ordered(item as Json)).join(",")}]`;
  const members = Object.entries(value as Readonly<Record<string, Json | undefined>>)
    .filter((member): member is [string, Json] => member[1] !== undefined)
    .sort(([a], [b]) => (a < b ? -1 : 1));
  return `{${members.map(([key, item]) => `${JSON.stringify(key)}:${ordered(item)}`).join(",")}}`;
}
