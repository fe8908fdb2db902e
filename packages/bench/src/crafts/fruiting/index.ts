import type { Craft } from "../craft.ts";
import { fruitingAssumptions } from "./assumptions.ts";
import { fruitFold } from "./fold.ts";
import { fruitingKinds } from "./kinds.ts";
import { fruitOffers } from "./offers.ts";
import { fruitOutlook } from "./outlook.ts";
import { type FruitSlice, startSlice } from "./slice.ts";
import { CRAFT, fruitLimits } from "./tasks.ts";

export type * from "./page-shape.ts";
export type { FruitSlice } from "./slice.ts";

/** Fruiting: from flower to picked fruit, and how many the plant can carry. Between entries its slice stands still. */
export const fruiting = {
  name: CRAFT,
  kinds: fruitingKinds,
  assumptions: fruitingAssumptions,
  start: (_plant, sight) => startSlice(sight),
  fold: fruitFold,
  offers: fruitOffers,
  limits: fruitLimits,
  outlook: fruitOutlook,
  wrong: async () => (await import("./signs.ts")).fruitWrong,
  page: async () => (await import("./page.ts")).fruitPage,
} as const satisfies Craft<FruitSlice, never>;
