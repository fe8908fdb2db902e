import type { Say } from "../../words/say.ts";
import { pageGerman } from "./words-page.de.ts";
import { pageEnglish } from "./words-page.en.ts";
import type { TrimPageWords } from "./words-page-shape.ts";

/** The sentences that only the page says. */
export const trimPageWords = (say: Say): TrimPageWords =>
  say.language === "de" ? pageGerman(say) : pageEnglish(say);
