/** An entry kind's schema as a form needs it: plain data, so that the worker can send it and the page stays light. */
export interface FieldShape {
  /** Name in the data, with its unit suffix. */
  readonly key: string;
  /** What the schema calls it; the catalogue may know a better word. */
  readonly what: string;
  readonly type: "number" | "count" | "text" | "choice" | "yes" | "day" | "id" | "variant" | "other";
  readonly unit: string;
  readonly min: number;
  readonly max: number;
  readonly optional: boolean;
  readonly options?: readonly string[];
  /** Of a variant: the fields that go with each option. */
  readonly variants?: Readonly<Record<string, readonly FieldShape[]>>;
  /** Of a variant: the key under which the option is kept. */
  readonly by?: string;
}

export interface KindShape {
  readonly kind: string;
  readonly subject: string;
  readonly growerOnly: boolean;
  readonly fields: readonly FieldShape[];
}
