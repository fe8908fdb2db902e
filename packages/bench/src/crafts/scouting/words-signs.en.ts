import type { Look } from "../craft.ts";
import type { ScoutingWords } from "./words-shape.ts";

export const causesEnglish: Readonly<Record<string, string>> = {
  overwater: "wet roots",
  drought: "thirst",
  aphid: "aphids",
  "spider mite": "spider mites",
  "broad mite": "broad mites",
  thrips: "thrips",
  whitefly: "whiteflies",
  "fungus gnat": "fungus gnats",
  "powdery mildew": "powdery mildew",
  virus: "a mosaic virus",
  "blossom-end rot": "blossom-end rot",
  sunscald: "sunscald",
  oedema: "oedema (corky blisters)",
  "nutrient N/Mg": "too little nitrogen or magnesium",
  "nutrient Fe/pH": "too little iron, or water too hard",
  salt: "salt in the medium",
  "cold injury": "a cold night",
  "damping-off": "damping-off",
  "something else": "something not in this list",
};

export const looksEnglish: readonly Look[] = [
  { key: "curled tips", where: "tip", said: "tips curled or narrow" },
  { key: "sticky", where: "tip", said: "sticky, with white skins" },
  { key: "yellow new leaves", where: "tip", said: "new leaves yellow" },
  { key: "fine specks", where: "leaf", said: "fine pale specks or silver streaks" },
  { key: "mosaic", where: "leaf", said: "light and dark patches, mosaic" },
  { key: "yellow old leaves", where: "leaf", said: "lower leaves yellow" },
  { key: "burnt edges", where: "leaf", said: "brown burnt edges" },
  { key: "insects seen", where: "underside", said: "small animals" },
  { key: "webbing", where: "underside", said: "fine threads" },
  { key: "white bloom", where: "underside", said: "white bloom below" },
  { key: "blisters", where: "underside", said: "corky blisters" },
  { key: "gnats", where: "stem and soil", said: "small black flies" },
  { key: "brown roots", where: "stem and soil", said: "roots brown, skin slips off" },
  { key: "collapsed stem", where: "stem and soil", said: "stem thin and fallen at the soil" },
  { key: "fruit end patch", where: "fruit", said: "sunken patch at the fruit's end" },
  { key: "lit patch", where: "fruit", said: "pale papery patch on the lit side" },
];

const PESTS = new Set(["aphid", "spider mite", "broad mite", "thrips", "whitefly", "fungus gnat"]);

export const signEnglish: ScoutingWords["sign"] = {
  fits: (said) => `fits: ${said}`,
  against: (said) => `does not fit: ${said}`,
  near: (pest) => `${pest} were found on this bench lately`,
  isThere: (said) => `Look closer: ${said}?`,
  yes: "Yes",
  no: "No",
  doNow: (key) => {
    if (key === "fungus gnat")
      return [
        "Let the top of the medium dry, hang a yellow card at the rim.",
        "A nuisance more than a harm to grown plants; seedlings suffer.",
      ];
    if (PESTS.has(key))
      return [
        "Keep it apart and look at its neighbours with a lens.",
        "Wipe or wash the tips and leaf undersides.",
      ];
    if (key === "virus")
      return [
        "Keep it apart, touch it last, wash hands and tools.",
        "A strip test or a laboratory settles it.",
      ];
    if (key === "powdery mildew") return ["Take off the leaves with bloom, give air between plants."];
    if (key === "damping-off") return ["Move air, let the surface dry, take out what fell."];
    return ["Look at the book: meter, feed, light and cold of the last two weeks."];
  },
  doNot: (key) => {
    if (key === "virus") return ["Do not sell it, do not save its seed, do not compost it."];
    if (PESTS.has(key)) return ["Do not sell or move it.", "Do not spray before the label is read."];
    return ["Do not feed or spray on a guess."];
  },
};
