import type { Outlook, Outward } from "../craft.ts";
import { nextTrim_ms, restAfterCut } from "./rest.ts";
import type { TrimSlice } from "./slice.ts";
import { trimTasks } from "./tasks.ts";
import { trimmingWords } from "./words.ts";
import { limitWorking, restWorking } from "./workings.ts";

/** What trimming says of a plant now. */
export function trimOutlook(slice: TrimSlice, sight: Outward): Outlook {
  const words = trimmingWords(sight.say);
  const tasks = trimTasks(slice, sight);
  const rest = restAfterCut(slice, sight);
  const next_ms = nextTrim_ms(slice, sight);
  const waits = next_ms !== undefined && next_ms > sight.now_ms;
  return {
    tasks,
    ...(rest && waits
      ? {
          line: {
            work: "cut" as const,
            ...(slice.cut ? { since_ms: slice.cut.at_ms } : {}),
            said: words.notBefore(next_ms),
            dates_ms: rest.dates_ms.map((at_ms) => Math.max(at_ms, sight.now_ms)),
            origin: "assumed" as const,
          },
        }
      : {}),
    get workings() {
      const restful = restWorking(slice, sight);
      return [limitWorking(sight), ...(restful ? [restful] : []), ...tasks.map(({ working }) => working)];
    },
    problems: slice.problems.map((entry) => ({ entry, message: words.cannotRead })),
    get figures() {
      return {
        level: slice.trace ? "traced" : slice.sketch ? "sketched" : "nothing",
        ...(slice.trace ? { traced_n: slice.trace.nodes.length } : {}),
        ...(slice.plan ? { plannedCuts_n: slice.plan.cuts.length } : {}),
        ...(slice.cut ? { lastTaken_frac: slice.cut.lit_frac } : {}),
        ...(next_ms === undefined ? {} : { nextTrim_ms: next_ms }),
        bends_n: slice.bends.length,
      };
    },
  };
}
