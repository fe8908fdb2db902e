/** A value of a check row: numbers, texts (names, dates, clock times), yes or no, and lists of them. */
export type CheckValue =
  | number
  | string
  | boolean
  | null
  | readonly CheckValue[]
  | { readonly [key: string]: CheckValue };

export type Tolerance = number | null | { readonly [key: string]: number | null };

/** One row of a check table, as `README.md` describes it. */
export type CheckRow = {
  readonly id: string;
  readonly what: string;
  readonly inputs: { readonly [key: string]: CheckValue };
  readonly expect: { readonly [key: string]: CheckValue };
  readonly tolerance_abs?: Tolerance;
  readonly tolerance_rel?: Tolerance;
  readonly tolerance_unit?: string;
  readonly bounds?: { readonly [key: string]: readonly (number | null)[] };
  readonly compare?: { readonly [key: string]: string };
  readonly slip?: boolean;
  readonly slip_keys?: readonly string[];
  readonly expect_corrected?: { readonly [key: string]: CheckValue };
  readonly source: string;
  readonly seen?: string;
};

/** What ties a table to the code: from a row, our value for every key it expects (or bounds); undefined where none. */
export type Binding = {
  readonly field: string;
  readonly compute: (row: CheckRow) => Readonly<Record<string, unknown>>;
  /** Why a row can't be computed yet: it is listed as waiting, never as passed. */
  readonly waits?: (row: CheckRow) => string | undefined;
};
