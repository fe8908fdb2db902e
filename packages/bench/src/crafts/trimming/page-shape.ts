import type { Json, PlantId } from "../../book/entry.ts";
import type { Draft } from "../../round/pages.ts";
import type { Origin, Working } from "../../working/working.ts";
import type { Aimed, PlannedCut, Traced } from "./kinds.ts";

/** What may be asked of screen 6 and of `sillwood cut`. */
export interface TrimAsk {
  readonly plant?: string;
  /** What a cut through the stem just below this node would do. */
  readonly node?: string;
  /** An outline other than the one kept. */
  readonly aim?: Aimed;
  /** Look for plans, with so many tries in all; asked again with more it goes on. */
  readonly tries_n?: number;
  /** How it would best be potted, which takes half a second to find. */
  readonly potAngle?: boolean;
  /** First nodes that go, of a plan put together by hand. */
  readonly own?: readonly string[];
  /** A trace that is not in the book yet, to be looked over. */
  readonly trace?: Traced;
}

export interface TrimPage {
  readonly now_ms: number;
  readonly said: string;
  readonly plants: readonly TrimRow[];
  readonly plant?: PlantTrim;
  readonly cautions: readonly string[];
  readonly figures: Readonly<Record<string, number | string>>;
}

export interface TrimRow {
  readonly plant: PlantId;
  readonly number: string;
  readonly kind: string;
  readonly level: Level;
  readonly said: string;
}

/** How much is known of the structure. */
export type Level = "nothing" | "sketched" | "traced";

export interface PlantTrim {
  readonly plant: PlantId;
  readonly number: string;
  readonly kind: string;
  readonly level: Level;
  readonly levelSaid: string;
  /** What stands against a cut now, in sentences. */
  readonly held: readonly string[];
  readonly sketch?: SketchShown;
  readonly aim?: { readonly aimed: Aimed; readonly said: string; readonly origin: Origin };
  readonly views?: { readonly front: View; readonly side: View };
  /** In the order of the plant: trunk first, then each branch from its foot. */
  readonly nodes: readonly NodeRow[];
  readonly node?: CutShown;
  readonly plans?: PlansShown;
  /** Cuts of the kept plan that were not made yet. */
  readonly keptPlan?: readonly PlannedCut[];
  readonly bends: readonly BendShown[];
  /** What its trunk asks of its height. */
  readonly proportions?: string;
  readonly potAngle?: string;
  readonly workings: readonly Working[];
  readonly trace?: Traced;
  readonly figures: Readonly<Record<string, number | string>>;
}

export interface SketchShown {
  readonly said: string;
  readonly shares: readonly string[];
}

export interface BendShown {
  readonly node: string;
  readonly said: string;
}

export interface NodeRow {
  readonly id: string;
  /** "trunk, joint 3", "branch 2, joint 1". */
  readonly name: string;
  readonly branch: number;
  readonly isLegal: boolean;
  /** Why no cut may be made below it. */
  readonly why?: string;
}

/** A drawing from one side, in pixels of the photo where there is one, else in tenths of a millimetre. */
export interface View {
  readonly width: number;
  readonly height: number;
  readonly photo?: string;
  readonly stems: readonly Stem[];
  readonly leaves: readonly LeafBlob[];
  /** The outline aimed at, as points. */
  readonly aim: readonly Point[];
}
export type Point = readonly [number, number];

export interface Stem {
  readonly node: string;
  readonly from: Point;
  readonly to: Point;
  readonly thick: number;
}

export interface LeafBlob {
  readonly node: string;
  readonly at: Point;
  readonly radius: number;
}

/** What one cut does, in words and numbers. */
export interface CutShown {
  readonly letter?: string;
  /** The node just below the cut, and the first that goes. */
  readonly node: string;
  readonly gone: string;
  readonly where: string;
  readonly isLegal: boolean;
  readonly why?: string;
  readonly takes: string;
  readonly brings: string;
  readonly opens: string;
  readonly loses: string;
  readonly outline: string;
  readonly again: string;
  /** All of it as one text, for lists and readers. */
  readonly said: string;
  readonly goneNodes: readonly string[];
  readonly marks: { readonly front: Mark; readonly side: Mark };
  readonly figures: CutFigures;
  readonly working: Working;
  readonly draft: Draft;
}

/** A slanted bar across the stem. */
export interface Mark {
  readonly from: Point;
  readonly to: Point;
}

export interface CutFigures {
  readonly lit_frac: number;
  readonly area_frac: number;
  readonly mass_g: number;
  readonly flowers_n: number;
  readonly fruit_n: number;
  readonly shoots_n: number;
  readonly towards_deg: number;
  readonly early_d: number | null;
  readonly late_d: number | null;
  readonly rest_d: number;
  readonly outline_frac: number;
  readonly outlineBefore_frac: number;
  readonly opened: readonly {
    readonly node: string;
    readonly before_frac: number;
    readonly after_frac: number;
  }[];
}

export interface PlansShown {
  readonly tried_n: number;
  readonly about_n: number;
  readonly isDone: boolean;
  readonly said: string;
  /** "nothing" first, then light, middle, bold as far as they were found, then the grower's own. */
  readonly plans: readonly PlanShown[];
}

export interface PlanShown {
  readonly key: "nothing" | "light" | "middle" | "bold" | "own";
  readonly name: string;
  readonly said: string;
  readonly cuts: readonly CutShown[];
  readonly goneNodes: readonly string[];
  readonly taken_frac: number;
  readonly beats: string;
  readonly beatsNothing_frac: number;
  readonly warning?: string;
  readonly pluck: readonly string[];
  readonly weeks: readonly WeekShown[];
  readonly draft?: Draft;
}

/** The plant at a week of the middle course: shoots as lines in both views, height in words. */
export interface WeekShown {
  readonly week: number;
  readonly said: string;
  readonly front: readonly (readonly Point[])[];
  readonly side: readonly (readonly Point[])[];
}

export type { Json };
