import type { Look } from "../craft.ts";
import type { Looked, Watered, Weighed } from "./kinds.ts";
import type { WaterProblem } from "./slice.ts";

/** Every sentence of the craft. One catalogue a language; a missing sentence does not compile. */
export interface WateringWords {
  watered(data: Watered): string;
  weighed(data: Weighed): string;
  looked(data: Looked): string;
  readonly task: {
    readonly water: string;
    readonly look: string;
    amount(volume_mL: number): string;
    pours(volumes_mL: readonly number[], wait_min: number): string;
    readonly saucer: string;
    why(left_frac: number, use_g_d: number): string;
    rootsSaid(number: string): string;
    rootsWhy(left_frac: number): string;
    readonly rootsThen: string;
    readonly againSaid: string;
    readonly againWhy: string;
  };
  readonly limit: {
    feedDry(used_frac: number): string;
    readonly feedWilted: string;
    readonly cutWilted: string;
    readonly waterDrowned: string;
  };
  /** "Thu 16 Jan (We to Sa)". */
  date(best: string, range: string, same: boolean): string;
  later(days_n: number): string;
  /** "could be any day from ... to ...; 8 times in 10 it is". */
  dateLong(from: string, to: string): string;
  left(left_frac: number): string;
  readonly head: string;
  question: {
    weigh(number: string, seconds: number, now: string, then: string): string;
    weighDrained(number: string, seconds: number): string;
    lift(number: string, seconds: number, now: string, then: string): string;
  };
  problem(problem: WaterProblem): string;
  demandFar(factor: number): string;
  readonly chart: { readonly name: string; readonly waterHere: string };
  readonly letter: { readonly watered: string; readonly weighed: string; readonly looked: string };
  /** Where what the other crafts read comes from. */
  readonly offered: {
    readonly capacity: Readonly<Record<"measured" | "learned" | "assumed", string>>;
    readonly held: Readonly<Record<"unseen" | "balance", string>>;
  };
  readonly working: WorkingWords;
  looks(): readonly Look[];
  readonly sign: SignWords;
}

export interface WorkingWords {
  readonly when: string;
  readonly howMuch: string;
  readonly store: string;
  readonly capacity: string;
  readonly capacityModel: string;
  readonly capacityLearned: string;
  readonly use: string;
  readonly useLeaves: string;
  readonly useSurface: string;
  readonly leafArea: string;
  readonly leafFactor: string;
  readonly leafModel: string;
  readonly surfaceFactor: string;
  readonly surfaceModel: string;
  readonly air: string;
  readonly light: string;
  readonly depletion: string;
  readonly threshold: string;
  readonly risk: string;
  readonly capture: string;
  readonly leaching: string;
  readonly neighbours: string;
  readonly drained: string;
  readonly fullPot: string;
  readonly perDay: string;
  readonly days: string;
  drawn(draws_n: number): string;
  readonly thresholdDry: string;
  readonly thresholdFlowering: string;
  readonly notSeen: string;
  seen(what: "weighed" | "watered", at: string): string;
  weighedAs(weight_g: number, at: string): string;
  learnedFrom(weights_n: number, looks_n: number): string;
  readonly fromModel: string;
  readonly ourAssumption: string;
  readonly dryDown: string;
  chance(share_frac: number): string;
  neighboursFrom(count_n: number): string;
  unheard(draws_n: number, later_n: number, pours_n: number): string;
  readonly movesCapacity: string;
  readonly movesDepletion: string;
  readonly movesUse: string;
  readonly sourceDate: string;
  readonly sourceAmount: string;
  readonly sourceUse: string;
  readonly sourceStore: string;
  noteLater(days_n: number): string;
  notePours(count_n: number): string;
}

export interface SignWords {
  readonly thirst: string;
  readonly wetRoots: string;
  readonly heat: string;
  readonly soaked: string;
  left(left_frac: number): string;
  watered(ago: string): string;
  readonly noonDroop: string;
  readonly liftQuestion: string;
  readonly heavy: string;
  readonly light: string;
  readonly shadeQuestion: string;
  readonly upAgain: string;
  readonly stillDown: string;
  readonly doWater: (volume: string) => string;
  readonly doRewet: (volume: string) => string;
  readonly doRoots: string;
  readonly doSaucer: string;
  readonly doShade: string;
  readonly doLift: string;
  readonly notWater: string;
  readonly notFeed: string;
  readonly notDiscard: string;
  readonly notRepot: string;
}

export type RemedyKey = "soak" | "cooler" | "dimmer" | "group" | "wick" | "sitter";

export interface AwayWords {
  said(pots_n: number, of_n: number): string;
  pot(number: string, passes_frac: number, wilts_frac: number): string;
  remedy(key: RemedyKey): string;
  soakSum(capacity_g: number, threshold_frac: number, use_g_d: number, lasts_d: number): string;
  coolerSum(from_C: number, to_C: number, use_g_d: number, then_g_d: number): string;
  dimmerSum(use_g_d: number, then_g_d: number): string;
  groupSum(use_g_d: number, then_g_d: number): string;
  wickSum(use_g_d: number, days: number, held_g: number, reservoir_mL: number): string;
  sitterSum(waterings_n: number): string;
  sitterLine(number: string, day: string, volume: string): string;
  readonly sitterHow: string;
  readonly sitterNothing: string;
  back(number: string, left_frac: number): string;
  readonly backLook: string;
}
