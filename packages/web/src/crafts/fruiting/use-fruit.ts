import type { Json } from "@sillwood/bench/book";
import type { FruitAsk, FruitPage } from "@sillwood/bench/crafts/fruiting";
import { useMemo } from "react";
import { useAsk } from "../../engine/use-ask.ts";
import { useSettings } from "../../shell/say.ts";
import { fruit as german } from "../../words/de/fruit.ts";
import { fruit as english } from "../../words/en/fruit.ts";
import { stretchWords } from "../../words/stretch.ts";

const LANGUAGES = { en: english, de: german };

/** The words of these pages, fetched with them. */
export function useFruitWords(): typeof english {
  const { language, stretched } = useSettings();
  return useMemo(
    () => (stretched ? stretchWords(LANGUAGES[language]) : LANGUAGES[language]),
    [language, stretched],
  );
}

interface Fruit {
  readonly page?: FruitPage;
  readonly refused?: string;
  readonly error?: Error | undefined;
}

/** The craft's own page, as it answers what was asked. */
export function useFruit(ask: FruitAsk): Fruit {
  const { value, error } = useAsk("craft page", { craft: "fruiting", ask: ask as unknown as Json });
  if (!value) return { error };
  if ("refused" in value) return { refused: value.refused };
  return value.page === undefined ? { error } : { page: value.page as FruitPage, error };
}
