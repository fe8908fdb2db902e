import type { Craft } from "../craft.ts";
import { pottingAssumptions } from "./assumptions.ts";
import { potFold } from "./fold.ts";
import { pottingKinds } from "./kinds.ts";
import { CRAFT, potLimits } from "./limits.ts";
import { potOffers } from "./offers.ts";
import { potOutlook } from "./outlook.ts";
import { type PotSlice, startSlice } from "./slice.ts";

export type * from "./page-shape.ts";

/** Potting: what a pot holds by its shape and medium, when it wants fresh medium, what salts it carries, what must wait after. */
export const potting = {
  name: CRAFT,
  kinds: pottingKinds,
  assumptions: pottingAssumptions,
  start: startSlice,
  fold: potFold,
  offers: potOffers,
  limits: potLimits,
  outlook: potOutlook,
  page: async () => {
    const { potPageOf } = await import("./page.ts");
    return (world, ask) => potPageOf(world, ask);
  },
} as const satisfies Craft<PotSlice>;
