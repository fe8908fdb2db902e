import type { Json } from "../../book/entry.ts";
import type { Say } from "../../words/say.ts";
import { PageError, type World } from "../craft.ts";
import { dayPage } from "./page-day.ts";
import { mixPage } from "./page-mix.ts";
import { potPage } from "./page-pot.ts";
import type { PottingAsk, PottingPage } from "./page-shape.ts";
import type { PotSlice } from "./slice.ts";
import { pageGerman } from "./words-page.de.ts";
import { type PageWords, pageEnglish } from "./words-page.en.ts";

const pageWords = (say: Say): PageWords => (say.language === "de" ? pageGerman(say) : pageEnglish(say));

/** The craft's own page: the mixing desk for a medium, the potting day, one pot. */
export function potPageOf(world: World<PotSlice>, ask: Json): PottingPage {
  const words = pageWords(world.say);
  const asked = ask as unknown as Partial<PottingAsk> | null;
  switch (asked?.what) {
    case "mix":
      return mixPage(world, asked as Extract<PottingAsk, { what: "mix" }>, words);
    case "day":
      return dayPage(world, words);
    case "pot":
      return potPage(world, asked as Extract<PottingAsk, { what: "pot" }>, words);
    default:
      throw new PageError(words.pageOf);
  }
}
