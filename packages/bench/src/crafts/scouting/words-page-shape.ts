/** Sentences that only the craft's page says. */
export interface PageWords {
  head(apart_n: number, due_n: number): string;
  readonly empty: string;
  readonly rowFound: string;
  rowReleased(on: string): string;
  gateOpen(to: "move" | "sell"): string;
  gateDate(to: "move" | "sell", said: string): string;
  gateShut(to: "move" | "sell"): string;
  readonly notYet: string;
  holder(pest: string, why: string): string;
  readonly hides: string;
  readonly tooFew: string;
  habit(day: string): string;
  unseen(pests: string): string;
  cheapest(method: string, pest: string): string;
  card(n: number): string;
  warm(days_n: number, air: string): string;
  stale(air: string): string;
  label(until: string): string;
  course(pest: string, given_n: number, wanted_n: number, cleared: string): string;
  trend(says: string, doubling: string | undefined): string;
  readonly together: string;
  evidence(free: string, looks_n: number): string;
  readonly gate: Readonly<
    Record<
      | "heat"
      | "cold"
      | "warmish"
      | "airOk"
      | "thirst"
      | "thirstOk"
      | "flowers"
      | "flowersOk"
      | "lamps"
      | "repotted"
      | "repottedOk"
      | "often"
      | "oftenOk"
      | "newKind",
      (value: string) => string
    >
  >;
  win(n: string, cleared: string): string;
  never(needs: string, every: string): string;
  remedies: string;
  again(day: string): string;
  readonly courseTitle: string;
  readonly cautions: readonly string[];
  badCourse: string;
}
