import type { en } from "../en/index.ts";

export const wrong: (typeof en)["wrong"] = {
  title: "Was fehlt ihr?",
  which: "Welche Pflanze?",
  noPlants: "Noch keine Pflanze im Buch.",
  where: "Wo ist es zu sehen?",
  places: {
    whole: "ganze Pflanze",
    tip: "Spitze",
    leaf: "Blatt",
    underside: "Unterseite",
    "stem and soil": "Stamm und Erde",
    fruit: "Frucht",
  },
  start:
    "Den Ort an der Pflanze drücken, dann, was dort zu sehen ist. Ein Blick nach dem anderen, bis etwas sicher zu tun ist.",
  whatThere: "Was ist dort zu sehen?",
  noSignHere:
    "Für diesen Ort kennt dieses Haus noch kein Zeichen. Bitte notieren, was zu sehen ist, mit Foto.",
  youSee: "zu sehen",
  unsay: (said) => `Zurücknehmen: ${said}`,
  oneLook: "Ein Blick würde es entscheiden:",
  cantTell: "Nicht zu sagen",
  ranking: "Eine Reihenfolge, keine Wahrscheinlichkeit",
  likeliest: "am ehesten",
  then: "dann",
  floor: "Etwas, das nicht in dieser Liste steht, ist möglich.",
  nothingFits: "Nichts in dieser Liste passt dazu. Es bleibt für jemanden, der es kennt.",
  doNow: "Jetzt tun",
  doNot: "Nicht tun",
  lookAgain: "Wieder ansehen",
  likeliestIs: (cause) => `am ehesten: ${cause}`,
  photoNote: "Foto, Notiz",
  print: "Fall drucken",
  write: "NOTIEREN, der Gärtnerin sagen",
  writeShut: "ERST SAGEN, WAS ZU SEHEN IST",
};
