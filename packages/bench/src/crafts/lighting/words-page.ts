import type { Say } from "../../words/say.ts";
import { lightingWords } from "./words.ts";
import { pageGerman } from "./words-page.de.ts";
import { pageEnglish } from "./words-page.en.ts";
import type { PageOnlyWords } from "./words-page-shape.ts";
import type { LightingWords } from "./words-shape.ts";

export type LightPageWords = LightingWords & PageOnlyWords;

const known = new WeakMap<Say, LightPageWords>();

/** The craft's sentences with those that only its page says; made once for who asks. */
export function lightPageWords(say: Say): LightPageWords {
  let words = known.get(say);
  if (!words) {
    const all = lightingWords(say);
    const page = say.language === "de" ? pageGerman(say) : pageEnglish(say);
    words = { ...all, ...page, working: { ...all.working, ...page.working } };
    known.set(say, words);
  }
  return words;
}
