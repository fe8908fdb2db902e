import type { WindowData } from "../../places/light/kinds.ts";

/** Sentences that only the page of benches and light says; they come with it. */
export interface PageOnlyWords {
  readonly glazing: Readonly<Record<WindowData["glazing"], string>>;
  month(month: number): string;
  /** "20 Oct (12 to 29 Oct)". */
  dateBand(date: string, low: string, high: string): string;
  readonly debt: {
    said(
      debt: string,
      outSince: string | undefined,
      catchUp: { readonly hours: string; readonly days: number } | undefined,
    ): string;
  };
  readonly page: PageWords;
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
  readonly working: PageWorkingWords;
}

/** Sentences of the page of benches and light. */
interface PageWords {
  readonly noBench: string;
  readonly noPlants: string;
  head(short_n: number, plants_n: number, month: string): string;
  setLamp(bench: string, said: string): string;
  readonly openSky: string;
  readonly noWindow: string;
  readonly lampOnly: string;
  /** "window S, double glass"; without glass where nobody said what it is. */
  window(faces: string, glass: string | undefined): string;
  guessedWindow(faces: string): string;
  /** Without a range where every day is the same. */
  spot(spot: string, number: string, light: string, need: string, days: string | undefined): string;
  freeSpot(spot: string, light: string, days: string | undefined): string;
  /** "from 6 to 12". */
  fromTo(dull: string, sunny: string): string;
  readonly enoughAllYear: string;
  shortAllYear(lamp_h: number | undefined): string;
  shortFrom(from: string, until: string, lamp_h: number | undefined): string;
  was(from: string, until: string): string;
  wasSo(said: string): string;
  bench(worst: string, short_n: number, plants_n: number): string;
  readonly allFree: string;
  turned(since_d: number, side_frac: number): string;
  readonly unsure: string;
  caseSaid(faces: string): string;
  noonAsk(bright_lux: string, bright: string, dim_lux: string, dim: string): string;
}

interface CheckWords {
  brighterThanSky(inside: string, most: string): string;
  brighterInside(inside: string, outside: string): string;
  outsideTooBright(outside: string, most: string): string;
  readonly sunDown: string;
  readonly lowSun: string;
  notGrey(outside: string): string;
  readonly swapped: string;
  readonly wasBroken: string;
  readonly asRead: string;
  readonly noWindow: string;
  readonly noLamp: string;
  readonly redAndBlue: string;
  darker(read: string, modelled: string): string;
  brighter(read: string, modelled: string): string;
  good(read: string, modelled: string): string;
  lampOff(read_umol: string, modelled_umol: string): string;
  lampGood(read_umol: string, modelled_umol: string): string;
  then(light: string, range: string, spell: string | undefined): string;
}

interface PageWorkingWords {
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
