import type { Craft } from "../craft.ts";
import { type WaterRates, waterIntegrate, waterRates } from "./advance.ts";
import { wateringAssumptions } from "./assumptions.ts";
import { waterCame } from "./cycles.ts";
import { waterFold } from "./fold.ts";
import { wateringKinds } from "./kinds.ts";
import { CRAFT, waterLimits } from "./limits.ts";
import { waterOffers } from "./offers.ts";
import { waterOutlook } from "./outlook.ts";
import { poolOf } from "./pool.ts";
import { startSlice, type WaterSlice } from "./slice.ts";

/** Watering: when, how much and why, for each pot. */
export const watering = {
  name: CRAFT,
  kinds: wateringKinds,
  assumptions: wateringAssumptions,
  start: (_plant, sight) => startSlice(sight),
  fold: waterFold,
  rates: waterRates,
  integrate: waterIntegrate,
  offers: waterOffers,
  limits: waterLimits,
  pool: poolOf,
  outlook: waterOutlook,
  wrong: async () => (await import("./signs.ts")).waterWrong,
  away: async () => (await import("./away.ts")).waterAway,
  came: waterCame,
} as const satisfies Craft<WaterSlice, WaterRates>;
