import type { Sight } from "../craft.ts";

/** Codes of the stages in which thirst costs flowers and fruit: from the first bud to ripe fruit. @source BBCH, Feller 1995 */
const THIRSTY_BBCH = { from: 51, to: 89 } as const;

function isFlowering(sight: Sight): boolean {
  const flowers = sight.read("openFlowers_n");
  if (flowers.origin !== "assumed" && flowers.value >= 1) return true;
  const stage = sight.read("stage_bbch").value;
  return stage >= THIRSTY_BBCH.from && stage <= THIRSTY_BBCH.to;
}

/** Share of the store at which a pot should be watered, and whether flowers made it the earlier one. */
export function thresholdOf(sight: Sight): { readonly flowering: boolean; readonly threshold_frac: number } {
  const flowering = isFlowering(sight);
  return { flowering, threshold_frac: sight.assumed(flowering ? "waterAtFlowering_frac" : "waterAt_frac") };
}
