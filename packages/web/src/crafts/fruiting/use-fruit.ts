import type { FruitAsk, FruitPage } from "@sillwood/bench/crafts/fruiting";
import { useCraftPage } from "../../engine/use-craft-page.ts";
import { fruit as german } from "../../words/de/fruit.ts";
import { fruit as english } from "../../words/en/fruit.ts";
import { usePageWords } from "../../words/use-page-words.ts";

const LANGUAGES = { en: english, de: german };

export const useFruitWords = () => usePageWords(LANGUAGES);

export const useFruit = (ask: FruitAsk) => useCraftPage<FruitAsk, FruitPage>("fruiting", ask);
