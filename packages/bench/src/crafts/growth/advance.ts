import { leafAreaAfter_m2 } from "@sillwood/science/growth";
import type { Step } from "../craft.ts";
import { between, dayGrowth } from "./day-growth.ts";
import { type Clockwork, growthSettings } from "./settings.ts";
import type { GrowthSlice } from "./slice.ts";

/** What a step brings, at the warmth and light of its day. */
export interface GrowthRates {
  readonly warmth_Cd: number;
  /** Of it, since the plant was sown. */
  readonly counted_Cd: number;
  readonly nodes_n: number;
  readonly growth_per_d: number;
}

const MOST_SUM_Cd = 20_000;

export function growthRates(slice: GrowthSlice, step: Step): GrowthRates {
  const { from_ms, to_ms } = step;
  const clockwork = growthSettings(step).clockworks[slice.pepper_n] as Clockwork;
  const day = dayGrowth(step.day, clockwork);
  const warmth_Cd = between(day.development, day, from_ms, to_ms);
  const { clock } = slice;
  const fruiting = slice.sum_Cd >= clock.fruiting_Cd;
  return {
    warmth_Cd,
    counted_Cd:
      clock.at_ms <= from_ms
        ? warmth_Cd
        : clock.at_ms >= to_ms
          ? 0
          : between(day.development, day, clock.at_ms, to_ms),
    nodes_n: between(fruiting ? day.nodesFruiting : day.nodes, day, from_ms, to_ms),
    growth_per_d: day.growth_per_d,
  };
}

/** The slice at the end of the step: warmth, nodes, and leaf area towards what pot and kind allow. */
export function growthIntegrate(slice: GrowthSlice, rates: GrowthRates, step: Step): GrowthSlice {
  const { leaves, rest_Cd } = slice;
  const restLeft_Cd = rest_Cd > 0 ? Math.max(0, rest_Cd - rates.counted_Cd) : 0;
  const sum_Cd = Math.min(MOST_SUM_Cd, slice.sum_Cd + rates.counted_Cd - (rest_Cd - restLeft_Cd));
  let { leafArea_m2, grown_ln, made_n } = slice;
  if (restLeft_Cd === 0) {
    if (rest_Cd > 0 || leafArea_m2 === 0) leafArea_m2 = firstLeaves_m2(slice, sum_Cd, step);
    else if (leaves.from !== "usual" && leafArea_m2 < leaves.most_m2 && step.dt_d > 0) {
      leafArea_m2 = leafAreaAfter_m2({
        leafArea_m2,
        leafAreaMax_m2: leaves.most_m2,
        relativeGrowth_per_d: rates.growth_per_d,
        days_d: step.dt_d,
      });
      grown_ln += Math.log(leafArea_m2 / slice.leafArea_m2);
    }
    if (leafArea_m2 > 0) made_n += rates.nodes_n;
  }
  return {
    at_ms: step.to_ms,
    pepper_n: slice.pepper_n,
    clock: slice.clock,
    leaves,
    nodes: slice.nodes,
    sum_Cd,
    rest_Cd: restLeft_Cd,
    book_Cd: slice.book_Cd + rates.warmth_Cd,
    made_n,
    leafArea_m2,
    grown_ln,
    problems: slice.problems,
  };
}

/** Leaves that come out of seed or of wood, not out of leaves. */
function firstLeaves_m2(
  { rest_Cd, leafArea_m2, leaves, clock, pepper_n }: GrowthSlice,
  sum_Cd: number,
  step: Step,
): number {
  const settings = growthSettings(step);
  if (rest_Cd > 0)
    return Math.max(leafArea_m2, Math.min(leaves.most_m2, settings.regrowth_frac * leaves.usual_m2));
  const { cotyledons_Cd, cotyledonArea_m2 } = settings.clockworks[pepper_n] as Clockwork;
  return clock.how === "sown" && sum_Cd >= cotyledons_Cd ? cotyledonArea_m2 : leafArea_m2;
}
