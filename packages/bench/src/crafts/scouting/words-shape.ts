import type { Look } from "../craft.ts";
import type { Arrived, Card, Confirmed, Exposed, Looked, Released, Treated } from "./kinds.ts";
import type { LookedAt, Pest, Tool } from "./pests.ts";

/** The sentences of the craft that a round, a plant page and the book need. */
export interface ScoutingWords {
  pest(pest: Pest): string;
  tool(tool: Tool): string;
  /** "tips of 3 shoots, under 6 leaves, with lens" */
  method(look: LookedAt): string;
  looked(data: Looked): string;
  card(data: Card): string;
  treated(data: Treated): string;
  arrived(data: Arrived): string;
  exposed(data: Exposed): string;
  released(data: Released): string;
  confirmed(data: Confirmed): string;
  cause(key: string): string;
  readonly limit: {
    touch(until: string): string;
    pick(until: string): string;
    readonly sell: string;
    recalled(pest: string): string;
    found(pest: string): string;
    readonly move: string;
  };
  readonly task: {
    readonly look: string;
    readonly again: string;
    readonly spray: string;
    readonly seenAny: string;
    lookWhy(since_d: number | undefined): string;
    readonly quarantineCare: string;
    sprayWhy(given_n: number, of_n: number, pests: string): string;
    readonly sprayCare: string;
  };
  readonly head: string;
  headSaid(free: string): string;
  readonly found: string;
  readonly line: string;
  lineSaid(best: string): string;
  lineFrom(from: string, to: string | undefined): string;
  readonly noDate: string;
  readonly cannotRead: string;
  readonly question: string;
  readonly sign: {
    fits(said: string): string;
    against(said: string): string;
    near(pest: string): string;
    isThere(said: string): string;
    readonly yes: string;
    readonly no: string;
    doNow(key: string): readonly string[];
    doNot(key: string): readonly string[];
  };
  looks(): readonly Look[];
  readonly working: WorkingWords;
}

export interface WorkingWords {
  readonly title: string;
  readonly formula: string;
  sum(parts: readonly string[], result: string): string;
  part(pest: string, free: string): string;
  pestFrom(looks_n: number): string;
  readonly odds: string;
  readonly oddsFrom: string;
  readonly looks: string;
  looksSaid(count_n: number): string;
  readonly fromBook: string;
  readonly source: string;
  readonly notLooked: string;
  readonly asFar: string;
  unseen(pests: string): string;
  readonly together: string;
  readonly interval: string;
  readonly intervalFrom: string;
  readonly lookTitle: string;
  readonly lookFormula: string;
  readonly sprayTitle: string;
  readonly sprayFormula: string;
}
