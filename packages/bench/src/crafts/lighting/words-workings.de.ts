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
  monthLight: (month) => `Tageslicht im ${month}`,
  monthFormula: "Fenster + Lampe + Himmel, Mittel der Tage der Jahreszeit",
  monthSum: (window, lamp, sky, all) => `${window} + ${lamp} + ${sky} = ${all} mol/m²d`,
  bandNote: (dull, sunny) => `Zwei von zehn Tagen sind trüber als ${dull}, zwei heller als ${sunny}.`,
  doubt: "Zweifel am Platz",
  doubtFrom: "Glas, Abstand, was gegenüber steht, Lampe; eine Standardabweichung",
  short: "wann das Licht knapp ist",
  shortFormula: "Tage, zwischen denen das übliche Tageslicht unter dem Mindesten bleibt",
  shortSum: (darkest, low, high, need) =>
    `${darkest} (${low} bis ${high}) im dunkelsten Monat, ${need} nötig`,
  darkest: (month) => `Licht im ${month}`,
  dates: (from, until) => `Ab ${from}, bis ${until}: die Spannen kommen vom Zweifel am Platz.`,
  before: (was, read) => `Vor der letzten Messung (${read}): ${was}.`,
  notWeather:
    "Eine trübe oder helle Woche kann es um einige Tage verschieben; das steckt nicht in der Spanne.",
  lampTooLong: (wanted, cap, endless) =>
    endless
      ? `Diese Lampe kann die Lücke im dunkelsten Monat nicht schließen; ihre Art verträgt einen Tag von ${cap}.`
      : `${wanted} dieser Lampe schlössen die Lücke im dunkelsten Monat, doch ihre Art verträgt einen Tag von ${cap}: eine stärkere Lampe, oder ein anderer Platz.`,
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
  lightAt: (number, spot) => `Licht für ${number} bei ${spot}`,
  needOf: (number) => `angestrebtes Licht für ${number}`,
  seat: "besserer Platz",
  seatFormula: "nicht gedeckter Bedarf vorher − nachher, über die Töpfe, die umziehen",
  seatSum: (pots, gain) =>
    `${pots.map(({ number, before, after }) => `${number}: ${before} → ${after}`).join("; ")}; Gewinn ${gain}`,
  sourceSeat: "Zuordnungsproblem, Kuhn 1955; Gewichte unsere Annahme",
  seatNote:
    "Fehlendes Licht zählt ganz, zu viel ein Zehntel, eine Lampenstunde über dem längsten Tag ein Mol.",
  worth: "die Messung, die am meisten bringt",
  worthFormula: "Zweifel jetzt gegen Zweifel mit dieser Messung im Buch, wenn sie wie erwartet ausfällt",
  worthSum: (now, then) => `±${now} → ±${then}`,
  lightHere: "Licht dort heute",
  sourceWorth: "unsere Annahme: ein Paar halbiert, was Geometrie, Glas und Himmelsmodell offen lassen",
  worthLampNote: "In Blatthöhe, das Gerät waagrecht, ohne Tageslicht; niemand beugt sich darüber.",
  worthNote:
    "Ein Paar gilt am besten bei gleichmäßig grauem Himmel, beide Messungen in zwei Minuten, das Gerät waagrecht.",
});
