import type { Json } from "@sillwood/bench/book";
import type { FeedAsk, FeedPage } from "@sillwood/bench/crafts/feeding";
import { useMemo, useRef } from "react";
import { useAsk } from "../../engine/use-ask.ts";
import { useSettings } from "../../shell/say.ts";
import { feed as german } from "../../words/de/feed.ts";
import { feed as english } from "../../words/en/feed.ts";
import { stretchWords } from "../../words/stretch.ts";

const LANGUAGES = { en: english, de: german };
export const CRAFT = "feeding";

/** The words of these pages, fetched with them. */
export function useFeedWords(): typeof english {
  const { language, stretched } = useSettings();
  return useMemo(
    () => (stretched ? stretchWords(LANGUAGES[language]) : LANGUAGES[language]),
    [language, stretched],
  );
}

interface Feed {
  readonly page?: FeedPage;
  readonly refused?: string;
  readonly error?: Error | undefined;
}

/** The mixing desk; the last answer stays while the next is reckoned. */
export function useFeed(ask: FeedAsk): Feed {
  const { value, error } = useAsk("craft page", { craft: CRAFT, ask: ask as unknown as Json });
  const last = useRef<FeedPage>(undefined);
  if (value && "refused" in value) return { refused: value.refused };
  if (value?.page !== undefined) last.current = value.page as FeedPage;
  return last.current ? { page: last.current, error } : { error };
}
