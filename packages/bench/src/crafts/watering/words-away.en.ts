import type { Say } from "../../words/say.ts";
import type { AwayWords } from "./words-shape.ts";

export function awayEnglish(say: Say): AwayWords {
  const grams = (mass_g: number) => say.mass(mass_g);
  return {
    said: (pots_n, of_n) =>
      pots_n === 0
        ? `All ${say.number(of_n)} pots will likely last.`
        : `${say.number(pots_n)} of ${say.number(of_n)} pots may not last.`,
    pot: (number, passes_frac, wilts_frac) =>
      `${number}: ${say.number(passes_frac * 20)} in 20 that it wants water before you are back, ${say.number(wilts_frac * 20)} in 20 that it wilts`,
    remedy: (key) =>
      ({
        soak: "water it fully just before you go",
        cooler: "stand it in a cooler room",
        dimmer: "move it away from the window, out of the sun",
        group: "stand the pots close together",
        wick: "a wick from a covered jar of water",
        sitter: "someone waters it",
      })[key],
    soakSum: (capacity_g, threshold_frac, use_g_d, lasts_d) =>
      `${grams(capacity_g)} × ${say.percent(threshold_frac)} ÷ ${grams(use_g_d)} a day = about ${say.number(lasts_d, 1)} days`,
    coolerSum: (from_C, to_C, use_g_d, then_g_d) =>
      `${say.temperature(from_C)} to ${say.temperature(to_C)}: ${grams(use_g_d)} a day becomes about ${grams(then_g_d)}`,
    dimmerSum: (use_g_d, then_g_d) =>
      `half the light: ${grams(use_g_d)} a day becomes about ${grams(then_g_d)}`,
    groupSum: (use_g_d, then_g_d) =>
      `damper air between the leaves: ${grams(use_g_d)} a day becomes about ${grams(then_g_d)}`,
    wickSum: (use_g_d, days, held_g, reservoir_mL) =>
      `${grams(use_g_d)} a day at most × ${say.number(days, 1)} days − ${grams(held_g)} in the pot = ${say.volume(reservoir_mL)} in the jar`,
    sitterSum: (waterings_n) => `${say.number(waterings_n)} waterings, on the dates below`,
    sitterLine: (number, day, volume) => `${day}: pot ${number}, ${volume}`,
    sitterHow: "Pour slowly. Stop when a little runs out below. Tip the saucer out once, after half an hour.",
    sitterNothing: "Nothing to water.",
    back: (number, left_frac) => `${number}: about ${say.percent(left_frac)} left when you are back`,
    backLook: "look first at the pots that may have wilted: rewet slowly, look again within a day",
  };
}
