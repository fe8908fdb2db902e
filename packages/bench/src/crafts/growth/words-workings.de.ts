import type { Say } from "../../words/say.ts";
import type { WorkingWords } from "./words-shape.ts";

const COMING = {
  9: "wann Sämlinge aufgehen",
  61: "wann die erste Blüte aufgeht",
  81: "wann die erste Frucht reif ist",
  "new leaves": "wann neue Blätter kommen",
} as const;

export function workingsGerman(_say: Say): WorkingWords {
  return {
    stage: "Stadium",
    when: (milestone) => COMING[milestone],
    leafArea: "Blattfläche",
    nodes: "Knoten am Haupttrieb",
    pace: "wie schnell sie heute wächst",
    sum: "S, Wärme seither",
    start: "Kennzahl am Anfang",
    base: "Tb, Temperatur, bei der sie stillsteht",
    optimum: "To, Temperatur, von der an sie am schnellsten ist",
    wait: "θ, Wärme, die das braucht",
    perDay: "am Tag",
    air: "Luft von heute",
    light: "Licht von heute",
    areaThen: "A₀, Blattfläche damals",
    areaUsual: "Blattfläche, üblich für Art und Topf",
    areaMost: "Am, größte Blattfläche in diesem Topf",
    grown: "r t, Wachstum seither durch Wärme und Licht",
    madeSince: "Knoten seither, durch Wärme",
    nodesThen: "Knoten damals",
    newNode: "P, Wärme zwischen zwei Knoten",
    guessed: "niemand hat einen Saattag oder ein Stadium gesagt",
    sown: (date) => `gesät ${date}`,
    seen: (at) => `gesehen ${at}`,
    cut: (at) => `zurückgeschnitten ${at}; sie beginnt beim ersten neuen Blatt`,
    sinceStart: "Luft ihrer Plätze, Tag für Tag",
    nursery: "Luft ihrer Plätze, und bevor sie ins Buch kam Luft, die wir annehmen",
    byHabit: "botanische Art aus der Frucht geraten",
    byCultivar: "botanische Art ihrer Sorte",
    byPot: "nach Art und Topf",
    notKnown: "nicht bekannt",
    areaFrom: (from, at) =>
      ({
        usual: "üblich für Art und Topf: niemand hat gezählt",
        sown: "seit der Saat aus den Keimblättern gewachsen",
        cut: `was der Schnitt von ${at} ließ`,
        counted: `gezählt oder gemessen ${at}`,
      })[from],
    nodesFrom: (from, at) =>
      ({ unknown: "nicht bekannt", sown: "seit der Saat gebildet", counted: `gezählt ${at}` })[from],
    days: "Tage",
    runOut:
      "die erste reife Frucht liegt zurück: Blüten, Früchte und neue Blätter gehen nebeneinander her, keine Uhr sagt was",
    drawn: "zwanzig gleich wahrscheinliche Tage; die Spanne hält 8 von 10",
    moves: {
      stage: "Am meisten macht aus, wie Pflanzen sich unterscheiden: ein Blick auf ihr Stadium klärte es.",
      area: "Am meisten macht das Wachstum seit der letzten Zählung aus: neu zählen klärte es.",
    },
    source: {
      stage:
        "Wärmesummen: unsere Annahme, aus veröffentlichten Tagen und Raten (DSSAT 4.8 Paprika; Dickson u. a. 2024); Kennzahlen: Feller u. a. 1995 (BBCH)",
      area: "Blattfläche 0,63 × Länge × Breite: Salau u. a. 2008; logistisches Wachstum nach Licht und Wärme ist unsere Annahme",
      nodes: "Blattfolge: DSSAT 4.8 Paprika; chinense: Plastochron von Biquinho, 2019",
      pace: "lineare Funktion von vier Temperaturen: DSSAT 4.8; Basis je Art: unsere Annahme zwischen veröffentlichten Werten",
    },
  };
}
