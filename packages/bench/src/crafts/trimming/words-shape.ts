import type {
  Aimed,
  Bent,
  Bitten,
  CutMade,
  Freed,
  Planned,
  PlannedCut,
  Plucked,
  Sketched,
  Sprouted,
  Traced,
} from "./kinds.ts";

/** Sentences of the craft that rounds, logs and plant pages need; the page has its own beside. */
export interface TrimmingWords {
  sketched(data: Sketched): string;
  traced(data: Traced): string;
  aimed(data: Aimed): string;
  planned(data: Planned): string;
  cut(data: CutMade): string;
  plucked(data: Plucked): string;
  bent(data: Bent): string;
  freed(data: Freed): string;
  looked(data: Bitten): string;
  sprouted(data: Sprouted): string;
  notBefore(at_ms: number): string;
  readonly cannotRead: string;
  readonly care: { readonly blade: string };
  readonly limit: {
    regrows(at_ms: number, lit_frac: number): string;
    roots(at_ms: number): string;
    brittle(share_frac: number): string;
  };
  readonly task: {
    cut(letter: string): string;
    cutSaid(cut: PlannedCut): string;
    cutWhy(left_n: number): string;
    readonly free: string;
    freeSaid(bend: Bent): string;
    readonly look: string;
    lookSaid(bend: Bent): string;
    readonly bites: string;
    bentWhy(at_ms: number, after_d: number): string;
  };
  readonly working: {
    readonly limit: string;
    upTo(share_frac: number): string;
    readonly limitFormula: string;
    readonly warn: string;
    readonly most: string;
    readonly a300: string;
    readonly ours: string;
    readonly trade: string;
    readonly limitNote: string;
    readonly rest: string;
    restResult(at_ms: number): string;
    restSum(lit_frac: number, pace_per_d: number, days_d: number): string;
    readonly taken: string;
    cutOn(at_ms: number): string;
    readonly pace: string;
    perDay(pace_per_d: number): string;
    readonly paceMoves: string;
    cut(letter: string): string;
    takes(lit_frac: number): string;
    readonly area: string;
    readonly fromTrace: string;
    readonly trimNote: string;
    readonly bend: string;
    days(days_d: number): string;
    readonly bendFormula: string;
    bendSum(off_d: number, look_d: number): string;
    wood(wood: Bent["wood"]): string;
  };
}
