import type { Say } from "../../words/say.ts";
import { german } from "./words.de.ts";
import { english } from "./words.en.ts";
import type { WateringWords } from "./words-shape.ts";

/** The craft's sentences in the language asked for. */
export const wateringWords = (say: Say): WateringWords =>
  say.language === "de" ? german(say) : english(say);
