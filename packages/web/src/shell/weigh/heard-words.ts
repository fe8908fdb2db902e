import type { Language } from "@sillwood/bench/words";

/** What a voice may say on the weighing run: digits, and four words. Nothing else is taken. */
export type Heard =
  | { readonly digits: string }
  | { readonly word: "next" | "back" | "again" | "skip" }
  | { readonly unknown: string };

const DIGITS: Readonly<Record<Language, Readonly<Record<string, string>>>> = {
  en: {
    zero: "0",
    oh: "0",
    one: "1",
    two: "2",
    three: "3",
    four: "4",
    five: "5",
    six: "6",
    seven: "7",
    eight: "8",
    nine: "9",
    point: ".",
  },
  de: {
    null: "0",
    eins: "1",
    zwei: "2",
    zwo: "2",
    drei: "3",
    vier: "4",
    fünf: "5",
    sechs: "6",
    sieben: "7",
    acht: "8",
    neun: "9",
    komma: ".",
  },
};
const WORDS: Readonly<Record<Language, Readonly<Record<string, "next" | "back" | "again" | "skip">>>> = {
  en: { next: "next", back: "back", again: "again", skip: "skip" },
  de: { weiter: "next", zurück: "back", nochmal: "again", auslassen: "skip" },
};

/** Reads one utterance. A sentence with any other word in it is no weight: people talk beside the scale. */
export function heardWords(utterance: string, language: Language): Heard {
  const said = utterance
    .toLocaleLowerCase()
    .replace(/noch mal|noch einmal/g, "nochmal")
    .replace(/[.,!?]+(?=\s|$)/g, "")
    .trim();
  const word = WORDS[language][said];
  if (word) return { word };
  const digits = said
    .split(/[\s-]+/)
    .map((part) => DIGITS[language][part] ?? (/^\d+([.,]\d+)?$/.test(part) ? part.replace(",", ".") : "?"))
    .join("");
  return /^\d+(\.\d+)?$/.test(digits) ? { digits } : { unknown: utterance.trim() };
}
