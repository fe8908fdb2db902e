import type { MediumName } from "@sillwood/science/medium";
import type { CutBack, Filled, Placed, Prepared, RootsLooked, SaltsRead, Tested, Washed } from "./kinds.ts";

/** Every sentence of the craft. One catalogue a language; a missing sentence does not compile. */
export interface PottingWords {
  part(name: MediumName): string;
  filled(data: Filled): string;
  tested(data: Tested): string;
  prepared(data: Prepared): string;
  readonly lifted: string;
  cutBack(data: CutBack): string;
  washed(data: Washed): string;
  readonly drained: string;
  placed(data: Placed): string;
  saltsRead(data: SaltsRead): string;
  rootsLooked(data: RootsLooked): string;
  readonly cannotRead: string;
  readonly fromLedger: string;
  capacityFrom(by: "word" | "recipe" | "test", medium_mL: number, held_frac: number): string;
  /** Stands before work that can hurt. */
  readonly care: string;
  readonly limit: Readonly<Record<"cut" | "spray" | "wash" | "sell" | "feed" | "repot", string>>;
  readonly task: {
    readonly repot: string;
    readonly samePot: string;
    readonly wider: string;
    repotWhy(age_d: number, score: number): string;
    readonly flush: string;
    doses(doses_n: number, each_mL: number, wait_min: number): string;
    readonly emptySaucer: string;
    flushWhy(extract_mS_cm: number, caution_mS_cm: number): string;
  };
  readonly working: {
    readonly capacity: string;
    readonly capacityFormula: string;
    readonly volume: string;
    readonly water: string;
    readonly air: string;
    readonly unavailable: string;
    readonly fromShape: string;
    fillFrom(by: "word" | "recipe" | "test"): string;
    readonly ours: string;
    readonly trade: string;
    readonly testIt: string;
    readonly salts: string;
    readonly saltFormula: string;
    readonly held: string;
    readonly waterAll: string;
    readonly refill: string;
    readonly driest: string;
    readonly caution: string;
    readonly tap: string;
    readonly ledger: string;
    readonly readIt: string;
    readonly cautionOnly: string;
    readonly repot: string;
    readonly repotFormula: string;
    repotSum(age_d: number, score: number): string;
    readonly age: string;
    readonly storeLeft: string;
    readonly after: string;
    readonly noMark: string;
    readonly sinceMark: string;
    days(days: number): string;
  };
}
