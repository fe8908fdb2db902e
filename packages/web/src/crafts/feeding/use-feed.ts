import type { FeedAsk, FeedPage } from "@sillwood/bench/crafts/feeding";
import { useCraftPage } from "../../engine/use-craft-page.ts";
import { feed as german } from "../../words/de/feed.ts";
import { feed as english } from "../../words/en/feed.ts";
import { usePageWords } from "../../words/use-page-words.ts";

const LANGUAGES = { en: english, de: german };
export const CRAFT = "feeding";

export const useFeedWords = () => usePageWords(LANGUAGES);

/** The mixing desk; the last answer stays while the next is reckoned. */
export const useFeed = (ask: FeedAsk) => useCraftPage<FeedAsk, FeedPage>(CRAFT, ask, true);
