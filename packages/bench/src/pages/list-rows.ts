import type { Draft } from "../round/pages.ts";

export interface ListProblem {
  /** 1 is the header. */
  readonly line: number;
  readonly column: string;
  readonly message: string;
}

export interface ListPreview {
  /** Ours to theirs: as given, else recognised by name. */
  readonly mapping: Readonly<Record<string, string>>;
  readonly unmapped: readonly string[];
  readonly rows_n: number;
  /** The first ten rows as they will stand. */
  readonly firstRows: readonly string[];
  readonly problems: readonly ListProblem[];
  /** What KEEP writes; empty while there is a problem that stops it. */
  readonly drafts: readonly Draft[];
  /** Files that the drafts name, by the place of the draft: text of a series part. */
  readonly files: readonly { readonly draft: number; readonly text: string }[];
}

export interface ListOptions {
  readonly mapping?: Readonly<Record<string, string>>;
  /** Bench of a logger file, or where plants stand whose row names none. */
  readonly bench?: string;
  /** New ids, made by the device. */
  newId(): string;
}

/** A row of the file, asked by our words for its columns. */
export interface Row {
  readonly line: number;
  cell(key: string): string;
}
export type Note = (line: number, column: string, message: string) => void;
export interface ReadResult {
  readonly drafts: Draft[];
  /** Which line each draft came from, for problems that its schema finds. */
  readonly lines: number[];
  readonly firstRows: string[];
  readonly files: { draft: number; text: string }[];
}
