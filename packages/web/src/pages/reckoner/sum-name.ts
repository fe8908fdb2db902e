import type { Language } from "@sillwood/bench/words";
import { sumNamesGerman } from "./sum-names.de.ts";

/** A function's name as words: `dailyVapourPressure_kPa` is "daily vapour pressure"; in German by the list. */
export function sumName(name: string, language: Language = "en"): string {
  const german = language === "de" ? sumNamesGerman[name] : undefined;
  if (german !== undefined) return german;
  const words = (name.split("_")[0] ?? name)
    .replace(/([a-z0-9])([A-Z])/g, "$1 $2")
    .replace(/([a-z])(\d)/g, "$1 $2");
  return words.toLocaleLowerCase().replace(/\bet\b/g, "ET");
}
