import type { EntryId, Json, PlantId } from "../book/entry.ts";
import type { DayLine, Fan, Outlook, Question } from "../crafts/craft.ts";
import type { Working } from "../working/working.ts";
import type { Limit, Task, Work } from "./task.ts";

/** One place on a bench in walking order, and what stands on it. */
export interface SpotMark {
  readonly spot: string;
  readonly spotName: string;
  readonly plant?: PlantId;
  /** The number as it is said: "127", "131?" when two plants were given one number, "no number". */
  readonly number?: string;
  /** Kind and year in words: "red cayenne, year 3". */
  readonly kind?: string;
  /** Tasks of today that fit the minutes, in the order of hands. */
  readonly tasks: readonly Task[];
  /** Tasks held back by a limit, and by whom. */
  readonly held: readonly Held[];
  /** Past the must and the fits: moved to another day by its own latest date. */
  readonly moved: readonly Task[];
  /** Some of its work was left out today, with a reason in the book. */
  readonly skipped?: true;
}

export interface Held {
  readonly task: Task;
  readonly limit: Limit;
}

export interface BenchRound {
  readonly bench: string;
  readonly name: string;
  readonly outdoors: boolean;
  readonly quarantine: boolean;
  /** In walking order from the end that was asked for. */
  readonly spots: readonly SpotMark[];
  readonly minutes: number;
  /** "water 9, feed 4". */
  readonly said: string;
  readonly count_n: number;
  /** Outdoors, when the weather is not of today. */
  readonly weatherSaid?: string;
  readonly origin?: Working["origin"];
}

/** Today's work in walking order: screen 1a, and `sillwood round`. */
export interface Round {
  readonly now_ms: number;
  readonly date: string;
  readonly said: string;
  /** What can't wait takes longer than there are minutes: why the round is longer than asked. */
  readonly overSaid?: string;
  readonly tasks_n: number;
  readonly minutes: number;
  readonly benches: readonly BenchRound[];
  readonly must_n: number;
  readonly fits_n: number;
  readonly wait_n: number;
  readonly held: readonly Held[];
  /** At most three, most worth first: "Weigh 127 once (20 s): Wed-Sat would become Thu-Fri." */
  readonly questions: readonly (Question & { readonly plant: PlantId; readonly number: string })[];
  /** Things the book asks of people: two plants with one number, the same task done twice, plants without a spot. */
  readonly asks: readonly Ask[];
  /** Lines under "Before you go": litres to carry per bench and such. */
  readonly beforeYouGo: readonly string[];
  /** When nothing needs hands today: the next day that does and about how many pots, 10 to 90 %. */
  readonly next?: {
    readonly date: string;
    readonly said: string;
    readonly low_n: number;
    readonly mid_n: number;
    readonly high_n: number;
  };
}

export interface Ask {
  readonly key: string;
  readonly said: string;
  readonly plants: readonly PlantId[];
  /** Only the grower answers it; to everybody else it is said without ways out. */
  readonly growerOnly?: true;
  /** Ways out, each the entry it would write. */
  readonly answers: readonly { readonly said: string; readonly entries: readonly Draft[] }[];
}

/** An entry before it has an envelope: what a key writes. */
export interface Draft {
  readonly kind: string;
  readonly on: readonly string[];
  readonly data: Json;
  readonly at_ms?: number;
  readonly corrects?: readonly EntryId[];
  readonly files?: readonly string[];
}

/** Everything about one plant for the next fourteen days: screen 2, and `sillwood show`. */
export interface PlantPage {
  readonly plant: PlantId;
  readonly number: string;
  readonly kind: string;
  readonly spot?: {
    readonly id: string;
    readonly name: string;
    readonly bench: string;
    readonly benchName: string;
  };
  /** In place of the spot when its bench was laid later than the moment asked about, or has not come yet. */
  readonly placeSaid?: string;
  /** Neighbours in walking order. */
  readonly before?: PlantId;
  readonly after?: PlantId;
  readonly photo?: string;
  readonly ended?: string;
  /** Facts in words with their origin: pot, medium, height, leaves, parentage. */
  readonly facts: readonly {
    readonly name: string;
    readonly said: string;
    readonly origin: Working["origin"];
    readonly from: string;
  }[];
  readonly days: readonly {
    readonly date: string;
    readonly from_ms: number;
    readonly to_ms: number;
    readonly said: string;
  }[];
  /** One row a craft. */
  readonly lines: readonly { readonly craft: string; readonly line: DayLine }[];
  readonly heads: readonly { readonly craft: string; readonly head: NonNullable<Outlook["head"]> }[];
  readonly tasks: readonly Task[];
  readonly held: readonly Held[];
  readonly limits: readonly Limit[];
  readonly question?: Question;
  /** Outdoors, when the weather is not of today. */
  readonly weatherSaid?: string;
  readonly charts: readonly { readonly craft: string; readonly chart: Fan }[];
  readonly workings: readonly Working[];
  readonly problems: readonly string[];
  readonly last?: { readonly at_ms: number; readonly said: string };
  readonly figures: Readonly<Record<string, Readonly<Record<string, number | readonly number[] | string>>>>;
}

/** One line of the book as the log shows it: screen 4, and `sillwood book`. */
export interface LogLine {
  readonly id: EntryId;
  readonly kind: string;
  readonly date: string;
  readonly at_ms: number;
  readonly time: string;
  /** "127", "14 pots", "South sill". */
  readonly on: string;
  readonly onIds: readonly string[];
  /** The sentence in force; undefined when withdrawn. */
  readonly said?: string;
  /** Earlier versions, oldest first, each ruled through and signed. */
  readonly ruledThrough: readonly { readonly said: string; readonly by: string; readonly at_ms: number }[];
  readonly by: string;
  readonly writtenLater?: string;
  readonly state: "in force" | "withdrawn" | "newer" | "redacted" | "request";
  readonly data: Json;
  readonly files: readonly string[];
}

export interface LogFilter {
  readonly plant?: PlantId;
  readonly craft?: string;
  readonly by?: string;
  readonly from_ms?: number;
  readonly to_ms?: number;
  readonly most_n?: number;
}

/** The weighing run of a bench: the band in which the next weight is expected. */
export interface WeighingRow {
  readonly plant: PlantId;
  readonly number: string;
  readonly low_g: number;
  readonly high_g: number;
  /** Days by which one weighing would narrow the 80 % range. */
  readonly worth_d: number;
}

export type WorkCounts = Readonly<Partial<Record<Work, number>>>;
