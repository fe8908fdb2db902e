import type { Craft } from "../craft.ts";
import { growthIntegrate, growthRates } from "./advance.ts";
import { growthAssumptions } from "./assumptions.ts";
import { startSlice } from "./clock.ts";
import type { DayGrowth } from "./day-growth.ts";
import { growthFold } from "./fold.ts";
import { growthKinds } from "./kinds.ts";
import { growthOffers } from "./offers.ts";
import { growthOutlook } from "./outlook.ts";
import type { GrowthSlice } from "./slice.ts";
import { CRAFT } from "./tasks.ts";

/** Growth: how far each plant has come, its leaves and nodes, by warmth, light and what people see. */
export const growth = {
  name: CRAFT,
  kinds: growthKinds,
  assumptions: growthAssumptions,
  start: startSlice,
  fold: growthFold,
  rates: growthRates,
  integrate: growthIntegrate,
  offers: growthOffers,
  limits: () => [],
  outlook: growthOutlook,
  wrong: async () => (await import("./signs.ts")).growthWrong,
} as const satisfies Craft<GrowthSlice, DayGrowth>;
