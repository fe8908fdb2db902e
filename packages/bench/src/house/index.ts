export { emptyHouse, type House, houseKinds } from "./house.ts";
export { type FoldStore, type KeptFold, keepFold, keptFold } from "./kept-fold.ts";
export { type Change, createLedger, type Ledger, type LedgerOptions } from "./ledger.ts";
export type { PlantEvent, PlantState, Runner } from "./plant-run.ts";
export type { Idle, Record } from "./records.ts";
export type { Snapshot } from "./snapshot.ts";
