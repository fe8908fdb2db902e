import type { Say } from "../../words/say.ts";
import type { WorkingWords } from "./words-shape.ts";

/** German sentences of the workings. */
export const workingsGerman = (say: Say): WorkingWords => ({
  need: "nötiges Tageslicht",
  needFormula: "mindestens, Ziel und höchstens der Entwicklung, mit dem Ziel verschoben",
  needSum: (least, aim, most) => `mindestens ${least}, Ziel ${aim}, höchstens nützlich ${most}`,
  needNote: "Ein Bedarf ist eine Annahme, ±25 %: Blattabstand und Fruchtansatz sagen mehr.",
  stage: "Entwicklung",
  aim: "angestrebtes Tageslicht",
  windowPart: "durch das Fenster",
  lampPart: "von der Lampe",
  skyPart: "vom freien Himmel",
  week: "Licht der letzten Woche",
  weekFormula: "laufendes Mittel des Tageslichts, im Mittel dreieinhalb Tage alt",
  weekSum: (week, today) => `${week}; heute ${today}`,
  sourceLight:
    "Sonne, Himmel und Glas: Collares-Pereira & Rabl 1979, Erbs 1982, Moon & Spencer 1942; Lampen: Form und Abstandsgesetz",
  movesLamp: "Am meisten bewegt es, was die Lampe an den Blättern gibt: dort einmal messen.",
  movesWindow:
    "Am meisten bewegt es, was vom Himmel die Blätter erreicht: dort und draußen einmal Lux lesen.",
  turn: "Vierteldrehung",
  turnFormula:
    "fällig, wenn Tage seit der Drehung × Anteil des Lichts von einer Seite die erlaubten Tage erreichen",
  turnSum: (oneSided_d, after_d, side_frac) =>
    `${say.number(oneSided_d, 1)} von ${say.number(after_d, 1)} einseitigen Tagen, ${say.percent(side_frac)} am Tag`,
  sideShare: "Anteil des Lichts von einer Seite",
  fromPlace: "Fenster und Lampe des Platzes, Mittel einer Woche",
  sinceTurn: "seit der letzten Drehung",
  turnWritten: (day) => `gedreht ${day}`,
  neverTurned: "keine Drehung geschrieben: seit sie hier ist",
  turnAfter: "erlaubte einseitige Tage",
  lean: "Neigung zum Fenster",
  leanSeen: (day) => `gesehen ${day}`,
  turnTogether: (plants_n) => `Das Brett dreht zusammen: Mittel seiner ${plants_n} Töpfe.`,
  natural: "Tageslicht eines trüben Tages (3 von 10 sind trüber)",
  lampLight: "Lampe an den Blättern",
  cap: "längster Tag, Lampe und Tageslicht zusammen",
  lampHours: "Lampenstunden",
  lampFormula:
    "Stunden = (nötig − Tageslicht) / (0,0036 × Lampe), auf die Viertelstunde, höchstens der längste Tag",
  lampSum: (need, natural, ppfd, hours) => `(${need} − ${natural}) / (0,0036 × ${ppfd}) → ${hours}`,
  lampWho: (number, plants_n) =>
    plants_n === 1
      ? `Für ${number} gerechnet.`
      : `Für ${number} gerechnet: drei von vier der ${plants_n} Töpfe haben dann genug.`,
  lampSeason: (date) => `Jahreszeit vom ${date}.`,
  lampCapped: (number, cap) => `Bei ${cap} gehalten: ${number} verträgt keinen längeren Tag.`,
  lampCheap: "Zuerst im Tageslicht; was darüber geht, brennt in den billigen Stunden.",
  lampEnds: "Zuerst im Tageslicht; was darüber geht, teilen sich Morgen und Abend.",
  power: "Leistung der Lampen",
  lampWritten: "Lampe wie geschrieben",
  hours: "Stunden am Tag",
  timer: "Zeitschaltuhr",
  price: "Preis einer kWh",
  cheapHours: "davon in billigen Stunden",
  written: (day) => `geschrieben ${day}`,
  energy: "Strom",
  energyFormula: "Leistung × Stunden / 1000, mal Preis",
  energySum: (power_W, hours, energy_kWh) => `${power_W} W × ${hours} = ${energy_kWh} kWh am Tag`,
  arithmetic: "Rechnung",
  monthNote: (days_n) => `Ein Monat zählt ${days_n} Tage.`,
});
