import { nutritionSigns } from "@sillwood/science/feed";
import { readingKinds } from "../../readings.ts";
import type { CraftWrong, Outward, Sign } from "../craft.ts";
import type { FeedSlice } from "./slice.ts";
import { feedingWords } from "./words.ts";

const LOOK_AGAIN_h = 168;

/** Lacks and excesses that fit what is seen, weighed by what the ledger of the pot says. */
function feedSigns(slice: FeedSlice, sight: Outward, seen: readonly string[]): readonly Sign[] {
  const { say, read, now_ms } = sight;
  const words = feedingWords(say);
  const salt = read("saltAtRefill_mS_cm");
  const nitrogen = read("nitrogen_mg");
  const left_mg_L =
    (1000 * nitrogen.value) / Math.max(1, read("capacity_g").value * sight.assumed("feedWaterHeld"));
  const isKept = nitrogen.value !== readingKinds.nitrogen_mg.usual(sight.plant, sight.at_ms).value;
  // What the ledger says shifts the ranking; where nobody keeps one it says nothing.
  const known = (key: string): number => {
    if (key === "nitrogen") return isKept ? (left_mg_L < 30 ? 1.5 : left_mg_L > 100 ? 0.4 : 1) : 1;
    if (key === "salt")
      return salt.origin !== "assumed" ? (salt.value > 3 ? 1.6 : salt.value < 1.5 ? 0.5 : 1) : 1;
    if (key === "potassium") return salt.origin !== "assumed" && salt.value > 3 ? 0.5 : 1;
    if (key === "too much nitrogen") return isKept ? (left_mg_L > 180 ? 1.5 : left_mg_L < 60 ? 0.3 : 1) : 1;
    return 1;
  };
  const evidence = [
    ...(isKept ? [words.evidenceNitrogen(say.number(left_mg_L, 0))] : []),
    ...(salt.origin !== "assumed" ? [words.evidenceSalt(say.number(salt.value, 1))] : []),
    slice.fedAt_ms === undefined ? words.evidenceNever : words.evidenceFed(say.day(slice.fedAt_ms, now_ms)),
  ];
  return nutritionSigns
    .flatMap(({ key, explains }): Sign[] => {
      const weight = seen.reduce((sum, each) => sum + (explains[each] ?? 0), 0) * known(key);
      if (weight <= 0) return [];
      const said = words.signs[key];
      return [
        {
          key: `feeding:${key}`,
          cause: said.cause,
          weight,
          evidence,
          lookApart: {
            question: said.question,
            answers: [
              { key: "yes", said: said.yes },
              { key: "no", said: said.no },
            ],
          },
          doNow: [said.doNow],
          doNot: [said.doNot, words.notMany],
          lookAgainIn_h: LOOK_AGAIN_h,
        },
      ];
    })
    .toSorted((one, other) => other.weight - one.weight);
}

/** What feeding brings to the what-is-wrong desk. */
export const feedWrong: CraftWrong<FeedSlice> = {
  looks: (say) => feedingWords(say).looks(),
  signs: feedSigns,
};
