import type { PlantId } from "../../book/entry.ts";
import type { Draft } from "../../round/pages.ts";
import type { Working } from "../../working/working.ts";
import type { ClockedPest, LookedAt, Pest, Tool } from "./pests.ts";

/** What may be asked of the craft's page: all that is watched, one plant, a course that is thought about. */
export interface ScoutAsk {
  readonly plant?: string;
  readonly course?: CourseAsk;
}
export interface CourseAsk {
  readonly tool: Tool;
  readonly pest: ClockedPest;
  readonly every_d: number;
  readonly treatments_n: number;
  readonly coverage_frac?: number;
  readonly animals_n?: number;
}

/** Screen 7, and `sillwood scout`, `sillwood clear`. */
export interface ScoutPage {
  readonly said: string;
  /** Plants that are kept apart or looked at, clean rooms first. */
  readonly rows: readonly ScoutRow[];
  readonly pests: readonly { readonly key: Pest; readonly said: string; readonly hasClock: boolean }[];
  readonly tools: readonly { readonly key: Tool; readonly said: string }[];
  readonly cautions: readonly string[];
  readonly plant?: PlantScout;
  /** Plants with nothing written yet: where to begin. */
  readonly others: readonly { readonly plant: PlantId; readonly number: string }[];
}

export interface ScoutRow {
  readonly plant: PlantId;
  readonly number: string;
  readonly kind: string;
  readonly bench: string;
  readonly quarantine: boolean;
  readonly state: "found" | "kept apart" | "may move" | "may be sold" | "released";
  readonly said: string;
  readonly isDue: boolean;
}

export interface PlantScout {
  readonly plant: PlantId;
  readonly number: string;
  readonly kind: string;
  readonly place: string;
  readonly before?: PlantId;
  readonly after?: PlantId;
  readonly near: readonly { readonly plant: PlantId; readonly number: string }[];
  readonly guided: LookedAt;
  readonly isWatched: boolean;
  readonly evidence: readonly Evidence[];
  readonly together?: Evidence;
  /** Where the gates stand on the staff, 0 to 1. */
  readonly gates: { readonly move: GateSaid; readonly sell: GateSaid };
  readonly holderSaid?: string;
  readonly habitSaid?: string;
  readonly unseenSaid?: string;
  readonly cheapestSaid?: string;
  readonly warmSaid?: string;
  readonly trendSaid?: string;
  readonly staleSaid?: string;
  readonly labelSaid?: string;
  readonly courses: readonly string[];
  readonly working?: Working;
  /** What RELEASE writes, when the gate is open. */
  readonly release?: Draft;
  readonly sprayGates: readonly SprayGate[];
  readonly course?: CourseSaid;
  readonly figures: Readonly<Record<string, number | string>>;
}

export interface GateSaid {
  readonly open: boolean;
  readonly said: string;
  readonly early_ms?: number;
  readonly best_ms?: number;
  readonly late_ms?: number;
}

/** A bar on the staff: from too little over move to sell, each a third of it. */
export interface Evidence {
  readonly key: string;
  readonly name: string;
  readonly said: string;
  readonly low: number;
  readonly mid: number;
  readonly high: number;
  /** Where one more round of clean looks would bring it. */
  readonly ghost: number;
  readonly free_frac: number;
  readonly dateSaid: string;
}

export interface SprayGate {
  readonly key: string;
  readonly state: "open" | "careful" | "shut";
  readonly said: string;
}

export interface CourseSaid {
  readonly canWin: boolean;
  readonly said: readonly string[];
  readonly working: Working;
}
