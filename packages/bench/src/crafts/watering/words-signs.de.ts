import type { Say } from "../../words/say.ts";
import type { Look } from "../craft.ts";
import type { SignWords } from "./words-shape.ts";

export const looksGerman = (): readonly Look[] => [
  { key: "droops", where: "whole", said: "die Blätter hängen" },
  { key: "light pot", where: "stem and soil", said: "der Topf ist leicht" },
  { key: "heavy pot", where: "stem and soil", said: "der Topf ist schwer" },
  { key: "dry medium", where: "stem and soil", said: "das Substrat ist trocken oder steht vom Rand ab" },
  { key: "wet medium", where: "stem and soil", said: "das Substrat ist nass oder riecht" },
];

export function signsGerman(say: Say): SignWords {
  return {
    thirst: "Durst",
    wetRoots: "nasse Wurzeln",
    heat: "Hitze oder starke Sonne",
    soaked: "zu viel Wasser im Topf",
    left: (left_frac) => `etwa ${say.percent(left_frac)} des Wassers sind übrig`,
    watered: (ago) => `zuletzt gegossen ${ago}`,
    noonDroop: "mittags können Blätter ohne Durst hängen",
    liftQuestion: "Topf anheben. Schwer für seine Größe?",
    heavy: "schwer",
    light: "leicht",
    shadeQuestion: "Steht sie eine Stunde nach der Dämmerung wieder?",
    upAgain: "sie steht",
    stillDown: "sie hängt noch",
    doWater: (volume) => `gießen: etwa ${volume}`,
    doRewet: (volume) =>
      `langsam wieder nass machen: etwa ${volume} in kleinen Güssen, 15 min dazwischen, oder eine halbe Stunde ins Wasser stellen`,
    doRoots: "aus dem Topf ziehen, Wurzeln und Stammgrund ansehen",
    doSaucer: "Untersetzer ausleeren; Luft von unten heranlassen",
    doShade: "für heute aus der Sonne und weg von der Heizung",
    doLift: "erst den Topf anheben",
    notWater: "nicht gießen",
    notFeed: "nicht düngen",
    notDiscard: "nicht wegwerfen: sie sollte binnen eines Tages wieder stehen",
    notRepot: "heute nicht umtopfen",
  };
}
