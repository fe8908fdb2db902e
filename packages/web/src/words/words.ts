import { useSyncExternalStore } from "react";
import { onSettings, type Settings, settings } from "../device/settings.ts";
import { en } from "./en/index.ts";
import { stretchWords } from "./stretch.ts";

export type Words = typeof en;

let current: Words = en;
let madeFor = "en";
const listeners = new Set<() => void>();

/** English comes with the first script; other languages are fetched (from the cache, offline) when they are wanted. */
export async function loadWords({ language, stretched }: Settings): Promise<Words> {
  const wanted = `${language}${stretched ? " stretched" : ""}`;
  if (wanted !== madeFor) {
    const plain: Words = language === "de" ? (await import("./de/index.ts")).de : en;
    current = stretched ? stretchWords(plain) : plain;
    madeFor = wanted;
    document.documentElement.lang = language;
    for (const listener of listeners) listener();
  }
  return current;
}

onSettings(() => void loadWords(settings()));

export const words = (): Words => current;

export function useWords(): Words {
  return useSyncExternalStore((listener) => {
    listeners.add(listener);
    return () => listeners.delete(listener);
  }, words);
}
