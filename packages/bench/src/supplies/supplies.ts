import type { Entry } from "../book/entry.ts";
import { type SupplyAmount, type SupplyBought, supplyKinds } from "./kinds.ts";

/** What is on hand of one supply. A lot is a supply of its own. */
export interface Supply extends Omit<SupplyBought, "amount"> {
  readonly id: string;
  readonly onHand: number;
  readonly paid_minor: number;
  readonly countedAt_ms?: number;
}

export type Supplies = ReadonlyMap<string, Supply>;

/** What the house learns of its supplies from one entry; a count puts right what bookkeeping believed. */
export function foldSupplies(supplies: Supplies, entry: Entry): Supplies {
  if (!entry.kind.startsWith("supply.")) return supplies;
  const next = new Map(supplies);
  for (const id of entry.on) {
    const before = next.get(id);
    if (entry.kind === supplyKinds.bought.kind) {
      const { amount, ...rest } = entry.data as unknown as SupplyBought;
      next.set(id, {
        ...before,
        ...rest,
        id,
        onHand: (before?.onHand ?? 0) + amount,
        paid_minor: (before?.paid_minor ?? 0) + (rest.price_minor ?? 0),
      });
      continue;
    }
    if (!before) continue;
    const { amount } = entry.data as unknown as SupplyAmount;
    if (entry.kind === supplyKinds.counted.kind)
      next.set(id, { ...before, onHand: amount, countedAt_ms: entry.at_ms });
    else next.set(id, { ...before, onHand: Math.max(0, before.onHand - amount) });
  }
  return next;
}
