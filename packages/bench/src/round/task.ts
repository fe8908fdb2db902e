import type { Json, PlantId } from "../book/entry.ts";
import type { Working } from "../working/working.ts";

/** The kinds of work that tasks are and that limits forbid. */
export const works = [
  "water",
  "feed",
  "flush",
  "cut",
  "pluck",
  "bend",
  "repot",
  "wash",
  "spray",
  "brush",
  "pick",
  "move",
  "touch",
  "turn",
  "sell",
  "look",
  "weigh",
] as const;
export type Work = (typeof works)[number];

/** What one craft forbids any other on a plant. A firm limit (labels, clearance, harm to people) can't be overridden. */
export interface Limit {
  readonly work: Work;
  readonly on: PlantId;
  readonly from_ms: number;
  /** Undefined: until something happens that `why` names. */
  readonly until_ms?: number;
  readonly why: string;
  readonly by: string;
  readonly firm: boolean;
}

/** One pour of water and the wait after it. */
export interface Pour {
  readonly volume_mL: number;
  readonly wait_min: number;
}

/** One thing to do: on what, how much, earliest, best and latest, how long it takes. */
export interface Task {
  /** `craft:work:plant`: the same task asked again has the same id. */
  readonly id: string;
  readonly craft: string;
  readonly work: Work;
  readonly plant: PlantId;
  readonly earliest_ms: number;
  readonly best_ms: number;
  readonly latest_ms: number;
  /** Twenty equally likely instants at which the need arises, ascending. */
  readonly dates_ms?: readonly number[];
  readonly minutes: number;
  /** Harm follows if it is not done today. */
  readonly must: boolean;
  readonly amount?: { readonly value: number; readonly unit: string };
  readonly pours?: readonly Pour[];
  /** Words for the screens, in the language asked for: "WATER", "180 mL", "tip the saucer out once", "38 % left, uses 41 g a day". */
  readonly title: string;
  readonly said: string;
  readonly then?: string;
  readonly why: string;
  readonly care?: string;
  /** The entry that DONE writes. */
  readonly act: { readonly kind: string; readonly data: Json };
  readonly working: Working;
}
