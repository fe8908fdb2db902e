/** Sentences of the page of benches and light. */
export interface PageWords {
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

export interface CheckWords {
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
