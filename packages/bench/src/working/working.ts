/** Where a number comes from, drawn as map-makers draw surveyed and guessed lines. */
export type Origin = "measured" | "learned" | "assumed";

/**
 * How a number came about: shown one tap away from every number of advice.
 * Texts are in the language of the `Say` with which the working was asked for.
 */
export interface Working {
  /** What the number is called, in words. */
  readonly title: string;
  /** The result as it is said, with its unit: "Thu (We to Sa)", "180 mL". */
  readonly result: string;
  readonly value?: number;
  readonly unit: string;
  /** 80 % range, where there is one. */
  readonly low?: number;
  readonly high?: number;
  readonly origin: Origin;
  /** The sum in symbols, and again with the numbers of this plant put in. */
  readonly formula: string;
  readonly sum: string;
  readonly inputs: readonly WorkingInput[];
  /** Author, year, title, place; or "common practice, no source"; or "our assumption". */
  readonly source: string;
  /** The input that moves the result most, in a sentence. */
  readonly movesMost?: string;
  readonly notes: readonly string[];
}

export interface WorkingInput {
  readonly name: string;
  readonly said: string;
  readonly value?: number;
  readonly unit: string;
  readonly origin: Origin;
  /** "weighed Tue 14 Jan", "our assumption for a spongy medium". */
  readonly from: string;
  readonly at_ms?: number;
  /** Key of the assumption that may be replaced here. */
  readonly assumption?: string;
  readonly working?: Working;
}

/** The weakest origin of several: an assumed input turns the whole answer no stronger than learned-at-best. */
export function weakest(origins: readonly Origin[]): Origin {
  if (origins.includes("assumed")) return "assumed";
  return origins.includes("learned") ? "learned" : "measured";
}
