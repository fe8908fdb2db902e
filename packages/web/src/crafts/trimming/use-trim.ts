import type { TrimAsk, TrimPage } from "@sillwood/bench/crafts/trimming";
import { useCraftPage } from "../../engine/use-craft-page.ts";
import { trim as german } from "../../words/de/trim.ts";
import { trim as english } from "../../words/en/trim.ts";
import { usePageWords } from "../../words/use-page-words.ts";

const LANGUAGES = { en: english, de: german };

export const useTrimWords = () => usePageWords(LANGUAGES);

/** The craft's own page; the last answer stays while the next is reckoned. */
export const useTrim = (ask: TrimAsk) => useCraftPage<TrimAsk, TrimPage>("trimming", ask, true);
