import type { Craft } from "../craft.ts";
import { trimmingAssumptions } from "./assumptions.ts";
import { trimFold } from "./fold.ts";
import { trimmingKinds } from "./kinds.ts";
import { trimLimits } from "./limits.ts";
import { trimOutlook } from "./outlook.ts";
import { NOTHING, type TrimSlice } from "./slice.ts";
import { CRAFT } from "./tasks.ts";

export type * from "./page-shape.ts";

/** Trimming: the structure of a plant, what a cut would do before it is made, plans, bends, rest between trims. */
export const trimming = {
  name: CRAFT,
  kinds: trimmingKinds,
  assumptions: trimmingAssumptions,
  start: () => NOTHING,
  fold: trimFold,
  rates: () => undefined,
  integrate: (slice) => slice,
  offers: {},
  limits: trimLimits,
  outlook: trimOutlook,
  page: async () => (await import("./page.ts")).trimPage,
} as const satisfies Craft<TrimSlice, undefined>;
