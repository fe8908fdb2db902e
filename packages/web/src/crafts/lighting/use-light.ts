import type { LightAsk, LightPage } from "@sillwood/bench/crafts/lighting";
import { useCraftPage } from "../../engine/use-craft-page.ts";
import { light as german } from "../../words/de/light.ts";
import { light as english } from "../../words/en/light.ts";
import { usePageWords } from "../../words/use-page-words.ts";

const LANGUAGES = { en: english, de: german };
export const CRAFT = "lighting";

export const useLightWords = () => usePageWords(LANGUAGES);

export const useLight = (ask: LightAsk) => useCraftPage<LightAsk, LightPage>(CRAFT, ask);
