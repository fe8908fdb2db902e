import type { Language } from "@sillwood/bench/words";
import { german } from "./de.ts";
import { english } from "./en.ts";

/** The program's own words around the pages of the house. A word missing in one language does not compile. */
export interface CliWords {
  readonly outdoors: string;
  readonly someWindow: string;
  window(point: string): string;
  readonly measured: string;
  readonly learned: string;
  readonly assumed: string;
  readonly must: string;
  readonly today: string;
  readonly held: string;
  readonly moved: string;
  readonly care: string;
  readonly why: string;
  readonly then: string;
  eachThen(then: string): string;
  readonly last: string;
  readonly asks: string;
  readonly worth: string;
  readonly beforeYouGo: string;
  readonly problems: string;
  readonly formula: string;
  readonly inputs: string;
  readonly source: string;
  readonly movesMost: string;
  readonly range: string;
  readonly workings: string;
  readonly nothing: string;
  counts(must_n: number, fits_n: number, wait_n: number): string;
  minutes(minutes: string): string;
  heldBy(what: string, by: string, why: string, until: string): string;
  wrote(entries_n: number): string;
  answers(said: string): string;
  noEntries: string;
  asKnown(when: string): string;
  readonly fruit: {
    readonly pick: string;
    readonly thin: string;
    readonly coming: string;
    readonly stuck: string;
    readonly plants: string;
  };
  readonly light: {
    readonly seats: string;
    readonly timer: string;
    readonly read: string;
    readonly free: string;
    range(low: string, high: string): string;
    wants(light: string): string;
  };
  readonly sheet: {
    readonly title: string;
    readonly number: string;
    readonly work: string;
    readonly done: string;
    readonly less: string;
    readonly more: string;
    readonly not: string;
    readonly grams: string;
    asOf(day: string, time: string): string;
    readonly back: string;
  };
}

export const cliWords = (language: Language): CliWords => (language === "de" ? german : english);
