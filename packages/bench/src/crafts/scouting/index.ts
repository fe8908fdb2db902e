import type { Craft } from "../craft.ts";
import { scoutingAssumptions } from "./assumptions.ts";
import { scoutFold } from "./fold.ts";
import { scoutingKinds } from "./kinds.ts";
import { CRAFT, scoutLimits } from "./limits.ts";
import { scoutOutlook } from "./outlook.ts";
import { scoutPool } from "./pool.ts";
import { type ScoutSlice, startSlice } from "./slice.ts";

export { freeByDay } from "./by-day.ts";
export { scoutFold } from "./fold.ts";
export type * from "./page-shape.ts";
export type { ClockedPest, LookedAt, Pest, Tool } from "./pests.ts";
export type { ScoutSlice } from "./slice.ts";

/** Scouting: what was looked for and found, what a plant may still carry, when it may move and be sold, treatments by their label. */
export const scouting = {
  name: CRAFT,
  kinds: scoutingKinds,
  assumptions: scoutingAssumptions,
  start: (_plant, sight) => startSlice(sight),
  fold: scoutFold,
  // Pests live in the air of the days that were: nothing is stepped, all is worked out when somebody asks.
  rates: () => undefined,
  integrate: (slice) => slice,
  offers: {},
  limits: scoutLimits,
  pool: scoutPool,
  outlook: scoutOutlook,
  wrong: async () => (await import("./signs.ts")).scoutWrong,
  page: async () => (await import("./page.ts")).scoutPage,
} as const satisfies Craft<ScoutSlice, undefined>;
