import type { FeedStage, MeterScale } from "@sillwood/science/feed";
import type { PlantId } from "../../book/entry.ts";
import type { Draft } from "../../round/pages.ts";
import type { Origin, Working } from "../../working/working.ts";

/** What may be asked of the mixing desk. */
export interface FeedAsk {
  /** One of the groups; the first when left out. */
  readonly group?: string;
  readonly volume_L?: number;
  /** Id of a water on the shelf, or "usual" for one that nobody tested. */
  readonly water?: string;
  /** Share of rain or pure water in it. */
  readonly pure_frac?: number;
  /** Most bottles, 1 to 4. */
  readonly products_n?: number;
  /** Bottles left out. */
  readonly without?: readonly string[];
  /** What the meter shows. */
  readonly read?: { readonly value: number; readonly scale: MeterScale };
}

/** Pots that can share a mix. */
export interface FeedGroup {
  readonly key: string;
  readonly stage: FeedStage;
  readonly strength_frac: number;
  readonly said: string;
  readonly pots: readonly { readonly plant: PlantId; readonly number: string; readonly volume_mL: number }[];
  readonly volume_L: number;
}

export interface ShelfBottle {
  readonly id: string;
  readonly name: string;
  readonly said: string;
  readonly isUsed: boolean;
  /** Why it takes no part. */
  readonly why?: string;
}

export interface MixElement {
  readonly of: string;
  readonly value_mg_L: number;
  readonly low_mg_L: number;
  readonly high_mg_L: number;
  readonly sd_mg_L: number;
  readonly said: string;
}

export interface FeedRecipe {
  readonly tank: string;
  readonly volume_L: number;
  readonly doses: readonly {
    readonly supply: string;
    readonly name: string;
    readonly steps_n: number;
    readonly amount: number;
    readonly unit: "mL" | "g";
    readonly said: string;
  }[];
  readonly steps: readonly string[];
  /** Best with so many bottles, from one on. */
  readonly trade: readonly { readonly products_n: number; readonly misfit: number; readonly said: string }[];
  readonly elements: readonly MixElement[];
  readonly expected_mS_cm: number;
  readonly low_mS_cm: number;
  readonly high_mS_cm: number;
  readonly meterSaid: string;
  readonly driftSaid: string;
  readonly costSaid?: string;
  readonly notes: readonly string[];
  readonly act: readonly Draft[];
  readonly working: Working;
}

export interface MeterCheck {
  readonly state: "good" | "doubtful";
  readonly said: string;
  readonly read_mS_cm: number;
  readonly slips: readonly string[];
  /** Of a reading that is as it should be: the mix with its reading. */
  readonly act?: readonly Draft[];
}

/** The mixing desk: whose feed it is, what is poured, what is on the shelf, and the card. */
export interface FeedPage {
  readonly now_ms: number;
  readonly said: string;
  readonly groups: readonly FeedGroup[];
  readonly chosen: FeedGroup;
  readonly water: {
    readonly id: string;
    readonly said: string;
    readonly origin: Origin;
    readonly pure_frac: number;
    readonly notes: readonly string[];
  };
  readonly waters: readonly { readonly id: string; readonly said: string }[];
  readonly shelf: readonly ShelfBottle[];
  readonly recipe?: FeedRecipe;
  /** Why there is no recipe, or what it cannot reach. */
  readonly trouble?: { readonly said: string; readonly ways: readonly string[] };
  readonly reading?: MeterCheck;
  readonly cautions: readonly string[];
}
