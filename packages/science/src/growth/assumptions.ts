import type { Assumption } from "../assumption.ts";
import { leafAssumptions } from "./assumptions-leaves.ts";
import { phaseAssumptions } from "./assumptions-phases.ts";
import { temperatureAssumptions } from "./assumptions-temperature.ts";

/** The numbers of the field `growth` that nobody measured for this plant; all adjustable, all shown. */
export const growthAssumptions = [
  ...temperatureAssumptions,
  ...phaseAssumptions,
  ...leafAssumptions,
] as const satisfies readonly Assumption[];

/** Keys of the field's assumptions. */
export type GrowthAssumptionKey = (typeof growthAssumptions)[number]["key"];

/** Values that someone set in place of the assumed ones. */
export type GrowthSettings = { readonly [K in GrowthAssumptionKey]?: number };
