import type { Json } from "@sillwood/bench/book";
import type { ScoutAsk, ScoutPage } from "@sillwood/bench/crafts/scouting";
import { useMemo } from "react";
import { useAsk } from "../../engine/use-ask.ts";
import { useSettings } from "../../shell/say.ts";
import { scout as german } from "../../words/de/scout.ts";
import { scout as english } from "../../words/en/scout.ts";
import { stretchWords } from "../../words/stretch.ts";

const LANGUAGES = { en: english, de: german };

/** The words of these pages, fetched with them. */
export function useScoutWords(): typeof english {
  const { language, stretched } = useSettings();
  return useMemo(
    () => (stretched ? stretchWords(LANGUAGES[language]) : LANGUAGES[language]),
    [language, stretched],
  );
}

interface Scout {
  readonly page?: ScoutPage;
  readonly refused?: string;
  readonly error?: Error | undefined;
}

/** The craft's own page, as it answers what was asked. */
export function useScout(ask: ScoutAsk): Scout {
  const { value, error } = useAsk("craft page", { craft: "scouting", ask: ask as unknown as Json });
  if (!value) return { error };
  if ("refused" in value) return { refused: value.refused };
  return value.page === undefined ? { error } : { page: value.page as ScoutPage, error };
}
