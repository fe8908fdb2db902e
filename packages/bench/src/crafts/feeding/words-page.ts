import type { Say } from "../../words/say.ts";
import { feedingWords } from "./words.ts";
import { pageGerman } from "./words-page.de.ts";
import { pageEnglish } from "./words-page.en.ts";
import type { PageOnlyWords } from "./words-page-shape.ts";
import type { FeedingWords } from "./words-shape.ts";

type FeedPageWords = Pick<FeedingWords, "stage"> & PageOnlyWords;

const known = new WeakMap<Say, FeedPageWords>();

/** The sentences of the mixing desk; made once for who asks. */
export function feedPageWords(say: Say): FeedPageWords {
  let words = known.get(say);
  if (!words) {
    words = {
      stage: feedingWords(say).stage,
      ...(say.language === "de" ? pageGerman(say) : pageEnglish(say)),
    };
    known.set(say, words);
  }
  return words;
}
