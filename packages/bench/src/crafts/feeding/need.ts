import {
  type FeedStage,
  feedLimits,
  type MixAim,
  type MixLimits,
  stageTargets,
} from "@sillwood/science/feed";
import type { Outward, Sight } from "../craft.ts";
import { aimKey, fed } from "./assumptions.ts";
import type { FeedSlice } from "./slice.ts";

const DAY_ms = 86_400_000;

/** The stage for which a plant is fed, by what grows on it, what was cut from it and the time of year. */
export function feedStage(slice: FeedSlice, sight: Sight): FeedStage {
  const since = (at_ms: number | undefined) =>
    at_ms === undefined ? Number.POSITIVE_INFINITY : (sight.at_ms - at_ms) / DAY_ms;
  if (since(slice.cutAt_ms) < 2 * sight.assumed("feedAfterCut_d")) return "after a hard cut";
  const bbch = sight.read("stage_bbch").value;
  if (bbch >= 70) return bbch < 90 ? "in fruit" : "in leaf";
  if (bbch >= 51) return "in flower";
  if (bbch > 0 && bbch < 14) return "seedling";
  return isDark(sight) ? "winter" : "in leaf";
}

/** The four dark months, on either half of the earth. */
function isDark({ at_ms, dateOf, site }: Sight): boolean {
  const month = Number(dateOf(at_ms).slice(5, 7));
  const north = site.latitude_deg >= 0;
  return north ? month >= 11 || month <= 2 : month >= 5 && month <= 8;
}

/** What a mix for a stage is aimed at, as the grower has adjusted it. */
export function aimsOf(
  stage: FeedStage,
  assumed: Sight["assumed"],
  strength_frac: number,
): readonly MixAim[] {
  const weights = { N: 3, P: 1, K: 2, Ca: 2, Mg: 1 } as const;
  return fed.map((of) => {
    const published = stageTargets[stage].of[of];
    const aim_mg_L = assumed(aimKey(of, stage)) * strength_frac;
    const scale = aim_mg_L / published.aim_mg_L;
    return {
      of,
      aim_mg_L,
      low_mg_L: published.low_mg_L * scale,
      high_mg_L: published.high_mg_L * scale,
      weight: weights[of],
    };
  });
}

export const limitsOf = (stage: FeedStage): MixLimits => ({
  ammoniumShare_frac: stageTargets[stage].ammoniumShare_frac,
  ammoniumN_mg_L: feedLimits.ammoniumN_mg_L,
  Na_mg_L: feedLimits.Na_mg_L,
  Cl_mg_L: feedLimits.Cl_mg_L,
  B_mg_L: feedLimits.B_mg_L,
  conductivity_mS_cm: stageTargets[stage].conductivity_mS_cm,
});

/** Half strength first, in fresh medium and after a root wash. */
export function strengthOf(slice: FeedSlice, sight: Outward | Sight): number {
  const fresh_ms = Math.max(slice.freshAt_ms, slice.washedAt_ms ?? 0);
  const isFirst = (slice.fedAt_ms ?? 0) < fresh_ms;
  return isFirst ? sight.assumed("feedFirst_frac") : 1;
}
