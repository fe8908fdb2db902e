import type { ScoutAsk, ScoutPage } from "@sillwood/bench/crafts/scouting";
import { useCraftPage } from "../../engine/use-craft-page.ts";
import { scout as german } from "../../words/de/scout.ts";
import { scout as english } from "../../words/en/scout.ts";
import { usePageWords } from "../../words/use-page-words.ts";

const LANGUAGES = { en: english, de: german };

export const useScoutWords = () => usePageWords(LANGUAGES);

export const useScout = (ask: ScoutAsk) => useCraftPage<ScoutAsk, ScoutPage>("scouting", ask);
