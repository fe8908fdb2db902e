import type { CraftWrong, Outward, Sign } from "../craft.ts";
import { type LightKept, lightOf } from "./kept.ts";
import { needOf } from "./need.ts";
import { asymmetry_frac, type LightSlice } from "./slice.ts";
import { turnDue } from "./turn.ts";
import { lightingWords } from "./words.ts";
import { lightSaid } from "./workings.ts";

const DAY_ms = 86_400_000;
/** Leaves made in dim light burn in bright light for so long after a move. @source pests sheet, sunscald: moved to stronger light within 14 d */
const HARDENING_d = 14;
/** A rise of light that unhardened leaves do not bear. @source our assumption */
const RISE_ratio = 1.8;

/** What a person can see that light can say something about. */

/** Long shoots, bleached leaves, a lean: too little light, too much of it at once, light from one side. */
function lightSigns(slice: LightSlice, sight: Outward, seen: readonly string[]): readonly Sign[] {
  const has = (key: string) => seen.includes(key);
  const signs: Sign[] = [];
  if (has("long shoots") || has("pale shoots")) signs.push(tooLittle(slice, sight));
  if (has("bleached leaves")) signs.push(scald(slice, sight));
  if (has("leaning")) signs.push(oneSide(slice, sight));
  return signs.sort((a, b) => b.weight - a.weight);
}

function tooLittle(slice: LightSlice, sight: Outward): Sign {
  const { say } = sight;
  const words = lightingWords(say).sign;
  const need = needOf(sight);
  const share = slice.week_mol_m2_d / Math.max(0.1, need.min_mol_m2_d);
  return {
    key: "too little light",
    cause: words.tooLittle,
    weight: share < 0.7 ? 2 : share < 1 ? 1.2 : 0.3,
    evidence: [words.week(lightSaid(slice.week_mol_m2_d, say), lightSaid(need.min_mol_m2_d, say))],
    lookApart: {
      question: words.leavesQuestion,
      answers: [
        { key: "pale shoots", said: words.shootsPale },
        { key: "pale old leaves", said: words.oldPale },
      ],
    },
    doNow: [words.doCloser, words.doLamp],
    doNot: [words.notFeedFirst, words.notSunAtOnce],
    lookAgainIn_h: 24 * 14,
  };
}

function scald(slice: LightSlice, sight: Outward): Sign {
  const { say } = sight;
  const words = lightingWords(say).sign;
  const { dli_mol_m2_d } = sight.airAt(sight.plant.spot, sight.dateOf(sight.now_ms));
  const moved_d =
    slice.movedAt_ms === undefined ? Number.POSITIVE_INFINITY : (sight.now_ms - slice.movedAt_ms) / DAY_ms;
  const ratio = slice.beforeMove_mol_m2_d > 0 ? dli_mol_m2_d / slice.beforeMove_mol_m2_d : 1;
  const recent = moved_d <= HARDENING_d;
  return {
    key: "scald",
    cause: words.scald,
    weight: recent && ratio > RISE_ratio ? 3 : recent ? 1 : 0.5,
    evidence: recent
      ? [
          words.moved(
            Math.round(moved_d),
            lightSaid(slice.beforeMove_mol_m2_d, say),
            lightSaid(dli_mol_m2_d, say),
          ),
        ]
      : [words.notMoved(lightSaid(dli_mol_m2_d, say))],
    lookApart: {
      question: words.scaldQuestion,
      answers: [
        { key: "lit side only", said: words.litSide },
        { key: "both sides", said: words.bothSides },
      ],
    },
    doNow: [words.doShade, words.doHarden],
    doNot: [words.notPluck, words.notMisting],
    lookAgainIn_h: 24 * 7,
  };
}

function oneSide(slice: LightSlice, sight: Outward): Sign {
  const words = lightingWords(sight.say).sign;
  const due = turnDue(slice, sight);
  const share = asymmetry_frac(slice);
  return {
    key: "light from one side",
    cause: words.oneSide,
    weight: due === undefined ? 0.3 : 1 + share,
    evidence: [words.sideShare((sight.now_ms - slice.turnedAt_ms) / DAY_ms, slice.side_frac)],
    doNow: due === undefined ? [words.doRoots] : [words.doTurn],
    doNot: [words.notStraighten],
    lookAgainIn_h: 24 * 7,
  };
}

export const lightWrong: CraftWrong<LightKept> = {
  looks: (say) => lightingWords(say).looks(),
  signs: (slice, sight, seen) => lightSigns(lightOf(slice), sight, seen),
};
