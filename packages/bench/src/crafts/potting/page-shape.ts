import type { MediumName } from "@sillwood/science/medium";
import type { PlantId } from "../../book/entry.ts";
import type { Pot } from "../../plants/pot.ts";
import type { Draft } from "../../round/pages.ts";
import type { Origin } from "../../working/working.ts";
import type { Filled } from "./kinds.ts";

/** What may be asked of the craft's page; `what` says which. */
export type PottingAsk =
  | {
      readonly what: "mix";
      /** Bags on the shelf; none: every part is offered, no mix is made. */
      readonly bags?: readonly MediumName[];
      readonly pot?: Pot;
      /** The pot of this plant, where none is given. */
      readonly plant?: PlantId;
      /** Roots were washed: they want more air. */
      readonly bareRoots?: boolean;
      /** A mix of one's own, to look at instead of the best. */
      readonly recipe?: Filled["recipe"];
      /** Most scoops in all; 6 unless given. */
      readonly scoops_n?: number;
    }
  | { readonly what: "day" }
  | { readonly what: "pot"; readonly plant: PlantId };

/** A pot cut open after draining: how wet at each height, and where the wet layer ends. */
export interface CutOpen {
  readonly fill_cm: number;
  readonly wetLayer_cm: number;
  /** from the floor up */
  readonly profile: readonly { readonly height_cm: number; readonly water_frac: number }[];
  readonly porosity_frac: number;
}

export interface Mix {
  readonly recipe: Filled["recipe"];
  /** "2 scoops of pumice and 1 scoop of bark". */
  readonly said: string;
  readonly air_frac: number;
  readonly airLow_frac: number;
  readonly airHigh_frac: number;
  /** chance that the air wanted is there */
  readonly chance_frac: number;
  readonly available_mL: number;
  readonly airless_h: number;
  readonly scoop_mL: number;
  readonly dry_g: number;
  readonly origin: Origin;
  readonly cut: CutOpen;
  readonly lines: readonly string[];
}

export interface MixPage {
  readonly what: "mix";
  /** "127", where a plant was asked about. */
  readonly number?: string;
  readonly said: string;
  readonly parts: readonly {
    readonly part: MediumName;
    readonly name: string;
    readonly origin: Origin;
    readonly chosen: boolean;
  }[];
  readonly pot: Pot;
  readonly potSaid: string;
  readonly medium_mL: number;
  readonly airWanted_frac: number;
  readonly mix?: Mix;
  /** the next best that differ, best first */
  readonly others: readonly Mix[];
  /** No mix of these bags will do: what would. */
  readonly noMix?: string;
  readonly care: string;
  /** The porosity test that would settle it, step by step. */
  readonly test: readonly string[];
  readonly figures: Readonly<Record<string, number>>;
}

export const stepNames = ["lift", "cut", "wash", "pot", "drain", "place"] as const;
export type StepName = (typeof stepNames)[number];

/** A clock that runs on whether anybody looks or not: it is reckoned from what is in the book. */
export interface Clock {
  readonly key: "water" | "roots" | "drain";
  readonly until_ms: number;
  readonly isPast: boolean;
  readonly said: string;
}

export interface OnTheRail {
  readonly plant: PlantId;
  readonly number: string;
  readonly kind: string;
  readonly done: readonly { readonly step: StepName; readonly at_ms: number }[];
  readonly next?: StepName;
  readonly clocks: readonly Clock[];
  /** What this step is: how far, into what, how long. */
  readonly how: readonly string[];
  /** What the key writes; empty where a weight is asked first. */
  readonly drafts: readonly Draft[];
  /** Where this step may be left out: what the key for the one after it writes. */
  readonly leftOut?: { readonly step: StepName; readonly drafts: readonly Draft[] };
  readonly asksWeight: boolean;
}

export interface DayPage {
  readonly what: "day";
  readonly said: string;
  readonly rail: readonly OnTheRail[];
  /** Water and medium as they were read, and whether they will do. */
  readonly warmth?: {
    readonly state: "good" | "note" | "wait" | "refused";
    readonly said: string;
    readonly until_ms?: number;
  };
  /** Plants in order of when they are due, to begin with. */
  readonly due: readonly { readonly plant: PlantId; readonly number: string; readonly said: string }[];
  /** What is held now on plants that came off the rail, with dates. */
  readonly held: readonly { readonly number: string; readonly said: string }[];
  readonly care: string;
}

/** A pot as it stands: what it holds, what it carries, what may follow it. */
export interface PotPage {
  readonly what: "pot";
  readonly number: string;
  readonly lines: readonly string[];
  readonly cut: CutOpen;
  readonly figures: Readonly<Record<string, number>>;
}

export type PottingPage = MixPage | DayPage | PotPage;
