import type { Say } from "../../words/say.ts";
import { german } from "./words.de.ts";
import { english } from "./words.en.ts";
import type { FeedingWords } from "./words-shape.ts";

const known = new WeakMap<Say, FeedingWords>();

/** The craft's sentences in the language asked for; made once for who asks. */
export function feedingWords(say: Say): FeedingWords {
  let words = known.get(say);
  if (!words) {
    words = say.language === "de" ? german(say) : english(say);
    known.set(say, words);
  }
  return words;
}
