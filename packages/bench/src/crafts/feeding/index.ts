import type { Craft } from "../craft.ts";
import { feedingAssumptions } from "./assumptions.ts";
import { feedingKinds } from "./kinds.ts";
import { CRAFT, feedAsks, feedLimitsOf, feedOutlook } from "./outlook.ts";
import { type FeedSlice, feedFold, startSlice } from "./slice.ts";

export type * from "./page-shape.ts";

/** Feeding: what is in each bottle, what the plant uses, what is left in the pot, and the dose in the tools at hand. */
export const feeding = {
  name: CRAFT,
  kinds: feedingKinds,
  assumptions: feedingAssumptions,
  start: startSlice,
  fold: feedFold,
  offers: {},
  limits: feedLimitsOf,
  outlook: feedOutlook,
  asks: feedAsks,
  wrong: async () => (await import("./signs.ts")).feedWrong,
  page: async () => {
    const { feedPage } = await import("./page.ts");
    return feedPage;
  },
} as const satisfies Craft<FeedSlice, undefined>;
