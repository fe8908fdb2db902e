import type { Look } from "../craft.ts";
import type { ScoutingWords } from "./words-shape.ts";

export const causesGerman: Readonly<Record<string, string>> = {
  overwater: "nasse Wurzeln",
  drought: "Durst",
  aphid: "Blattläuse",
  "spider mite": "Spinnmilben",
  "broad mite": "Weichhautmilben",
  thrips: "Thripse",
  whitefly: "Weiße Fliegen",
  "fungus gnat": "Trauermücken",
  "powdery mildew": "Echter Mehltau",
  virus: "ein Mosaikvirus",
  "blossom-end rot": "Blütenendfäule",
  sunscald: "Sonnenbrand",
  oedema: "Ödeme (korkige Blasen)",
  "nutrient N/Mg": "zu wenig Stickstoff oder Magnesium",
  "nutrient Fe/pH": "zu wenig Eisen oder zu hartes Wasser",
  salt: "Salz im Substrat",
  "cold injury": "eine kalte Nacht",
  "damping-off": "Umfallkrankheit",
  "something else": "etwas, das nicht auf dieser Liste steht",
};

export const looksGerman: readonly Look[] = [
  { key: "curled tips", where: "tip", said: "Spitzen gerollt oder schmal" },
  { key: "sticky", where: "tip", said: "klebrig, mit weißen Häuten" },
  { key: "yellow new leaves", where: "tip", said: "junge Blätter gelb" },
  { key: "fine specks", where: "leaf", said: "feine helle Punkte oder Silberstreifen" },
  { key: "mosaic", where: "leaf", said: "helle und dunkle Flecken, Mosaik" },
  { key: "yellow old leaves", where: "leaf", said: "untere Blätter gelb" },
  { key: "burnt edges", where: "leaf", said: "braune verbrannte Ränder" },
  { key: "insects seen", where: "underside", said: "kleine Tiere" },
  { key: "webbing", where: "underside", said: "feine Fäden" },
  { key: "white bloom", where: "underside", said: "weißer Belag unten" },
  { key: "blisters", where: "underside", said: "korkige Blasen" },
  { key: "gnats", where: "stem and soil", said: "kleine schwarze Fliegen" },
  { key: "brown roots", where: "stem and soil", said: "Wurzeln braun, Haut löst sich" },
  { key: "collapsed stem", where: "stem and soil", said: "Stängel am Boden dünn und umgefallen" },
  { key: "fruit end patch", where: "fruit", said: "eingesunkener Fleck am Fruchtende" },
  { key: "lit patch", where: "fruit", said: "heller papierner Fleck auf der Lichtseite" },
];

const PESTS = new Set(["aphid", "spider mite", "broad mite", "thrips", "whitefly", "fungus gnat"]);

export const signGerman: ScoutingWords["sign"] = {
  fits: (said) => `passt: ${said}`,
  against: (said) => `passt nicht: ${said}`,
  near: (pest) => `auf dieser Bank kürzlich gefunden: ${pest}`,
  isThere: (said) => `Näher hinsehen: ${said}?`,
  yes: "Ja",
  no: "Nein",
  doNow: (key) => {
    if (key === "fungus gnat")
      return [
        "Substrat oben trocknen lassen, eine Gelbtafel an den Rand hängen.",
        "Mehr lästig als schädlich für große Pflanzen; Sämlinge leiden.",
      ];
    if (PESTS.has(key))
      return [
        "Getrennt stellen und die Nachbarn mit der Lupe ansehen.",
        "Spitzen und Blattunterseiten abwischen oder abwaschen.",
      ];
    if (key === "virus")
      return [
        "Getrennt stellen, zuletzt anfassen, Hände und Geräte waschen.",
        "Ein Teststreifen oder Labor klärt es.",
      ];
    if (key === "powdery mildew") return ["Blätter mit Belag abnehmen, Luft zwischen die Pflanzen geben."];
    if (key === "damping-off") return ["Luft bewegen, Oberfläche trocknen lassen, Gefallenes entfernen."];
    return ["Ins Buch sehen: Messung, Dünger, Licht und Kälte der letzten zwei Wochen."];
  },
  doNot: (key) => {
    if (key === "virus") return ["Nicht verkaufen, keine Samen nehmen, nicht kompostieren."];
    if (PESTS.has(key))
      return ["Nicht verkaufen oder umstellen.", "Nicht spritzen, bevor das Etikett gelesen ist."];
    return ["Nicht auf Verdacht düngen oder spritzen."];
  },
};
