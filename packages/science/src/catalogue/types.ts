export type InputValue = number | string | boolean | readonly number[];

/** One argument of a science function, as shown to people and checked against what the function enforces. */
export type ScienceInput = {
  readonly name: string;
  readonly kind: "number" | "numbers" | "choice" | "yes or no";
  readonly what: string;
  readonly unit: string;
  /** ends of the accepted range; infinite where anything is accepted, or where the input is no number */
  readonly min: number;
  readonly max: number;
  readonly options?: readonly string[];
  readonly optional: boolean;
  readonly usual: InputValue;
};

export type ScienceResult = {
  readonly name: string;
  readonly unit: string;
  /** the parts, when the function gives more than one; else the one result again */
  readonly fields: readonly { readonly name: string; readonly unit: string }[];
};

export type ScienceOutput = Readonly<Record<string, number | string | boolean | number[]>>;

/** A public function of science with everything a command line or a screen needs to run it. */
export type ScienceFunction = {
  readonly name: string;
  readonly field: string;
  readonly what: string;
  readonly inputs: readonly ScienceInput[];
  readonly result: ScienceResult;
  /** key into the field's sources, with the place in it, or the words of STYLE for what has none */
  readonly source: string;
  /** text is read as the kind of its input: "20", "0.1,0.4", "yes" */
  readonly evaluate: (values: Readonly<Record<string, InputValue>>) => ScienceOutput;
};
