import type { Say } from "../../words/say.ts";
import { german } from "./words.de.ts";
import { english } from "./words.en.ts";
import type { LightingWords } from "./words-shape.ts";

const known = new WeakMap<Say, LightingWords>();

/** The craft's sentences in the language asked for; made once for who asks. */
export function lightingWords(say: Say): LightingWords {
  let words = known.get(say);
  if (!words) {
    words = say.language === "de" ? german(say) : english(say);
    known.set(say, words);
  }
  return words;
}

const LOCALES = { en: { metric: "en-GB", us: "en-US" }, de: { metric: "de-DE", us: "de-DE" } } as const;
const formats = new Map<string, Intl.DateTimeFormat>();

/** "20 Oct": a date of some year, for what comes round every year. */
export function dayMonth(date: string, { language, units }: Say): string {
  const locale = LOCALES[language][units];
  let format = formats.get(locale);
  if (!format) {
    format = new Intl.DateTimeFormat(locale, { timeZone: "UTC", day: "numeric", month: "short" });
    formats.set(locale, format);
  }
  return format.format(new Date(`${date}T12:00:00Z`));
}
