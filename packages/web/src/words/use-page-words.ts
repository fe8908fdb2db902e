import { useMemo } from "react";
import type { Settings } from "../device/settings.ts";
import { useSettings } from "../shell/say.ts";
import { stretchWords } from "./stretch.ts";

/** Words that only one craft's pages say: fetched with them, so that the first screen does not carry what it never says. */
export function usePageWords<Said extends object>(
  languages: Readonly<Record<Settings["language"], Said>>,
): Said {
  const { language, stretched } = useSettings();
  return useMemo(
    () => (stretched ? stretchWords(languages[language]) : languages[language]),
    [languages, language, stretched],
  );
}
