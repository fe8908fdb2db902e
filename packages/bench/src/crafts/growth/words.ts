import type { Say } from "../../words/say.ts";
import { german } from "./words.de.ts";
import { english } from "./words.en.ts";
import type { GrowthWords } from "./words-shape.ts";

/** The craft's sentences in the language asked for. */
export const growthWords = (say: Say): GrowthWords => (say.language === "de" ? german(say) : english(say));
