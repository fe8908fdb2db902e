import { useSyncExternalStore } from "react";
import { onSettings, type Settings, settings } from "../device/settings.ts";
import { firstScreens } from "./en/first-screens.ts";
import type { en } from "./en/index.ts";
import { stretchWords } from "./stretch.ts";

export type Words = typeof en;

let english: Words | undefined;
/** Whether a page behind the first screens was wanted: from then on no word may be missing. */
let isWhole = false;
// Those pages are fetched with the words that are missing here.
let current = firstScreens as unknown as Words;
let madeFor = "en, first screens";
const listeners = new Set<() => void>();

/** English of the first screens comes with the first script; all else is fetched (from the cache, offline) when it is wanted. */
export async function loadWords({ language, stretched }: Settings): Promise<Words> {
  const isFirst = language === "en" && !isWhole;
  const wanted = `${language}${stretched ? " stretched" : ""}${isFirst ? ", first screens" : ""}`;
  if (wanted !== madeFor) {
    const plain = language === "de" ? (await import("./de/index.ts")).de : await englishWords();
    current = stretched ? stretchWords(plain) : plain;
    madeFor = wanted;
    document.documentElement.lang = language;
    for (const listener of listeners) listener();
  }
  return current;
}

async function englishWords(): Promise<Words> {
  if (isWhole) english ??= (await import("./en/index.ts")).en;
  return english ?? (firstScreens as unknown as Words);
}

/** What every page behind the first screens says, in the language of this device. */
export async function needPageWords(): Promise<void> {
  isWhole = true;
  await loadWords(settings());
}

onSettings(() => void loadWords(settings()));

export const words = (): Words => current;

export function useWords(): Words {
  return useSyncExternalStore((listener) => {
    listeners.add(listener);
    return () => listeners.delete(listener);
  }, words);
}
