import type { PlantId } from "@sillwood/bench/book";
import type { PlantRow } from "@sillwood/bench/pages";
import type { Origin } from "@sillwood/bench/working";

/** Benches as ruled lists, as the page of plants shows them. */
export interface PlantsSeen {
  readonly benches: readonly {
    readonly id: string;
    readonly name: string;
    readonly outdoors: boolean;
    readonly quarantine: boolean;
    readonly rows: readonly {
      readonly spot: string;
      readonly spotName: string;
      readonly plants: readonly PlantRow[];
    }[];
  }[];
  readonly nowhere: readonly PlantRow[];
  readonly ended: readonly PlantRow[];
  readonly batches: readonly {
    readonly id: string;
    readonly name: string;
    readonly count_n: number;
    readonly lost_n: number;
    readonly kind: string;
    readonly sownOn?: string;
    readonly from?: string;
  }[];
  readonly problems: readonly string[];
}

/** Where air or light comes from, in the words of whoever asks. */
export interface SaidSource {
  readonly origin: Origin;
  readonly from: string;
}

export interface SpotSeen {
  readonly id: string;
  readonly name: string;
  readonly dli_mol_m2_d: number;
  readonly light: SaidSource;
  readonly plants: readonly { readonly plant: PlantId; readonly number: string }[];
}

/** A bench with its air and light today and where the numbers come from. */
export interface BenchSeen {
  readonly id: string;
  readonly name: string;
  readonly place: "sill" | "shelf" | "bed" | "table";
  readonly outdoors: boolean;
  readonly quarantine: boolean;
  readonly order_n: number;
  readonly windowFaces_deg?: number;
  readonly dayAir_C: number;
  readonly nightAir_C: number;
  readonly humidity_frac: number;
  readonly air: SaidSource;
  readonly demandSd_frac: number;
  readonly spots: readonly SpotSeen[];
}
export interface BenchesSeen {
  readonly benches: readonly BenchSeen[];
  readonly date: string;
  /** Files of loggers or weather that an entry names and that are not here yet. */
  readonly missing: readonly string[];
  readonly weatherUntil?: string;
}

/** Everything that an entry may be about or name, for the steps "on what" and for fields that hold an id. */
export interface ThingsSeen {
  readonly plants: readonly Thing[];
  readonly benches: readonly Thing[];
  readonly spots: readonly Thing[];
  readonly batches: readonly Thing[];
  readonly cultivars: readonly Thing[];
  readonly supplies: readonly Thing[];
}
export interface Thing {
  readonly id: string;
  readonly name: string;
  readonly beside: string;
  /** Bench on which a plant or spot stands. */
  readonly bench?: string;
  readonly number?: number;
}
