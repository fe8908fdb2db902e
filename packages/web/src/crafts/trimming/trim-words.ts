import { useMemo } from "react";
import { useSettings } from "../../shell/say.ts";
import { trim as german } from "../../words/de/trim.ts";
import { trim as english } from "../../words/en/trim.ts";
import { stretchWords } from "../../words/stretch.ts";

const LANGUAGES = { en: english, de: german };

/** The words of these pages: fetched with them, so that the first screen does not carry what it never says. */
export function useTrimWords(): typeof english {
  const { language, stretched } = useSettings();
  return useMemo(() => {
    const plain = LANGUAGES[language];
    return stretched ? stretchWords(plain) : plain;
  }, [language, stretched]);
}
