import type { Aimed } from "./kinds.ts";
import type { CutFigures } from "./page-shape.ts";

/** The lines of one cut. */
export type CutLines = Readonly<
  Record<"where" | "takes" | "brings" | "opens" | "loses" | "outline" | "again", string>
>;

/** Sentences that only screen 6 and `sillwood cut` say. */
export interface TrimPageWords {
  list(traced_n: number, all_n: number): string;
  readonly noPlants: string;
  readonly nothing: string;
  sketched(height_mm: number, trunk_mm: number, leaves_n: number): string;
  share(branch: number, share_frac: number): string;
  traced(nodes_n: number, error_mm: number | undefined, unseen_n: number): string;
  height(trunk_mm: number, low_mm: number, high_mm: number, now_mm: number): string;
  held(why: string, until_ms: number | undefined): string;
  aim(aimed: Aimed): string;
  name(branch: number, joint: number): string;
  against(why: "base" | "bare"): string;
  readonly cut: {
    where(name: string): string;
    takes(figures: CutFigures, warn_frac: number): string;
    brings(figures: CutFigures): string;
    opens(figures: CutFigures, nameOf: (node: string) => string): string;
    loses(figures: CutFigures): string;
    outline(figures: CutFigures): string;
    again(until_ms: number): string;
    title(name: string): string;
    said(lines: CutLines): string;
  };
  readonly plans: {
    tried(tried_n: number, about_n: number, isDone: boolean): string;
    names: Readonly<Record<"nothing" | "light" | "middle" | "bold" | "own", string>>;
    said(cuts_n: number, taken_frac: number): string;
    readonly saidNothing: string;
    beats(share_frac: number): string;
    readonly nothingBeside: string;
    warning(taken_frac: number, warn_frac: number): string;
    pluck(name: string, light_frac: number): string;
    week(week: number, height_mm: number, shoots_n: number): string;
  };
  bend(by: "guy" | "wire" | "weight" | "spacer", name: string, off_ms: number): string;
  potAngle(roll_deg: number, pitch_deg: number, overlap_frac: number, upright_frac: number): string;
  readonly working: {
    light: string;
    fromTrace: string;
    warmth: string;
    ahead: string;
    sky: string;
    formula: string;
    sum(figures: CutFigures): string;
    break: string;
    movesMost: string;
  };
  readonly cautions: readonly string[];
}
