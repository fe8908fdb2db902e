import type { Entry } from "../book/entry.ts";
import { type SupplyAmount, type SupplyBought, supplyKinds } from "./kinds.ts";
import type { SupplyLabel, SupplyWater } from "./label.ts";

/** What is on hand of one supply. A lot is a supply of its own. */
export interface Supply extends Omit<SupplyBought, "amount"> {
  readonly id: string;
  readonly onHand: number;
  /** All that was ever bought of it, in its unit, and what was paid for that. */
  readonly bought: number;
  readonly paid_minor: number;
  readonly countedAt_ms?: number;
  /** What its label prints, and what measures it. */
  readonly label?: SupplyLabel;
  /** Of a water: what it brings. */
  readonly water?: SupplyWater;
  readonly readAt_ms?: number;
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
        bought: (before?.bought ?? 0) + amount,
        paid_minor: (before?.paid_minor ?? 0) + (rest.price_minor ?? 0),
      });
      continue;
    }
    if (entry.kind === supplyKinds.analysed.kind) {
      const water = entry.data as unknown as SupplyWater;
      next.set(id, {
        id,
        what: "water",
        unit: "mL",
        onHand: 0,
        bought: 0,
        paid_minor: 0,
        ...before,
        name: water.name,
        water,
        readAt_ms: entry.at_ms,
      });
      continue;
    }
    if (!before) continue;
    if (entry.kind === supplyKinds.labelled.kind) {
      next.set(id, { ...before, label: entry.data as unknown as SupplyLabel, readAt_ms: entry.at_ms });
      continue;
    }
    const { amount } = entry.data as unknown as SupplyAmount;
    if (entry.kind === supplyKinds.counted.kind)
      next.set(id, { ...before, onHand: amount, countedAt_ms: entry.at_ms });
    else next.set(id, { ...before, onHand: Math.max(0, before.onHand - amount) });
  }
  return next;
}
