import type { CraftWrong, Outward, Sign } from "../craft.ts";
import { paceToday } from "./pace.ts";
import { type GrowthSlice, growingAt } from "./slice.ts";
import { growthWords } from "./words.ts";

const STANDS = "no new leaves";
const FORTNIGHT_h = 14 * 24;
/** How well each cause explains a standstill: where the book shows it, and where it does not. @source our assumption */
const WEIGHT = { cold: 1.5, cool: 0.5, warm: 0.05, rest: 2 } as const;
/** So far above the base of its leaves a plant moves on. @source our assumption */
const WARMER_C = 6;

/** Why a plant makes no new leaves: it stands too cold, or it has not broken buds since it was cut back. */
function growthSigns(kept: GrowthSlice, sight: Outward, seen: readonly string[]): readonly Sign[] {
  if (!seen.includes(STANDS)) return [];
  const growing = growingAt(kept, sight.at_ms);
  const words = growthWords(sight.say).sign;
  const pace = paceToday(growing, sight, sight.now_ms);
  const signs: Sign[] = [
    {
      key: "cold stop",
      cause: words.cold,
      weight: pace.slow === "no" ? (pace.usual_frac < 0.5 ? WEIGHT.cool : WEIGHT.warm) : WEIGHT.cold,
      evidence: [words.pace(pace)],
      doNow: [words.warmer(pace.nodeBase_C + WARMER_C)],
      doNot: [words.notFeed, words.notWater],
      lookAgainIn_h: FORTNIGHT_h,
    },
  ];
  if (growing.rest_Cd > 0)
    signs.push({
      key: "at rest",
      cause: words.rest,
      weight: WEIGHT.rest,
      evidence: [words.restLeft(growing.rest_Cd, growing.clock.how === "cut")],
      doNow: [words.wait],
      doNot: [words.notFeed, words.notCut],
      lookAgainIn_h: FORTNIGHT_h,
    });
  return signs.sort((a, b) => b.weight - a.weight);
}

export const growthWrong: CraftWrong<GrowthSlice> = {
  looks: (say) => growthWords(say).looks(),
  signs: growthSigns,
};
