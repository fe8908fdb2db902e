import { clearancePath } from "@sillwood/science/pests";
import type { Outward } from "../craft.ts";
import { airOf, responseIn } from "./air-hours.ts";
import { CLOCKS, clockedPests } from "./pests.ts";
import type { ScoutSlice } from "./slice.ts";
import { caseOf, watchOf, watchStart_ms } from "./watch.ts";

/**
 * What was believed on each day of a watch, by what had been seen until then: chance to carry none of the pests. For scoring
 * against the truth of a simulated nursery; days on which a find came already are not to be asked about.
 */
export function freeByDay(slice: ScoutSlice, sight: Outward, days_ms: readonly number[]): readonly number[] {
  const start_ms = watchStart_ms(slice) ?? sight.now_ms;
  const air = airOf(slice, sight, Math.min(start_ms, days_ms[0] ?? start_ms));
  const days = days_ms.map((at_ms) => air.dayOf(at_ms));
  return clockedPests.reduce<readonly number[]>(
    (product, pest) => {
      const of = caseOf(slice, sight, pest, start_ms);
      if (of.state === "infested") return product.map(() => 0);
      const watch = watchOf({
        slice,
        sight,
        pool: undefined,
        air,
        response: responseIn(air, CLOCKS[pest]),
        pest,
        of,
        plan: [],
        planDays: [],
      });
      const from = air.dayOf(of.start_ms);
      const path = clearancePath(
        watch,
        days.map((day) => Math.max(day, from)),
      );
      return product.map((free, i) => free * (path[i]?.free_frac ?? 0));
    },
    days_ms.map(() => 1),
  );
}
