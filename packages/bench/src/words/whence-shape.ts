/** Where the house's own numbers come from: a bench is called by its name, a date is of the site. */
export interface WhenceWords {
  readonly air: {
    logger(bench: string): string;
    written(bench: string): string;
    usualRoom(dayAir_C: number, humidity_frac: number): string;
  };
  readonly weather: {
    record(date: string): string;
    forecast(date: string): string;
    readonly lastDaysAndSeason: string;
    readonly lastDays: string;
    readonly season: string;
    readonly nothing: string;
  };
  readonly light: {
    written(bench: string | undefined): string;
    paired(bench: string, pairs_n: number): string;
    readonly guessed: string;
    window(bench: string): string;
    lamp(bench: string): string;
    readonly directionUnknown: string;
    readonly radiation: Readonly<Record<"measured" | "temperature" | "season" | "usual", string>>;
    readonly usual: string;
  };
  capacity(medium: "spongy" | "bark" | "gritty" | "unknown", medium_mL: number, held_frac: number): string;
  leaves(leaves_n: number, length_cm: number, width_cm: number): string;
  readonly leavesUsual: string;
  readonly waterUnknown: string;
  readonly noFlowers: string;
  seen(stage: string): string;
  readonly noStage: string;
  readonly noWarmth: string;
  readonly noNodes: string;
  readonly noLedger: string;
}
