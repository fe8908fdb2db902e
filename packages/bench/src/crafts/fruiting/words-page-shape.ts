/** Sentences that only the craft's own page says. */
export interface FruitPageWords {
  head(flowers: string, plants_n: number, ripe: string): string;
  readonly nothing: string;
  openSaid(flowers: string, plants_n: number): string;
  readonly noneOpen: string;
  readonly how: string;
  open(flowers: string, isDue: boolean, last: string | undefined): string;
  keepOf(keep_n: number, has_n: number): string;
  keep(keep_n: number): string;
  readonly noneThin: string;
  readonly noneLight: string;
  total(about: string, low: string, high: string): string;
  readonly noFruit: string;
  keeping(n: number, size: string): string;
  keepingFull(n: number): string;
  price(full: string, fullMass: string, many: string, manyMass: string, share: string): string;
  set(now: string, brushed: string): string;
  setFine(now: string): string;
  dropped(list: string, day: string): string;
  pickRipe(): string;
  pickEither(): string;
  hottest(range: string): string;
  early(days: string): string;
  readonly store: string;
  heatLab(dry: string | undefined, fresh: string | undefined, method: string | undefined): string;
  heatUsual(low: string, high: string): string;
  readonly heatNone: string;
  cross(share: string): string;
  readonly crossNone: string;
  lot(kept: "none" | "bagged" | "caged" | "alone", crossed: string | undefined, until: string): string;
  test(share: string, low: string, high: string): string;
  readonly noTest: string;
  readonly careHot: string;
  readonly careFood: string;
  readonly careSeed: string;
  buds(n: number): string;
}
