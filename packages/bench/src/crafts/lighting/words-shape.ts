import type { WindowData } from "../../places/light/kinds.ts";
import type { Look } from "../craft.ts";
import type { Leaning, Turned } from "./kinds.ts";
import type { NeedStage } from "./need.ts";
import type { CheckWords, LampWords, PageWords } from "./words-page-shape.ts";

/** Every sentence of the craft. One catalogue a language; a missing sentence does not compile. */
export interface LightingWords {
  turned(data: Turned): string;
  leaning(data: Leaning): string;
  readonly stage: Readonly<Record<NeedStage, string>>;
  readonly glazing: Readonly<Record<WindowData["glazing"], string>>;
  month(month: number): string;
  days(days: number): string;
  hours(hours: number): string;
  /** "6 to 12". */
  range(low: string, high: string): string;
  /** "9 of 12". */
  ofNeeded(light: string, need: string): string;
  /** "20 Oct (12 to 29 Oct)". */
  dateBand(date: string, low: string, high: string): string;
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
  readonly debt: {
    said(
      debt: string,
      outSince: string | undefined,
      catchUp: { readonly hours: string; readonly days: number } | undefined,
    ): string;
  };
  readonly page: PageWords;
  readonly lamp: LampWords;
  readonly check: CheckWords;
  readonly seats: {
    better(first: string): string;
    readonly best: string;
    readonly few: string;
    swap(number: string, other: string, before: string, after: string, otherEnough: boolean): string;
    move(number: string, to: string, before: string, after: string): string;
    gain(gain: string): string;
  };
  readonly worth: {
    pair(spot: string, time: string, change: string): string;
    lamp(spot: string, time: string, change: string): string;
    dates(now: string, then: string): string;
    light(now: string, then: string): string;
  };
  readonly caution: {
    readonly water: string;
    readonly eyes: string;
    load(power_W: string): string;
    tooClose(bench: string, distance: string): string;
    readonly hot: string;
    readonly sun: string;
  };
  readonly working: WorkingWords;
  looks(): readonly Look[];
  readonly sign: SignWords;
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
  monthLight(month: string): string;
  readonly monthFormula: string;
  monthSum(window: string, lamp: string, sky: string, all: string): string;
  bandNote(dull: string, sunny: string): string;
  readonly doubt: string;
  readonly doubtFrom: string;
  readonly short: string;
  readonly shortFormula: string;
  shortSum(darkest: string, low: string, high: string, need: string): string;
  darkest(month: string): string;
  dates(from: string, until: string): string;
  before(was: string, read: string): string;
  readonly notWeather: string;
  lampTooLong(wanted: string, cap: string, endless: boolean): string;
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
  lightAt(number: string, spot: string): string;
  needOf(number: string): string;
  readonly seat: string;
  readonly seatFormula: string;
  seatSum(
    pots: readonly { readonly number: string; readonly before: string; readonly after: string }[],
    gain: string,
  ): string;
  readonly sourceSeat: string;
  readonly seatNote: string;
  readonly worth: string;
  readonly worthFormula: string;
  worthSum(now: string, then: string): string;
  readonly lightHere: string;
  readonly sourceWorth: string;
  readonly worthNote: string;
  readonly worthLampNote: string;
}
