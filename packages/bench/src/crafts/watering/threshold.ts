import type { Sight } from "../craft.ts";

/** Stages in which thirst costs flowers and fruit. */
const THIRSTY_STAGES = ["in bud", "in flower", "in fruit", "flowering", "fruiting"];

function isFlowering(sight: Sight): boolean {
  const flowers = sight.read("openFlowers_n");
  if (flowers.origin !== "assumed" && flowers.value >= 1) return true;
  return sight.plant.stage !== undefined && THIRSTY_STAGES.includes(sight.plant.stage.value);
}

/** Share of the store at which a pot should be watered, and whether flowers made it the earlier one. */
export function thresholdOf(sight: Sight): { readonly flowering: boolean; readonly threshold_frac: number } {
  const flowering = isFlowering(sight);
  return { flowering, threshold_frac: sight.assumed(flowering ? "waterAtFlowering_frac" : "waterAt_frac") };
}
