import type { Say } from "../../words/say.ts";
import type { AwayWords } from "./words-shape.ts";

export function awayGerman(say: Say): AwayWords {
  const grams = (mass_g: number) => say.mass(mass_g);
  return {
    said: (pots_n, of_n) =>
      pots_n === 0
        ? `Alle ${say.number(of_n)} Töpfe halten wohl durch.`
        : `${say.number(pots_n)} von ${say.number(of_n)} Töpfen halten vielleicht nicht durch.`,
    pot: (number, passes_frac, wilts_frac) =>
      `${number}: ${say.number(passes_frac * 20)} von 20, dass sie vor der Rückkehr Wasser will, ${say.number(wilts_frac * 20)} von 20, dass sie welkt`,
    remedy: (key) =>
      ({
        soak: "kurz vor der Abreise ganz voll gießen",
        cooler: "in ein kühleres Zimmer stellen",
        dimmer: "vom Fenster weg, aus der Sonne",
        group: "die Töpfe dicht zusammenstellen",
        wick: "ein Docht aus einem zugedeckten Glas Wasser",
        sitter: "jemand gießt sie",
      })[key],
    soakSum: (capacity_g, threshold_frac, use_g_d, lasts_d) =>
      `${grams(capacity_g)} × ${say.percent(threshold_frac)} ÷ ${grams(use_g_d)} am Tag = etwa ${say.number(lasts_d, 1)} Tage`,
    coolerSum: (from_C, to_C, use_g_d, then_g_d) =>
      `${say.temperature(from_C)} auf ${say.temperature(to_C)}: aus ${grams(use_g_d)} am Tag werden etwa ${grams(then_g_d)}`,
    dimmerSum: (use_g_d, then_g_d) =>
      `halb so viel Licht: aus ${grams(use_g_d)} am Tag werden etwa ${grams(then_g_d)}`,
    groupSum: (use_g_d, then_g_d) =>
      `feuchtere Luft zwischen den Blättern: aus ${grams(use_g_d)} am Tag werden etwa ${grams(then_g_d)}`,
    wickSum: (use_g_d, days, held_g, reservoir_mL) =>
      `höchstens ${grams(use_g_d)} am Tag × ${say.number(days, 1)} Tage − ${grams(held_g)} im Topf = ${say.volume(reservoir_mL)} ins Glas`,
    sitterSum: (waterings_n) => `${say.number(waterings_n)} Güsse, an den Tagen unten`,
    sitterLine: (number, day, volume) => `${day}: Topf ${number}, ${volume}`,
    sitterHow:
      "Langsam gießen. Aufhören, sobald unten etwas herausläuft. Untersetzer einmal ausleeren, nach einer halben Stunde.",
    sitterNothing: "Nichts zu gießen.",
    back: (number, left_frac) => `${number}: etwa ${say.percent(left_frac)} übrig bei der Rückkehr`,
    backLook:
      "zuerst nach den Töpfen sehen, die gewelkt sein können: langsam wieder nass machen, binnen eines Tages noch einmal ansehen",
  };
}
