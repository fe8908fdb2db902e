import type { Json, Problem } from "@sillwood/bench/book";

/** A problem in what somebody typed, with where it stands in a file and the likely slip. */
export interface Trouble extends Problem {
  /** Line of a file; 1 is the header. */
  readonly line?: number;
  readonly column?: string;
  /** What was probably meant, as a question. */
  readonly slip?: string;
  readonly value?: Json;
}

/** Wrong use of the program: exit 2. `see` names the help that tells the right one. */
export class UsageError extends Error {
  override readonly name = "UsageError";
}

/** Problems in the data: exit 1. Nothing was written. */
export class DataError extends Error {
  override readonly name = "DataError";
  readonly troubles: readonly Trouble[];
  constructor(troubles: readonly Trouble[]) {
    super(troubles.map(({ message }) => message).join("; "));
    this.troubles = troubles;
  }
}

/** One problem that has no field. */
export const dataError = (path: string, message: string, value?: Json): DataError =>
  new DataError([{ path, message, ...(value === undefined ? {} : { value }) }]);

/** A line of text for one problem: where, what, the likely slip. */
export function troubleLine({ line, column, message, slip }: Trouble): string {
  const where = line === undefined ? "" : `line ${line}${column ? `, ${column}` : ""}: `;
  const end = /[.?!]$/.test(message) ? "" : ".";
  return `${where}${message}${end}${slip ? ` ${slip}` : ""}`;
}
