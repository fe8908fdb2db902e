import type { Say } from "../../words/say.ts";
import { german } from "./words.de.ts";
import { english } from "./words.en.ts";
import type { TrimmingWords } from "./words-shape.ts";

const known = new WeakMap<Say, TrimmingWords>();

/** The craft's sentences in the language asked for; made once for who asks. */
export function trimmingWords(say: Say): TrimmingWords {
  let words = known.get(say);
  if (!words) {
    words = say.language === "de" ? german(say) : english(say);
    known.set(say, words);
  }
  return words;
}
