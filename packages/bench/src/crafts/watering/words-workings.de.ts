import type { Say } from "../../words/say.ts";
import type { WorkingWords } from "./words-shape.ts";

export function workingsGerman(say: Say): WorkingWords {
  return {
    when: "wann sie Wasser will",
    howMuch: "wie viel Wasser",
    store: "Wasser übrig",
    capacity: "Wasser, das der Topf für die Pflanze hält",
    capacityModel: "C₀, nach Topf und Substrat",
    capacityLearned: "Δ, was dieser Topf seitdem gezeigt hat",
    use: "Wasser, das sie am Tag braucht",
    useLeaves: "Blätter",
    useSurface: "freies Substrat",
    leafArea: "Blattfläche",
    leafFactor: "diese Pflanze neben dem Blattmodell",
    leafModel: "Blattmodell, je m² Blatt",
    surfaceFactor: "dieser Topf neben dem Oberflächenmodell",
    surfaceModel: "Oberflächenmodell, so trocken wie jetzt",
    air: "Luft",
    light: "Licht",
    depletion: "Wasser, das seit dem Abtropfen fehlt",
    threshold: "Anteil des Wassers, der verbraucht sein soll, bevor gegossen wird",
    risk: "hingenommene Aussicht auf zu trocken vor dem nächsten Gang",
    capture: "Anteil eines Gusses, der bleibt",
    leaching: "Anteil, der herauslaufen soll",
    neighbours: "Gewichte der Nachbarn",
    drained: "Gewicht gerade abgetropft",
    fullPot: "gerade abgetropft",
    perDay: "am Tag",
    days: "Tage",
    drawn: (draws_n) =>
      `${draws_n} Austrocknungen gezogen, mit dem Zweifel an jeder Zutat; die Spanne hält 8 von 10`,
    thresholdDry: "unsere Annahme für eine Pflanze, die zwischen den Güssen trocken werden darf",
    thresholdFlowering: "unsere Annahme, solange sie blüht oder Früchte füllt",
    notSeen: "hier nie gewogen oder gegossen: geraten zwischen nass und trocken",
    seen: (what, at) => (what === "weighed" ? `gewogen ${at}` : `gegossen ${at}`),
    weighedAs: (weight_g, at) => `${say.mass(weight_g)} gewogen ${at}`,
    learnedFrom: (weights_n, looks_n) =>
      `an diesem Topf gelernt: ${say.number(weights_n)} Gewichte, ${say.number(looks_n)} Blicke und Güsse`,
    fromModel: "noch nicht gelernt: das Modell, wie es ist",
    ourAssumption: "unsere Annahme",
    dryDown: "bei bleibendem Welken gewogen",
    chance: (share_frac) =>
      `${say.number(share_frac * 20)} von 20, dass sie bis zum Gang danach zu trocken ist`,
    neighboursFrom: (count_n) => `${say.number(count_n)} Gewichte der Bank in der letzten Woche`,
    unheard: (draws_n, later_n, pours_n) =>
      `${say.number(draws_n)} davon beginnen frisch gegossen: ${say.number(later_n)} von ${say.number(pours_n)} früheren Güssen wurden später am Tag geschrieben, als es jetzt ist; der heutige steht vielleicht noch nicht im Buch`,
    movesCapacity:
      "Am meisten macht aus, was der Topf hält: ein Gewicht beim ersten bleibenden Welken würde es klären.",
    movesDepletion: "Am meisten macht aus, wie nass er jetzt ist: einmal wiegen würde es klären.",
    movesUse:
      "Am meisten macht der Verbrauch am Tag aus: zweimal wiegen im Abstand einiger Tage würde es klären.",
    sourceDate: "lognormale Ankunft eines trocknenden Topfes, gezogen; Streuungen sind unsere Annahme",
    sourceAmount:
      "Auswaschanteil: Million JB, Yeager TH, UF/IFAS ENH1268; bleibender Anteil ist unsere Annahme",
    sourceUse:
      "Energiehaushalt des Blattes: Campbell GS, Norman JM (1998) An introduction to environmental biophysics; draußen Allen RG et al. (1998) FAO-56",
    sourceStore: "Wasserhaushalt des Topfes, gewogen und gelernt (Kalman-Filter)",
    noteLater: (days_n) => `manche Ziehungen sind nach ${say.number(days_n)} Tagen noch feucht`,
    notePours: (count_n) =>
      `in ${say.number(count_n)} Güssen: an sehr trockenem Substrat läuft ein schneller Guss vorbei; übliche Praxis, keine Quelle`,
  };
}
