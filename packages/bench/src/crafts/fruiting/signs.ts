import type { CraftWrong, Outward, Sign } from "../craft.ts";
import { fruitNow } from "./now.ts";
import type { FruitSlice } from "./slice.ts";
import { flowerAir } from "./warmth.ts";
import { fruitingWords } from "./words.ts";
import { aboutSaid } from "./workings.ts";

/** Flowers that drop, fruit that stays small: a load that the light does not feed, no pollen, air that flowers do not bear. */
function fruitSigns(slice: FruitSlice, sight: Outward, seen: readonly string[]): readonly Sign[] {
  const drops = seen.includes("flowers drop");
  if (!drops && !seen.includes("small fruit")) return [];
  const { say } = sight;
  const words = fruitingWords(say).sign;
  const now = fruitNow(slice, sight);
  const setting = now.setting();
  const capacity = now.capacity();
  const has_n = slice.fruits?.n ?? 0;
  const over = capacity.fruits_n > 0 ? has_n / capacity.fruits_n : 0;
  const air = flowerAir(sight.airAt(sight.plant.spot, sight.dateOf(sight.now_ms)));
  const chance = words.chance(say.percent(setting.chance_frac), say.percent(setting.brushed_frac));
  const lookApart = {
    question: words.lookQuestion,
    answers: [
      { key: "tiny fruit", said: words.lookAnswers[0] },
      { key: "flower only", said: words.lookAnswers[1] },
    ],
  };
  const sign = (
    key: string,
    cause: string,
    weight: number,
    evidence: readonly string[],
    doNow: string,
  ): Sign => ({
    key,
    cause,
    weight,
    evidence,
    lookApart,
    doNow: [doNow],
    doNot: [words.doNot],
    lookAgainIn_h: 7 * 24,
  });
  const withFruit = seen.includes("tiny fruit") ? 1.5 : 1;
  const withoutFruit = seen.includes("flower only") ? 1.5 : 1;
  const signs = [
    sign(
      "too much fruit",
      words.hungry,
      withFruit * (over > 1.25 ? 2 : 0.5),
      has_n > 0 ? [words.load(say.number(has_n, 0), aboutSaid(capacity.fruits_n, sight))] : [chance],
      words.hungryDo,
    ),
  ];
  if (drops) {
    signs.push(
      sign(
        "no pollen moved",
        words.pollen,
        withoutFruit * (1 - setting.pollinated_frac) * 2.2,
        [chance],
        words.pollenDo,
      ),
      sign(
        "air too hot or cold for flowers",
        words.warmth,
        withoutFruit * (1 - setting.warmth_frac) * 2,
        [words.air(say.temperature(air.day_C), say.temperature(air.night_C))],
        words.warmthDo,
      ),
    );
  }
  return signs.sort((a, b) => b.weight - a.weight);
}

export const fruitWrong: CraftWrong<FruitSlice> = {
  looks: (say) => fruitingWords(say).looks(),
  signs: fruitSigns,
};
