import type { Say } from "../../words/say.ts";
import type { PageOnlyWords } from "./words-page-shape.ts";

/** German sentences of the mixing desk. */
export function pageGerman(say: Say): PageOnlyWords {
  const percent = (share_frac: number) => say.percent(share_frac);
  const grade = (share_frac: number) => say.number(100 * share_frac, 1);
  const rain = (pure_frac: number) => (pure_frac > 0 ? `, ${percent(pure_frac)} Regen darin` : "");
  return {
    group: (stage, strength_frac, pots_n, litres) =>
      `${stage}${strength_frac < 1 ? `, ${percent(strength_frac)} Stärke` : ""}: ${pots_n === 0 ? "kein Topf wartet" : pots_n === 1 ? "1 Topf" : `${pots_n} Töpfe`}, ${litres}`,
    dose: (tool, steps_n, step, amount) =>
      ({
        syringe: `${steps_n} ${steps_n === 1 ? "Hub" : "Hübe"} der ${step}-Spritze (${amount})`,
        scale: `${amount} auf der Waage`,
        spoon: `${steps_n} gestrichene ${steps_n === 1 ? "Löffel" : "Löffel"} zu ${step} (${amount})`,
      })[tool],
    pour: (volume) => `${volume} davon vorlegen, lauwarm`,
    stir: "rühren, bis es gelöst ist",
    stirAll: "gut rühren",
    fill: (volume) => `auf ${volume} auffüllen`,
    measure: "vor dem Gießen messen",
    trade: (products_n, misfit, isSame) =>
      `${products_n} ${isSame ? "gleich" : misfit <= 0.05 ? "gut" : misfit <= 0.3 ? "mäßig" : "schlecht"}`,
    meter: (low, high) => `Messgerät soll ${low} bis ${high} mS/cm zeigen`,
    drift: { up: "pH steigt allmählich", stable: "pH bleibt etwa", down: "pH sinkt allmählich" },
    cost: (money) => `kostet ${money}`,
    smallDose: (name, amount, stock, portion) =>
      `${name} ist zu wenig zum Abmessen: ${amount} in ${stock} lösen und jedes Mal ${portion} davon nehmen.`,
    noSplit: (name) => `${name}: Stickstoffformen unbekannt, zur Hälfte als Ammonium genommen`,
    noDensity: (name) => `${name}: Dichte unbekannt, 1,2 g/mL genommen; 50 mL wiegen`,
    neverTogether: "Nie zwei Konzentrate zusammengießen: Kalzium fällt mit Sulfat und Phosphat aus.",
    shortfall: ({ name, kind, by_frac }) =>
      kind === "limit"
        ? `Grenze für ${name} um ${percent(by_frac)} überschritten`
        : `${name} ${percent(by_frac)} ${kind === "too little" ? "zu niedrig" : "zu hoch"}`,
    element: (of, value, sd, low, high, state) =>
      `${of} ${value} ± ${sd} mg/L, gewünscht ${low} bis ${high}${{ low: ": niedrig", in: "", high: ": hoch" }[state]}`,
    waterOf: (name, pure_frac) => `${name}${rain(pure_frac)}`,
    usualWater: (pure_frac) => `übliches Leitungswasser, ungeprüft${rain(pure_frac)}`,
    unbalanced: (imbalance_frac) =>
      `Der Befund ist um ${percent(imbalance_frac)} aus dem Gleichgewicht; höchstens 5 % erwartet: eine Zahl fehlt oder hat eine andere Einheit.`,
    lookAgain: (imbalance_frac) =>
      `Der Befund ist um ${percent(imbalance_frac)} aus dem Gleichgewicht: noch einmal ansehen.`,
    softened: "Enthärtetes Wasser bringt sein Natrium in den Topf: nicht zum regelmäßigen Gießen.",
    alkaline: (alkalinity) =>
      `Säurekapazität ${alkalinity} mg/L: Eisen wird mit der Zeit festgelegt; mit Regen verschneiden.`,
    hard: "Hartes Wasser: Kalk auf Blättern und Töpfen.",
    empty: "leer",
    leftOut: "weggelassen",
    bottle: (n_frac, p_frac, k_frac) => `${grade(n_frac)}-${grade(p_frac)}-${grade(k_frac)}`,
    noBottle: "Noch keine Flasche im Regal. Ein Etikett ablesen.",
    waterBreaks: (limits) => `Schon das Wasser liegt über der Grenze für ${limits}.`,
    thin: (pure_frac) =>
      pure_frac > 0
        ? `${percent(pure_frac)} Regen oder reines Wasser würde genügen.`
        : "Anderes Wasser würde genügen.",
    notMet: (short) => `Diese Flaschen erreichen das Ziel nicht: ${short}.`,
    oneMore: "Das Nächste steht hier; eine weitere Flasche oder anderes Wasser kommt näher.",
    readGood: (reads) => `${reads} mS/cm ist, wie es sein soll.`,
    readWrong: (reads, band) => `Messgerät ${reads}, ${band}. Noch nicht gießen.`,
    slip: ({ slip, part, scale }, reads) =>
      ({
        "wrong unit": `die Zahl ist in µS/cm: ${reads} mS/cm`,
        "wrong scale": `das Messgerät zeigt ${scale ?? "ppm"}, nicht mS/cm`,
        "water only": "nur Wasser gemessen: war gerührt?",
        "one part twice": `${part ?? ""} doppelt genommen`,
        "one part missing": `${part ?? ""} vergessen`,
        "half the water": "nur halb aufgefüllt",
        "twice the water": "doppelt so weit aufgefüllt",
        "not compensated": "das Messgerät rechnet die Temperatur nicht ein",
      })[slip],
    cautions: [
      "Erst Etikett und Sicherheitsblatt: sie gehen vor. Handschuhe; Konzentrate vor Kindern, Essen und Tieren wegschließen.",
      "Nitrate fördern Brand: trocken, fern von Brennstoffen. Hier keine Säuren. Nie Getränkeflaschen; Küchenlöffel bleiben nicht in der Küche.",
      "Früchte zum Essen: nur was dafür zugelassen ist. Was abläuft, kann geregelt sein.",
    ],
    working: {
      title: "Mischung",
      formula:
        "kleinste Summe aus Gewicht × ((Wert - Rand) / Ziel)² außerhalb der Bereiche, in ganzen Schritten der Messmittel",
      sum: (misfit) => `was davon bleibt: ${misfit}`,
      aimed: (aim, low, high, value) => `${value} mg/L von ${aim} (${low} bis ${high})`,
      label: "sein Etikett",
      source: "Ziele und Gewichte unsere Annahme; jede Mischung ganzer Schritte geprüft, keine ist näher",
      minimum: "Ein Etikett druckt das Mindeste; es kann mehr sein.",
    },
  };
}
