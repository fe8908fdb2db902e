import type { Language, UnitSystem } from "@sillwood/bench/words";
import type { Surroundings } from "./surroundings.ts";

export interface OptionShape {
  readonly type: "string" | "boolean";
  readonly short?: string;
  /** What stands in place of the value in the help: FILE, MINUTES. */
  readonly value?: string;
  readonly what: string;
}

export type OptionShapes = Readonly<Record<string, OptionShape>>;

/** A command as it was typed, read once. */
export interface Call {
  readonly words: readonly string[];
  readonly options: Readonly<Record<string, string | boolean | undefined>>;
  readonly around: Surroundings;
  readonly language: Language;
  readonly units: UnitSystem;
  readonly json: boolean;
  /** Shows the answer of a verb that goes on running: its object or its text. */
  ready(json: Outcome["json"], text: string): void;
}

/** What a command answers: one object for programs, one text for people, always both made from the same page. */
export interface Outcome {
  readonly json: Readonly<Record<string, unknown>>;
  readonly text: string;
  /** 1 when some of the data had problems though the rest was done. */
  readonly code?: 0 | 1;
  /** Whether the answer was shown already, by a verb that went on running. */
  readonly shown?: boolean;
  /** For the error stream. */
  readonly complaints?: readonly string[];
}

/** One verb: a file in this folder and a line in commands/index.ts. */
export interface Command {
  readonly verb: string;
  readonly what: string;
  readonly usage: readonly string[];
  readonly options: OptionShapes;
  /** Lines between usage and options. */
  readonly help: readonly string[];
  readonly example: readonly string[];
  run(call: Call): Promise<Outcome>;
}

/** The text of an option, if it was given. */
export function textOption(call: Call, name: string): string | undefined {
  const value = call.options[name];
  return typeof value === "string" ? value : undefined;
}
