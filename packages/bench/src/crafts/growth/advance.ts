import { leafAreaAfter_m2 } from "@sillwood/science/growth";
import type { Step } from "../craft.ts";
import { between, type DayGrowth, dayGrowth } from "./day-growth.ts";
import { type Clockwork, growthSettings } from "./settings.ts";
import type { GrowthSlice, Known } from "./slice.ts";

const MOST_SUM_Cd = 20_000;

/** What the day does to a plant on such a clock; the step takes its part of it. */
export const growthRates = ({ known }: GrowthSlice, step: Step): DayGrowth =>
  dayGrowth(step.day, growthSettings(step).clockworks[known.pepper_n] as Clockwork);

/** The slice at the end of the step: warmth, nodes, and leaf area towards what pot and kind allow. */
export function growthIntegrate({ known, now }: GrowthSlice, day: DayGrowth, step: Step): GrowthSlice {
  const { from_ms, to_ms } = step;
  const { clock, leaves } = known;
  const rest_Cd = now[1];
  const warmth_Cd = between(day.development, day, from_ms, to_ms);
  const counted_Cd =
    clock.at_ms <= from_ms
      ? warmth_Cd
      : clock.at_ms >= to_ms
        ? 0
        : between(day.development, day, clock.at_ms, to_ms);
  const restLeft_Cd = rest_Cd > 0 ? Math.max(0, rest_Cd - counted_Cd) : 0;
  const sum_Cd = Math.min(MOST_SUM_Cd, now[0] + counted_Cd - (rest_Cd - restLeft_Cd));
  let made_n = now[3];
  let leafArea_m2 = now[4];
  let grown_ln = now[5];
  if (restLeft_Cd === 0) {
    if (rest_Cd > 0 || leafArea_m2 === 0)
      leafArea_m2 = firstLeaves_m2(known, rest_Cd, leafArea_m2, sum_Cd, step);
    else if (leaves.from !== "usual" && leafArea_m2 < leaves.most_m2 && to_ms > from_ms) {
      leafArea_m2 = leafAreaAfter_m2({
        leafArea_m2,
        leafAreaMax_m2: leaves.most_m2,
        relativeGrowth_per_d: day.growth_per_d,
        days_d: step.dt_d,
      });
      grown_ln += Math.log(leafArea_m2 / now[4]);
    }
    const fruiting = now[0] >= clock.fruiting_Cd;
    if (leafArea_m2 > 0) made_n += between(fruiting ? day.nodesFruiting : day.nodes, day, from_ms, to_ms);
  }
  return { known, now: [sum_Cd, restLeft_Cd, now[2] + warmth_Cd, made_n, leafArea_m2, grown_ln] };
}

/** Leaves that come out of seed or of wood, not out of leaves. */
function firstLeaves_m2(
  { leaves, clock, pepper_n }: Known,
  rest_Cd: number,
  leafArea_m2: number,
  sum_Cd: number,
  step: Step,
): number {
  const settings = growthSettings(step);
  if (rest_Cd > 0)
    return Math.max(leafArea_m2, Math.min(leaves.most_m2, settings.regrowth_frac * leaves.usual_m2));
  const { cotyledons_Cd, cotyledonArea_m2 } = settings.clockworks[pepper_n] as Clockwork;
  return clock.how === "sown" && sum_Cd >= cotyledons_Cd ? cotyledonArea_m2 : leafArea_m2;
}
