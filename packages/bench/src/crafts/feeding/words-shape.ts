import type { FeedStage, NutritionSign } from "@sillwood/science/feed";
import type { Look } from "../craft.ts";
import type { Fed, Flushed, Mixed } from "./kinds.ts";

/** Every sentence of the craft. One catalogue a language; a missing sentence does not compile. */
export interface FeedingWords {
  fed(data: Fed): string;
  flushed(data: Flushed): string;
  mixed(data: Mixed): string;
  readonly stage: Readonly<Record<FeedStage, string>>;
  readonly feed: string;
  ofTank(name: string): string;
  whyNitrogen(left_mg_L: string, demand_mg_d: string): string;
  readonly whyHabit: string;
  readonly heldCut: string;
  readonly cannotRead: string;
  mixAsk(litres: string, pots_n: number): string;
  readonly working: FeedWorkingWords;
  looks(): readonly Look[];
  readonly signs: Readonly<Record<NutritionSign["key"], SignWords>>;
  evidenceSalt(salt: string): string;
  evidenceNitrogen(left: string): string;
  evidenceFed(day: string): string;
  readonly evidenceNever: string;
  readonly notMany: string;
}

export interface SignWords {
  readonly cause: string;
  readonly question: string;
  readonly yes: string;
  readonly no: string;
  readonly doNow: string;
  readonly doNot: string;
}

export interface FeedWorkingWords {
  readonly title: string;
  readonly formula: string;
  readonly habitFormula: string;
  sum(left: string, low: string, demand: string): string;
  habitSum(fresh: string, every: string): string;
  readonly nitrogen: string;
  readonly low: string;
  readonly holds: string;
  readonly use: string;
  readonly fromPours: string;
  readonly demand: string;
  readonly tissue: string;
  readonly last: string;
  readonly never: string;
  readonly book: string;
  readonly ours: string;
  readonly source: string;
  readonly moves: string;
  readonly habitNote: string;
  readonly saltTitle: string;
  readonly saltFormula: string;
  readonly salt: string;
  readonly flushAt: string;
  readonly saltSource: string;
  readonly saltNote: string;
}
