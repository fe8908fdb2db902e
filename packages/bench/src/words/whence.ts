import type { Said } from "./said.ts";
import type { Say } from "./say.ts";
import { whenceGerman } from "./whence.de.ts";
import { whenceEnglish } from "./whence.en.ts";
import type { WhenceWords } from "./whence-shape.ts";

/** Where a number of the house itself comes from, said when somebody asks. */
export const whence =
  (of: (words: WhenceWords, say: Say) => string): Said =>
  (say) =>
    of(say.language === "de" ? whenceGerman(say) : whenceEnglish(say), say);
