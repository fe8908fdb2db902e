import type { Words } from "../words.ts";

export const desk: Words["desk"] = {
  title: "Tisch",
  crafts: "Handwerke und Seiten",
  craftNames: {
    watering: "Gießen",
    lighting: "Licht",
    growth: "Wachstum", potting: "Topfen",
    trimming: "Schnitt",
    scouting: "Schädlinge",
  },
  waits: (due_n) =>
    due_n === 0 ? "nichts wartet" : due_n === 1 ? "1 Aufgabe wartet" : `${due_n} Aufgaben warten`,
  wrong: "Was fehlt ihr?",
  benches: "Bänke und Luft",
  away: "Abwesend",
  supplies: "Vorräte",
  reckoner: "Rechner",
  settings: "Einstellungen",
  toTheRound: "ZUR RUNDE",
};

export const benches: Words["benches"] = {
  title: "Bänke",
  empty: "Noch keine Bank. Ein Fensterbrett ist eine Bank.",
  missing: (series) => `Es fehlt noch die Datei von ${series}: was darauf ruht, ist bis dahin eine Annahme.`,
  places: { sill: "Fensterbrett", shelf: "Regal", table: "Tisch", bed: "Beet" },
  indoors: "drinnen",
  outdoors: "im Freien",
  quarantine: "abgesondert",
  airToday: (day, night) => `${day} am Tag, ${night} nachts.`,
  lightToday: (dli) => `Licht ${dli} mol/m² am Tag.`,
  plantsOn: (plants_n, spots_n) => `${plants_n} von ${spots_n} Plätzen besetzt.`,
  toPlants: "Pflanzen",
  newBench: "NEUE BANK",
  noSuchBench: "Diese Bank steht nicht im Buch dieses Telefons.",
  moveHow:
    "Einen Topf drücken, dann den Platz, an den er kommt. Die Linie darüber ist das Licht von heute, in mol/m².",
  spotSaid: (spot, numbers, light) =>
    `Platz ${spot}, ${numbers === "" ? "frei" : `Topf ${numbers}`}: ${light}`,
  otherBench: "Andere Bank …",
  changeBench: "Ändern …",
  changeTitle: (name) => `${name} ändern`,
  moveWhere: (number) => `${number} zieht um. Wohin?`,
  dli: (said) => `${said} mol/m²`,
  setAir: "Luft…",
  weigh: "Wiegerunde",
  labels: "Etiketten",
  takeReading: "LICHT NOTIEREN",
  reckonedWith: "Gerechnet wird mit",
  air: "Luft",
  humidity: "Feuchte",
  light: "Licht am Tag",
  window: "Fenster",
  faces: (degrees) => `zeigt nach ${degrees}°`,
  care: "Vorsicht",
  lampCare:
    "Lampen und Wasser auf einem Regal: geschützte Steckdosen, Tropfschlaufen, örtliche Vorschriften.",
  newBenchTitle: "Neue Bank",
  whatIsIt: "Was ist es?",
  howManySpots: "Wie viele Plätze",
  where: "Wo",
  windowFaces: "Das Fenster zeigt nach",
  keepBench: "DIESE BANK BEHALTEN",
  keepBenchShut: "GIB IHR EINEN NAMEN",
};

export const away: Words["away"] = {
  title: "Abwesend",
  from: "Von",
  to: "Zurück am",
  refused: (reason) => `Das lässt sich nicht planen: ${reason}.`,
  others: (count_n) => (count_n === 1 ? "1 weitere hält durch." : `${count_n} weitere halten durch.`),
  wontLast: "Was nicht durchhält",
  sitter: "Für die Vertretung",
  back: "Am Tag der Rückkehr",
  print: "Blatt für die Vertretung drucken",
  keep: "DIESE TAGE BEHALTEN",
};

export const supplies: Words["supplies"] = {
  title: "Vorräte",
  care: "Vorsicht",
  labelCare:
    "Das Etikett eines Düngers oder Mittels ist Gesetz. Verschlossen halten, fern von Kindern und Essen.",
  empty: "Noch ist kein Vorrat notiert. Preis und Haltbarkeit können dabeistehen.",
  bought: "ETWAS GEKAUFT",
  what: {
    medium: "Substrat",
    pots: "Töpfe",
    feed: "Dünger",
    treatment: "Mittel",
    labels: "Etiketten",
    other: "anderes",
  },
  lot: (lot) => `Charge ${lot}`,
  expired: (date) => `zu alt seit ${date}`,
  goodUntil: (date) => `gut bis ${date}`,
  counted: (day) => `gezählt ${day}`,
  used: "Verbraucht",
  count: "Gezählt",
  thrown: "Weggeworfen",
};
