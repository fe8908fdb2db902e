/**
 * The envelope of a book entry: one line of the append-only record of everything seen and done.
 * What an entry says is in `data`, whose shape belongs to its `kind`.
 */

declare const brand: unique symbol;
type Brand<Name extends string> = string & { readonly [brand]: Name };

/** UUIDv7 of an entry, lower case with hyphens. */
export type EntryId = Brand<"EntryId">;
/** UUIDv7 of a plant. */
export type PlantId = Brand<"PlantId">;
/** UUIDv7 of a device that writes into the book. */
export type DeviceId = Brand<"DeviceId">;
/** UUIDv7 of a person; name and address live outside the book on a person card. */
export type PersonId = string;
/** Lower-case hexadecimal SHA-256 of a file (photo, part of a series) or of an entry's RFC 8785 form. */
export type Sha256 = string;
/** Hybrid logical clock as text that sorts: see clock.ts. */
export type Clock = string;

export type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json };

export interface Entry<Data = Json> {
  readonly id: EntryId;
  readonly device: DeviceId;
  /** `craft.verb`, or one of the house's own (`plant.brought`, `bench.laid`, `book.corrected` ...). */
  readonly kind: string;
  /** Version of the kind's shape; raised whenever an older app would fold the new shape wrongly. */
  readonly v: number;
  /** When it happened, epoch milliseconds. */
  readonly at_ms: number;
  /** IANA zone in which the writer stood. */
  readonly zone: string;
  /** Whether `at_ms` was read off the device's clock or typed by a person. Typed times are never shifted. */
  readonly atFrom: "clock" | "typed";
  readonly clock: Clock;
  readonly by: PersonId;
  /** Ids of the plants, batches, benches, spots or supplies it is about. */
  readonly on: readonly string[];
  readonly data: Data;
  readonly files?: readonly Sha256[];
  /** First entries that this one corrects. Only on `book.corrected`. */
  readonly corrects?: readonly EntryId[];
}

/** What a correction says instead of the entries it names. The last by (clock, id) is in force. */
export type Correction =
  | { readonly withdrawn: true }
  | { readonly restored: true }
  | { readonly data: Json; readonly at_ms?: number; readonly on?: readonly string[] };

/** One problem with what somebody typed or sent. All problems of an entry are reported at once. */
export interface Problem {
  /** Dotted path into the entry, as `data.volume_mL`. */
  readonly path: string;
  /** A sentence: what was entered, the limit with its unit, the likely slip. */
  readonly message: string;
  readonly value?: Json;
  readonly limit?: string;
  readonly unit?: string;
}
