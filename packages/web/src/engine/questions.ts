import type { PlantId } from "@sillwood/bench/book";
import type { LogFilter, LogLine, PlantPage, Round, WeighingRow } from "@sillwood/bench/round";
import type { Language, UnitSystem } from "@sillwood/bench/words";
import type { PageQuestions } from "../pages/questions.ts";

/** What goes with every question: the engine has no clock and no language of its own. */
export interface Asking {
  readonly now_ms: number;
  readonly language: Language;
  readonly units: UnitSystem;
  readonly zone: string;
}

export interface Person {
  readonly id: string;
  readonly role: "grower" | "helper" | "viewer";
}

/** A plant's page, and what the screen itself must ask for. */
export interface PlantSheet extends PlantPage {
  readonly isMediumUnknown: boolean;
}

/** Where a plant stands, for a number typed on the pad. */
export interface FoundPlant {
  readonly plant: PlantId;
  readonly number: string;
  readonly kind: string;
  readonly ended?: string;
}

/** A question may look from an earlier moment: entries that happened later are unseen then. */
export interface AsOf {
  readonly at_ms?: number;
}

/** Every question a screen may put to the engine. A new screen adds a line here and its answer in later-answers.ts. */
export interface Questions extends PageQuestions {
  round: { args: { readonly minutes?: number; readonly otherEnd?: boolean } & AsOf; answer: Round };
  plant: { args: { readonly plant: PlantId }; answer: PlantSheet | null };
  number: { args: { readonly number: number }; answer: readonly FoundPlant[] };
  weighing: { args: { readonly bench: string; readonly onlyFew?: boolean }; answer: readonly WeighingRow[] };
  /** Width of the 8-in-10 range of each plant's next date, days. */
  ranges: { args: { readonly plants: readonly string[] }; answer: Readonly<Record<string, number>> };
  log: { args: LogFilter; answer: readonly LogLine[] };
  people: { args: object; answer: readonly Person[] };
}

export type QuestionName = keyof Questions;
export type ArgsOf<Name extends QuestionName> = Questions[Name]["args"];
export type AnswerOf<Name extends QuestionName> = Questions[Name]["answer"];
/** What only a few pages ask is loaded when it is asked first: its answer takes a moment. */
export type Answering<Answer> = Answer | Promise<Answer>;
