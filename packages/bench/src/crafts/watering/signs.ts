import { CAPACITY, chancePast, DEPLETION, meanOf } from "@sillwood/science/water";
import type { CraftWrong, Outward, Sign } from "../craft.ts";
import { amountFor } from "./amount.ts";
import { carriedTo } from "./now.ts";
import type { WaterSlice } from "./slice.ts";
import { wateringWords } from "./words.ts";

/** What a person can see that watering can say something about. */

const DRY_FROM_frac = 0.75;
const WET_UP_TO_frac = 0.4;
const HOT_C = 30;
/** So likely dry, a pot that nobody lifted may be rewetted slowly. @source our assumption */
const SURELY_DRY_frac = 0.8;
/** How much the next dusk tells: heat's leaves stand again after it, those on wet roots hang on. @source our assumption */
const DUSK = { stands: { heat: 4, wetRoots: 0.3 }, hangs: { heat: 0.1, wetRoots: 1 } } as const;

/**
 * Causes of hanging leaves, likeliest first: thirst, wet roots, heat. The pot's own record weighs first; a lifted pot
 * settles it; "can't tell" moves nothing.
 */
export function waterSigns(slice: WaterSlice, sight: Outward, seen: readonly string[]): readonly Sign[] {
  const has = (key: string) => seen.includes(key);
  const hangs = has("droops");
  if (!hangs && !has("wet medium") && !has("heavy pot") && !has("dry medium") && !has("light pot")) return [];
  const at = carriedTo(slice, sight, sight.now_ms);
  const words = wateringWords(sight.say).sign;
  const dry = chancePast(at.state, DRY_FROM_frac);
  const wet = 1 - chancePast(at.state, WET_UP_TO_frac);
  const hands = handsSay(seen);
  const hottest_C = sight
    .airAt(sight.plant.spot, sight.dateOf(sight.now_ms))
    .spells.reduce((most, spell) => Math.max(most, spell.air_C), -50);
  const left_frac = Math.max(0, 1 - meanOf(at.state, DEPLETION) / meanOf(at.state, CAPACITY));
  const last = at.pours.at(-1);
  const evidence = [
    words.left(left_frac),
    ...(last ? [words.watered(sight.say.day(last.at_ms, sight.now_ms))] : []),
  ];
  const amount = amountFor(
    at,
    sight,
    Math.max(meanOf(at.state, DEPLETION), 0.5 * meanOf(at.state, CAPACITY)),
    sight.say.units,
  );
  const volume = sight.say.volume(amount.volume_mL);
  const unsettled = hands === 0;
  const surelyDry = dry >= SURELY_DRY_frac;
  const dusk = has("stands at dusk")
    ? DUSK.stands
    : has("hangs at dusk")
      ? DUSK.hangs
      : { heat: 1, wetRoots: 1 };
  const lift = {
    question: words.liftQuestion,
    answers: [
      { key: "heavy pot", said: words.heavy },
      { key: "light pot", said: words.light },
    ],
  };
  const hangsWeight = hangs ? 1 : 0.3;
  const thirst: Sign = {
    key: "thirst",
    cause: words.thirst,
    weight: hangsWeight * (0.1 + dry) * (hands > 0 ? 8 : hands < 0 ? 0.05 : 1),
    evidence,
    ...(unsettled ? { lookApart: lift } : {}),
    doNow:
      unsettled && !surelyDry
        ? [words.doLift]
        : [dry > 0.5 || hands > 0 ? words.doRewet(volume) : words.doWater(volume)],
    doNot: [...(unsettled && !surelyDry ? [words.notWater] : []), words.notFeed, words.notDiscard],
    lookAgainIn_h: 24,
  };
  const wetRoots: Sign = {
    key: "wet roots",
    cause: hangs ? words.wetRoots : words.soaked,
    weight: (hangs ? 1 : 0.8) * (0.1 + wet) * (hands < 0 ? 8 : hands > 0 ? 0.05 : 1) * dusk.wetRoots,
    evidence,
    ...(unsettled ? { lookApart: lift } : {}),
    doNow: hands < 0 || wet > 0.8 ? [words.doRoots, words.doSaucer] : [words.doLift],
    doNot: [words.notWater, words.notFeed],
    lookAgainIn_h: 24,
  };
  const heat: Sign = {
    key: "heat",
    cause: words.heat,
    weight: hangs ? 0.25 * (hottest_C > HOT_C ? 4 : 1) * (hands === 0 ? 1 : 0.6) * dusk.heat : 0,
    evidence: [words.noonDroop],
    lookApart: {
      question: words.shadeQuestion,
      answers: [
        { key: "stands at dusk", said: words.upAgain },
        { key: "hangs at dusk", said: words.stillDown },
      ],
    },
    doNow: [words.doShade],
    // Heat does not forbid water to a pot that is dry as well.
    doNot: [...(surelyDry || hands > 0 ? [] : [words.notWater]), words.notRepot],
    lookAgainIn_h: 12,
  };
  return [thirst, wetRoots, heat].filter((sign) => sign.weight > 0).sort((a, b) => b.weight - a.weight);
}

/** What hands felt: above 0 dry, below 0 wet, 0 not known. */
function handsSay(seen: readonly string[]): number {
  const dry = seen.filter((key) => key === "light pot" || key === "dry medium").length;
  const wet = seen.filter((key) => key === "heavy pot" || key === "wet medium").length;
  return dry - wet;
}

export const waterWrong: CraftWrong<WaterSlice> = {
  looks: (say) => wateringWords(say).looks(),
  signs: waterSigns,
};
