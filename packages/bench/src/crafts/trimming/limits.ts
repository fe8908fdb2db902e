import type { Limit } from "../../round/task.ts";
import type { Say } from "../../words/say.ts";
import type { Sight } from "../craft.ts";
import { restAfterCut, restAfterRoots_ms } from "./rest.ts";
import type { TrimSlice } from "./slice.ts";
import { CRAFT } from "./tasks.ts";
import { trimmingWords } from "./words.ts";

const DAY_ms = 86_400_000;
/** Fuller than this share of its water a green shoot is brittle. @source common practice, no source */
const TURGID_frac = 0.85;

/** What trimming forbids: cuts before the leaf is back or roots have rested, bends while shoots are full of water. */
export function trimLimits(slice: TrimSlice, sight: Sight, say: Say): readonly Limit[] {
  if (!slice.cut && slice.rootsAt_ms === undefined && slice.bends.length === 0 && !slice.trace) return [];
  const words = trimmingWords(say).limit;
  const on = sight.plant.id;
  const limits: Limit[] = [];
  const rest = restAfterCut(slice, sight);
  if (slice.cut && rest && rest.until_ms > sight.at_ms) {
    const why = words.regrows(slice.cut.at_ms, rest.lit_frac);
    for (const work of ["cut", "pluck"] as const)
      limits.push({
        work,
        on,
        from_ms: slice.cut.at_ms + DAY_ms,
        until_ms: rest.until_ms,
        why,
        by: CRAFT,
        firm: false,
      });
  }
  const roots_ms = restAfterRoots_ms(slice, sight);
  if (slice.rootsAt_ms !== undefined && roots_ms !== undefined && roots_ms > sight.at_ms)
    limits.push({
      work: "cut",
      on,
      from_ms: slice.rootsAt_ms,
      until_ms: roots_ms,
      why: words.roots(slice.rootsAt_ms),
      by: CRAFT,
      firm: false,
    });
  if (slice.trace) {
    const held = sight.read("waterHeld_g").value;
    const capacity = sight.read("capacity_g").value;
    if (capacity > 0 && held / capacity > TURGID_frac)
      limits.push({
        work: "bend",
        on,
        from_ms: sight.at_ms,
        until_ms: sight.at_ms + DAY_ms,
        why: words.brittle(held / capacity),
        by: CRAFT,
        firm: false,
      });
  }
  return limits;
}
