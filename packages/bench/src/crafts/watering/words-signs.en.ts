import type { Say } from "../../words/say.ts";
import type { Look } from "../craft.ts";
import type { SignWords } from "./words-shape.ts";

export const looksEnglish = (): readonly Look[] => [
  { key: "droops", where: "whole", said: "the leaves droop" },
  { key: "light pot", where: "stem and soil", said: "the pot is light" },
  { key: "heavy pot", where: "stem and soil", said: "the pot is heavy" },
  { key: "dry medium", where: "stem and soil", said: "the medium is dry, or stands off the rim" },
  { key: "wet medium", where: "stem and soil", said: "the medium is wet, or smells" },
];

export function signsEnglish(say: Say): SignWords {
  return {
    thirst: "thirst",
    wetRoots: "wet roots",
    heat: "heat or strong sun",
    soaked: "too much water in the pot",
    left: (left_frac) => `about ${say.percent(left_frac)} of its water is left`,
    watered: (ago) => `last watered ${ago}`,
    noonDroop: "leaves may hang at noon without thirst",
    liftQuestion: "Lift the pot. Heavy for its size?",
    heavy: "heavy",
    light: "light",
    shadeQuestion: "Does it stand again an hour after dusk?",
    upAgain: "it stands",
    stillDown: "it still hangs",
    doWater: (volume) => `water it: about ${volume}`,
    doRewet: (volume) =>
      `rewet it slowly: about ${volume} in small pours, 15 min apart, or stand it in water for half an hour`,
    doRoots: "slide it out of the pot and look at the roots and the stem at the soil line",
    doSaucer: "tip the saucer out; let air in below",
    doShade: "out of the sun and away from the heater for today",
    doLift: "lift the pot first",
    notWater: "do not water",
    notFeed: "do not feed",
    notDiscard: "do not throw it away: it should stand again within a day",
    notRepot: "do not repot it today",
  };
}
