import type { Look } from "../craft.ts";
import type { Leaning, Turned } from "./kinds.ts";
import type { NeedStage } from "./need.ts";

/** Every sentence of the craft. One catalogue a language; a missing sentence does not compile. */
export interface LightingWords {
  turned(data: Turned): string;
  leaning(data: Leaning): string;
  readonly stage: Readonly<Record<NeedStage, string>>;
  days(days: number): string;
  hours(hours: number): string;
  /** "6 to 12". */
  range(low: string, high: string): string;
  /** "9 of 12". */
  ofNeeded(light: string, need: string): string;
  readonly head: string;
  readonly task: {
    readonly turn: string;
    readonly quarter: string;
    together(plants_n: number): string;
    why(since_d: number, side_frac: number): string;
    whyLean(lean_deg: number): string;
  };
  question(number: string, now: string, then: string): string;
  readonly cannotRead: string;
  readonly lamp: LampWords;
  /** Where the light that a plant catches comes from. */
  readonly caughtFrom: string;
  readonly working: WorkingWords;
  looks(): readonly Look[];
  readonly sign: SignWords;
}

export interface LampWords {
  set(on: string, off: string, hours_h: number): string;
  readonly stayOff: string;
  readonly out: string;
  outSince(day: string): string;
  isSet(on: string, off: string, hours_h: number, written: boolean): string;
  readonly isOff: string;
  near(difference: string): string;
  onceAWeek(since_d: number): string;
  short(short: string, cap_h: number, wanted_umol: string | undefined): string;
  energy(kWh_d: string, cost: string | undefined, perPlant: string | undefined): string;
  ask(bench: string, on: string, off: string, now: string): string;
  askOff(bench: string, now: string): string;
  readonly isSetNow: string;
}

export interface SignWords {
  readonly tooLittle: string;
  readonly scald: string;
  readonly oneSide: string;
  week(light: string, need: string): string;
  moved(days: number, before: string, now: string): string;
  notMoved(now: string): string;
  sideShare(since_d: number, side_frac: number): string;
  readonly leavesQuestion: string;
  readonly shootsPale: string;
  readonly oldPale: string;
  readonly scaldQuestion: string;
  readonly litSide: string;
  readonly bothSides: string;
  readonly doCloser: string;
  readonly doLamp: string;
  readonly doShade: string;
  readonly doHarden: string;
  readonly doTurn: string;
  readonly doRoots: string;
  readonly notFeedFirst: string;
  readonly notSunAtOnce: string;
  readonly notPluck: string;
  readonly notMisting: string;
  readonly notStraighten: string;
}

export interface WorkingWords {
  readonly need: string;
  readonly needFormula: string;
  needSum(least: string, aim: string, most: string): string;
  readonly needNote: string;
  readonly stage: string;
  readonly aim: string;
  readonly windowPart: string;
  readonly lampPart: string;
  readonly skyPart: string;
  readonly week: string;
  readonly weekFormula: string;
  weekSum(week: string, today: string): string;
  readonly sourceLight: string;
  readonly movesLamp: string;
  readonly movesWindow: string;
  readonly turn: string;
  readonly turnFormula: string;
  turnSum(oneSided_d: number, after_d: number, side_frac: number): string;
  readonly sideShare: string;
  readonly fromPlace: string;
  readonly sinceTurn: string;
  turnWritten(day: string): string;
  readonly neverTurned: string;
  readonly turnAfter: string;
  readonly lean: string;
  leanSeen(day: string): string;
  turnTogether(plants_n: number): string;
  readonly natural: string;
  readonly lampLight: string;
  readonly cap: string;
  readonly lampHours: string;
  readonly lampFormula: string;
  lampSum(need: string, natural: string, ppfd: string, hours: string): string;
  lampWho(number: string, plants_n: number): string;
  lampSeason(date: string): string;
  lampCapped(number: string, cap: string): string;
  readonly lampCheap: string;
  readonly lampEnds: string;
  readonly power: string;
  readonly lampWritten: string;
  readonly hours: string;
  readonly timer: string;
  readonly price: string;
  readonly cheapHours: string;
  written(day: string): string;
  readonly energy: string;
  readonly energyFormula: string;
  energySum(power_W: string, hours: string, energy_kWh: string): string;
  readonly arithmetic: string;
  monthNote(days_n: number): string;
}
