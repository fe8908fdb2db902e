import type { Words } from "../words.ts";

export const wrong: Words["wrong"] = {
  title: "Was fehlt ihr?",
  which: "Welche Pflanze?",
  noPlants: "Noch keine Pflanze im Buch.",
  where: "Wo siehst du es?",
  places: {
    whole: "ganze Pflanze",
    tip: "Spitze",
    leaf: "Blatt",
    underside: "Unterseite",
    "stem and soil": "Stamm und Erde",
    fruit: "Frucht",
  },
  start:
    "Drücke die Stelle an der Pflanze, dann, was dort zu sehen ist. Ein Blick nach dem andern, bis ein Handgriff sicher ist.",
  whatThere: "Was ist dort zu sehen?",
  noSignHere: "Für diese Stelle kennt dieses Haus noch kein Zeichen. Schreib auf, was du siehst, mit Foto.",
  youSee: "du siehst",
  unsay: (said) => `Zurücknehmen: ${said}`,
  seeMore: "Noch etwas",
  oneLook: "Ein Blick würde es entscheiden:",
  cantTell: "Kann ich nicht sagen",
  ranking: "Eine Rangfolge, keine Wahrscheinlichkeit",
  likeliest: "am ehesten",
  then: "dann",
  floor: "Etwas, das nicht auf dieser Liste steht, ist möglich.",
  nothingFits:
    "Nichts auf dieser Liste passt zu dem, was du siehst. Es wird aufgehoben für jemanden, der es weiß.",
  doNow: "Jetzt tun",
  doNot: "Nicht tun",
  lookAgain: "Wieder ansehen",
  likeliestIs: (cause) => `am ehesten: ${cause}`,
  photoNote: "Foto, Notiz",
  print: "Fall drucken",
  write: "AUFSCHREIBEN, der Gärtnerin sagen",
  writeShut: "ERST SAGEN, WAS DU SIEHST",
};
