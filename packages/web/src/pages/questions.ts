import type { EntryId, Json, PlantId } from "@sillwood/bench/book";
import type { AwayPlan, Look, Sign } from "@sillwood/bench/crafts";
import type { HowGood, Whose } from "@sillwood/bench/issued";
import type { FirstIds, FourFacts, ListKind, ListPreview } from "@sillwood/bench/pages";
import type { Draft, LogLine } from "@sillwood/bench/round";
import type { Origin } from "@sillwood/bench/working";
import type { BenchesSeen, PlantsSeen, ThingsSeen } from "./answers/seen.ts";
import type { Taking } from "./answers/takings.ts";
import type { KindShape } from "./fields/form-shape.ts";

/** The answer of the first run: a date with its range, and what is guessed in it. */
export interface FirstSaid {
  readonly said: string;
  readonly origin: Origin;
  /** What the answer rests on and nobody has said, in words. */
  readonly guessed: readonly string[];
}

export interface AssumedRow {
  readonly craft: string;
  readonly key: string;
  readonly what: string;
  readonly unit: string;
  readonly min: number;
  readonly max: number;
  readonly source: string;
  readonly replacedBy: string;
  readonly value: number;
  readonly now: number;
  readonly changed: boolean;
}

export interface HouseFacts {
  readonly site: {
    readonly name: string;
    readonly latitude_deg: number;
    readonly longitude_deg: number;
    readonly elevation_m: number;
    readonly zone: string;
    readonly currency: string;
    readonly assumed: boolean;
  };
  readonly habits: {
    readonly minutes: number;
    readonly weekdays: readonly number[];
    readonly hour_h?: number;
  };
  readonly habitsAssumed: boolean;
  readonly entries_n: number;
  readonly plants_n: number;
  /** Highest number given so far, for the next label. */
  readonly highest: number;
  /** Price of electricity as it was written last, with its said price. */
  readonly tariff?: { readonly said: string; readonly data: Json };
}

export interface SupplyRow {
  readonly id: string;
  readonly name: string;
  readonly what: string;
  readonly unit: string;
  readonly onHand: number;
  readonly lot?: string;
  readonly expires?: string;
  readonly price_minor?: number;
  readonly currency?: string;
  readonly counted?: string;
}

export interface WrongSeen {
  readonly looks: readonly Look[];
  readonly number: string;
  readonly signs: readonly { readonly craft: string; readonly sign: Sign }[];
}

/** A doubt with the plant's number: "900 mL is more than pot 127 can hold, about 470 mL." */
export interface SaidDoubt {
  readonly key: string;
  readonly number: string;
  readonly value: number;
  readonly most: number;
  readonly meant: number;
  readonly unit: string;
}

export interface CraftRow {
  readonly craft: string;
  /** How many tasks of today are its own. */
  readonly due_n: number;
}

/** What the pages beside the round ask of the engine. */
export interface PageQuestions {
  ids: { args: { readonly n: number }; answer: readonly string[] };
  plants: { args: object; answer: PlantsSeen };
  benches: { args: object; answer: BenchesSeen };
  things: { args: object; answer: ThingsSeen };
  kinds: { args: object; answer: readonly KindShape[] };
  /** One kind by name, also those that have a page of their own. */
  shape: { args: { readonly kind: string }; answer: KindShape | null };
  entry: { args: { readonly entry: EntryId }; answer: LogLine | null };
  first: { args: { readonly facts: FourFacts }; answer: FirstSaid | null };
  "first drafts": {
    args: {
      readonly facts: FourFacts;
      readonly ids: FirstIds;
      readonly number: number;
      readonly benchName: string;
      /** Stands on a bench that is there already. */
      readonly spot?: string;
    };
    answer: readonly Draft[];
  };
  list: {
    args: {
      readonly kind: ListKind;
      readonly cells: readonly (readonly string[])[];
      readonly mapping?: Readonly<Record<string, string>>;
      readonly bench?: string;
    };
    answer: ListPreview & {
      readonly columns: readonly { readonly key: string; readonly what: string; readonly needed: boolean }[];
    };
  };
  /** What is possible but hardly meant in these drafts. */
  doubts: { args: { readonly drafts: readonly Draft[] }; answer: readonly SaidDoubt[] };
  /** What makes an entry unreadable for good, on every device. */
  unreadable: { args: { readonly entry: EntryId }; answer: readonly Draft[] };
  /** What entries would say that are not in the book. */
  sentences: {
    args: { readonly drafts: readonly (Draft & { readonly by: string; readonly at_ms: number })[] };
    answer: readonly string[];
  };
  /** Numbers of a plant that a sum may take. */
  takings: { args: { readonly plant: PlantId }; answer: readonly Taking[] };
  wrong: { args: { readonly plant?: PlantId; readonly seen: readonly string[] }; answer: WrongSeen };
  assumed: { args: object; answer: readonly AssumedRow[] };
  house: { args: object; answer: HouseFacts };
  supplies: { args: object; answer: readonly SupplyRow[] };
  crafts: { args: object; answer: readonly CraftRow[] };
  /** How good forecasts kept as issued have been: of a plant, a bench or the whole book. */
  howGood: { args: Whose; answer: readonly HowGood[] };
  /** A craft's own page: what may be asked and what comes back is between the craft and its screens. */
  "craft page": {
    args: { readonly craft: string; readonly ask: Json };
    answer: { readonly page: unknown } | { readonly refused: string };
  };
  away: {
    args: { readonly from_ms: number; readonly to_ms: number };
    answer:
      | { readonly plans: readonly { readonly craft: string; readonly plan: AwayPlan }[] }
      | { readonly refused: string };
  };
}
