import type { Json } from "@sillwood/bench/book";
import type { PottingAsk, PottingPage } from "@sillwood/bench/crafts/potting";
import { useMemo, useRef } from "react";
import { useAsk } from "../../engine/use-ask.ts";
import { useSettings } from "../../shell/say.ts";
import { potting as german } from "../../words/de/potting.ts";
import { potting as english } from "../../words/en/potting.ts";
import { stretchWords } from "../../words/stretch.ts";

const LANGUAGES = { en: english, de: german };

/** The words of these pages, fetched with them. */
export function usePottingWords(): typeof english {
  const { language, stretched } = useSettings();
  return useMemo(
    () => (stretched ? stretchWords(LANGUAGES[language]) : LANGUAGES[language]),
    [language, stretched],
  );
}

interface Potting<Page> {
  readonly page?: Page;
  readonly refused?: string;
  readonly error?: Error | undefined;
}

/** The craft's own page; the last answer stays while the next is reckoned. */
export function usePotting<What extends PottingPage["what"]>(
  ask: Extract<PottingAsk, { what: What }>,
): Potting<Extract<PottingPage, { what: What }>> {
  type Page = Extract<PottingPage, { what: What }>;
  const { value, error } = useAsk("craft page", { craft: "potting", ask: ask as unknown as Json });
  const last = useRef<Page>(undefined);
  if (value && "page" in value && value.page !== undefined) last.current = value.page as Page;
  if (value && "refused" in value) return { refused: value.refused };
  return last.current ? { page: last.current, error } : { error };
}
