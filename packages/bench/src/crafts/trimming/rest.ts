import { normalQuantile } from "@sillwood/science/chance";
import { regrowthTime_d } from "@sillwood/science/shape";
import type { Sight } from "../craft.ts";
import type { TrimSlice } from "./slice.ts";

const DAY_ms = 86_400_000;
/** Spread of the pace of regrowth: light and warmth of a room. @source our assumption */
const REGROWTH_SPREAD_frac = 0.3;
const DRAWS_n = 20;

/** Until when leaf lost by the last cut is expected back, and twenty equally likely dates. */
export interface Rest {
  readonly until_ms: number;
  readonly dates_ms: readonly number[];
  readonly days_d: number;
  readonly lit_frac: number;
}

export function restAfterCut(slice: TrimSlice, sight: Pick<Sight, "assumed">): Rest | undefined {
  if (!slice.cut || slice.cut.lit_frac <= 0) return undefined;
  const { at_ms, lit_frac } = slice.cut;
  const days_d = regrowthTime_d({
    removed_frac: Math.min(0.99, lit_frac),
    leafRegrowth_per_d: sight.assumed("leafRegrowth_per_d"),
  });
  const dates_ms = Array.from({ length: DRAWS_n }, (_, draw) => {
    const factor = Math.exp(normalQuantile((draw + 0.5) / DRAWS_n) * REGROWTH_SPREAD_frac);
    return at_ms + days_d * factor * DAY_ms;
  });
  return { until_ms: at_ms + days_d * DAY_ms, dates_ms, days_d, lit_frac };
}

/** Until when roots that were washed or cut ask for rest. */
export function restAfterRoots_ms(slice: TrimSlice, sight: Pick<Sight, "assumed">): number | undefined {
  return slice.rootsAt_ms === undefined
    ? undefined
    : slice.rootsAt_ms + sight.assumed("restAfterRoots_d") * DAY_ms;
}

/** From when on the next trim may be: the later of both rests. */
export function nextTrim_ms(slice: TrimSlice, sight: Pick<Sight, "assumed">): number | undefined {
  const ends = [restAfterCut(slice, sight)?.until_ms, restAfterRoots_ms(slice, sight)].filter(
    (each) => each !== undefined,
  );
  return ends.length > 0 ? Math.max(...ends) : undefined;
}
