import type { Drift, Shortfall, Slip } from "@sillwood/science/feed";
import type { SupplyLabel } from "../../supplies/label.ts";

/** Every sentence that only the mixing desk says. */
export interface PageOnlyWords {
  group(stage: string, strength_frac: number, pots_n: number, litres: string): string;
  dose(tool: SupplyLabel["tool"], steps_n: number, step: string, amount: string): string;
  pour(volume: string): string;
  readonly stir: string;
  readonly stirAll: string;
  fill(volume: string): string;
  readonly measure: string;
  trade(products_n: number, misfit: number, isSame: boolean): string;
  meter(low: string, high: string): string;
  readonly drift: Readonly<Record<Drift, string>>;
  cost(money: string): string;
  smallDose(name: string, amount: string, stock: string, portion: string): string;
  noSplit(name: string): string;
  noDensity(name: string): string;
  readonly neverTogether: string;
  shortfall(short: Shortfall): string;
  element(
    of: string,
    value: string,
    sd: string,
    low: string,
    high: string,
    state: "low" | "in" | "high",
  ): string;
  waterOf(name: string, pure_frac: number): string;
  usualWater(pure_frac: number): string;
  unbalanced(imbalance_frac: number): string;
  lookAgain(imbalance_frac: number): string;
  readonly softened: string;
  alkaline(alkalinity: string): string;
  readonly hard: string;
  readonly empty: string;
  readonly leftOut: string;
  bottle(n_frac: number, p_frac: number, k_frac: number): string;
  readonly noBottle: string;
  waterBreaks(limits: string): string;
  thin(pure_frac: number): string;
  notMet(short: string): string;
  readonly oneMore: string;
  readGood(reads: string): string;
  readWrong(reads: string, band: string): string;
  slip(slip: Slip, reads: string): string;
  readonly cautions: readonly string[];
  readonly working: {
    readonly title: string;
    readonly formula: string;
    sum(misfit: string): string;
    aimed(aim: string, low: string, high: string, value: string): string;
    readonly label: string;
    readonly source: string;
    readonly minimum: string;
  };
}
