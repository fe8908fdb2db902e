import type { ColourStage, HeatBasis, SeedIsolation } from "@sillwood/science/fruit";
import type { EntryId } from "../../book/entry.ts";
import type { Sight } from "../craft.ts";

/** Something counted, and when. */
export interface CountOf {
  readonly n: number;
  readonly at_ms: number;
  readonly roughly?: true;
}

/** Fruits whose flowers opened together. */
export interface Cohort {
  readonly id: string;
  readonly fruits_n: number;
  readonly branch?: string;
  readonly opened_ms: number;
  /** Nobody wrote the day: it was taken as that of the entry. */
  readonly isGuessed?: true;
  /** Warmth up to the last move, and from when it counts on where the plant stands now. */
  readonly banked_Cd: number;
  readonly from_ms: number;
  readonly colour?: ColourStage;
  /** Warmth behind it when that colour was seen. */
  readonly colouredAt_Cd?: number;
  readonly colouredAt_ms?: number;
}

export interface SeedLot {
  readonly lot: string;
  readonly at_ms: number;
  readonly fruits_n: number;
  readonly seeds_n?: number;
  readonly kept: SeedIsolation;
  readonly tested_n?: number;
  readonly germinated_n?: number;
  readonly testedAt_ms?: number;
}

export interface Assay {
  /** As given, on its basis. */
  readonly heat_n: number;
  readonly basis: HeatBasis;
  readonly water_frac?: number;
  readonly method?: string;
  readonly at_ms: number;
}

export interface FruitProblem {
  readonly entry: EntryId;
  readonly at_ms: number;
  readonly what: "cannot be read" | "ripe too soon" | "opens later";
  /** Days from flower to ripe, where that is what is wrong. */
  readonly days_n?: number;
}

/** Everything the craft keeps of one plant; it changes with entries only, so nothing is stepped. */
export interface FruitSlice {
  readonly spot?: string;
  readonly aim: "full" | "many";
  readonly open?: CountOf;
  readonly buds?: CountOf;
  readonly openBy: Readonly<Record<string, CountOf>>;
  readonly fruits?: CountOf;
  readonly fruitsBy: Readonly<Record<string, CountOf>>;
  /** When it was brushed, the last few times. */
  readonly brushes_ms: readonly number[];
  readonly dropped: Readonly<Record<"buds" | "flowers" | "fruits", number>>;
  readonly droppedAt_ms?: number;
  readonly cohorts: readonly Cohort[];
  /** Warmth from flower to ripe that its own fruits took. */
  readonly own_Cd: readonly number[];
  readonly picked_n: number;
  readonly picked_g: number;
  /** Fruits of those that were weighed. */
  readonly weighed_n: number;
  readonly weighed_g: number;
  readonly ripeFrom_ms?: number;
  readonly assay?: Assay;
  readonly lots: readonly SeedLot[];
  readonly problems: readonly FruitProblem[];
}

export const startSlice = ({ plant }: Sight): FruitSlice => ({
  ...(plant.spot === undefined ? {} : { spot: plant.spot }),
  aim: "full",
  openBy: {},
  fruitsBy: {},
  brushes_ms: [],
  dropped: { buds: 0, flowers: 0, fruits: 0 },
  cohorts: [],
  own_Cd: [],
  picked_n: 0,
  picked_g: 0,
  weighed_n: 0,
  weighed_g: 0,
  lots: [],
  problems: [],
});
