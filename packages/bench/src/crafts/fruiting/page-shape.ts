import type { Json, PlantId } from "../../book/entry.ts";
import type { Working } from "../../working/working.ts";

/** What may be asked of the craft's page: a plant, and a number of fruits to try. */
export interface FruitAsk {
  readonly plant?: string;
  readonly keeping_n?: number;
}

export interface FruitPage {
  readonly now_ms: number;
  /** The whole page in a sentence. */
  readonly said: string;
  readonly open: OpenList;
  readonly thin: readonly PlantLine[];
  readonly pick: readonly PickLine[];
  /** Every cohort that will ripen, by its middle date. */
  readonly calendar: readonly CalendarLine[];
  readonly stuck: readonly PlantLine[];
  /** Plants of which flowers or fruit were written. */
  readonly plants: readonly PlantLine[];
  readonly plant?: PlantFruit;
  readonly cautions: readonly { readonly key: "hot" | "food" | "seed"; readonly said: string }[];
  readonly figures: Readonly<Record<string, number>>;
}

export interface PlantLine {
  readonly plant: PlantId;
  readonly number: string;
  readonly kind: string;
  readonly said: string;
}

export interface OpenList {
  readonly flowers_n: number;
  readonly said: string;
  readonly how: string;
  /** What one key writes, for those that are due now. */
  readonly due_n: number;
  readonly acts: readonly { readonly kind: string; readonly on: PlantId; readonly data: Json }[];
  readonly plants: readonly (PlantLine & { readonly open_n: number; readonly isDue: boolean })[];
}

export interface PickLine extends PlantLine {
  readonly fruits_n: number;
  readonly tag: string;
  readonly isSeen: boolean;
  readonly act: { readonly kind: string; readonly data: Json };
}

export interface CalendarLine extends PlantLine {
  readonly fruits_n: number;
  readonly dates_ms: readonly number[];
}

export interface BranchSaid {
  readonly branch: string;
  readonly said: string;
  readonly keep_n: number;
  readonly has_n?: number;
  readonly open_n?: number;
  readonly bears_n: number;
  readonly leaf_frac: number;
  readonly thickness_mm: number;
  readonly length_cm: number;
  readonly lean_deg: number;
  /** What PINCHED writes, where more hang than stay. */
  readonly act?: { readonly kind: string; readonly data: Json };
}

export interface CohortSaid {
  readonly tag: string;
  readonly branch?: string;
  readonly fruits_n: number;
  readonly state: "ripe" | "on its way" | "cannot ripen";
  readonly said: string;
  readonly dates_ms: readonly number[];
  readonly working: Working;
}

export interface PlantFruit extends PlantLine {
  readonly feeds: { readonly said: string; readonly working: Working };
  readonly aim: "full" | "many";
  readonly keep_n: number;
  readonly has_n?: number;
  readonly totalSaid: string;
  readonly branches: readonly BranchSaid[];
  /** What keeping all, or the number asked for, would come to. */
  readonly trySaid?: string;
  /** Fewer and full against many and small, with the ripe mass given up. */
  readonly priceSaid: string;
  readonly price_frac: number;
  readonly set: { readonly said: string; readonly working: Working };
  readonly droppedSaid?: string;
  readonly ripe: readonly CohortSaid[];
  readonly pickStage: "ripe" | "green or ripe";
  readonly pickSaid: string;
  readonly earlySaid: string;
  readonly storeSaid: string;
  readonly heatSaid: string;
  readonly seedSaid: string;
  readonly lots: readonly { readonly lot: string; readonly said: string }[];
}
