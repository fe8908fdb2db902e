import type { Look } from "../craft.ts";
import type { Milestone } from "./ahead.ts";
import type { LeavesMeasured, NodesCounted, Staged } from "./kinds.ts";
import type { Pace } from "./pace.ts";
import type { PlainStage, StageName } from "./stages.ts";

export interface OfferedWords {
  readonly stage: Readonly<Record<"sown" | "seen" | "cut" | "just" | "old" | "rest" | "cutBack", string>>;
  readonly area: Readonly<Record<"usual" | "sown" | "cut" | "counted", string>>;
  readonly warmth: Readonly<Record<"sown" | "seen" | "cut", string>>;
  readonly nodes: Readonly<Record<"sown" | "counted", string>>;
}

/** Every sentence of the craft. One catalogue a language; a missing sentence does not compile. */
export interface GrowthWords {
  staged(data: Staged): string;
  leaves(data: LeavesMeasured): string;
  nodes(data: NodesCounted): string;
  readonly head: string;
  /** "in flower (BBCH 63), 80 % 61 to 65". */
  stage(plain: PlainStage, bbch: number, low: number, high: number): string;
  readonly guess: string;
  readonly resting: string;
  readonly runOut: string;
  /** "at 18 °C it hardly grows: 1 °C d a day". */
  slow(pace: Pace): string;
  /** Warmth with its unit. */
  warmth(sum_Cd: number): string;
  area(area_m2: number): string;
  /** "first flower Tue 3 Feb (Su to Th)". */
  coming(milestone: Milestone, best: string, range: string, same: boolean): string;
  readonly task: { readonly look: string; readonly newLeaf: string; readonly newLeafWhy: string };
  readonly question: {
    stage(number: string, seconds: number): string;
    count(number: string, seconds: number): string;
  };
  readonly cannotBeRead: string;
  /** Where what the other crafts read comes from. */
  readonly offered: OfferedWords;
  readonly working: WorkingWords;
  looks(): readonly Look[];
  readonly sign: {
    readonly cold: string;
    readonly rest: string;
    pace(pace: Pace): string;
    restLeft(rest_Cd: number, wasCut: boolean): string;
    warmer(air_C: number): string;
    readonly wait: string;
    readonly notFeed: string;
    readonly notWater: string;
    readonly notCut: string;
  };
}

export interface WorkingWords {
  readonly stage: string;
  when(milestone: Milestone): string;
  readonly leafArea: string;
  readonly nodes: string;
  readonly pace: string;
  readonly sum: string;
  readonly start: string;
  readonly base: string;
  readonly optimum: string;
  readonly wait: string;
  readonly perDay: string;
  readonly air: string;
  readonly light: string;
  readonly areaThen: string;
  readonly areaUsual: string;
  readonly areaMost: string;
  readonly grown: string;
  readonly madeSince: string;
  readonly nodesThen: string;
  readonly newNode: string;
  readonly guessed: string;
  sown(date: string): string;
  seen(at: string): string;
  cut(at: string): string;
  readonly sinceStart: string;
  readonly nursery: string;
  readonly byHabit: string;
  readonly byCultivar: string;
  readonly byPot: string;
  readonly notKnown: string;
  areaFrom(from: "usual" | "sown" | "cut" | "counted", at: string): string;
  nodesFrom(from: "unknown" | "sown" | "counted", at: string): string;
  readonly days: string;
  readonly runOut: string;
  readonly drawn: string;
  readonly moves: { readonly stage: string; readonly area: string };
  readonly source: {
    readonly stage: string;
    readonly area: string;
    readonly nodes: string;
    readonly pace: string;
  };
}

export type StageSaid = Readonly<Record<StageName, string>>;
export type PlainSaid = Readonly<Record<PlainStage, string>>;
