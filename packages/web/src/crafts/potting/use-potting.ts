import type { PottingAsk, PottingPage } from "@sillwood/bench/crafts/potting";
import { useCraftPage } from "../../engine/use-craft-page.ts";
import { potting as german } from "../../words/de/potting.ts";
import { potting as english } from "../../words/en/potting.ts";
import { usePageWords } from "../../words/use-page-words.ts";

const LANGUAGES = { en: english, de: german };

export const usePottingWords = () => usePageWords(LANGUAGES);

/** The craft's own page; the last answer stays while the next is reckoned. */
export const usePotting = <What extends PottingPage["what"]>(ask: Extract<PottingAsk, { what: What }>) =>
  useCraftPage<PottingAsk, Extract<PottingPage, { what: What }>>("potting", ask, true);
