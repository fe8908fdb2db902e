import type { Say } from "../../words/say.ts";
import { awayGerman } from "./words-away.de.ts";
import { awayEnglish } from "./words-away.en.ts";
import type { AwayWords } from "./words-shape.ts";

/** What is said of absences, in the language asked for; it comes with the plan, not with the first screen. */
export const awayWords = (say: Say): AwayWords =>
  say.language === "de" ? awayGerman(say) : awayEnglish(say);
