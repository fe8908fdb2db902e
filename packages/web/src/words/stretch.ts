/** The test locale: every word longer by two fifths and full of umlauts, to find boxes that clip or push. */
const VOWELS: Readonly<Record<string, string>> = { a: "ä", o: "ö", u: "ü", A: "Ä", O: "Ö", U: "Ü" };
const LONGER_frac = 0.4;

export function stretch(text: string): string {
  if (!/\p{L}/u.test(text)) return text;
  const more_n = Math.ceil(text.length * LONGER_frac);
  const umlauted = text.replace(/[aouAOU]/g, (letter) => VOWELS[letter] ?? letter);
  return `${umlauted} ${"länger "
    .repeat(Math.ceil(more_n / 7))
    .slice(0, Math.max(1, more_n - 1))
    .trim()}`;
}

/** Catalogue entries are texts or functions that give texts. */
export function stretchWords<Words extends object>(words: Words): Words {
  const out: Record<string, unknown> = {};
  for (const [key, value] of Object.entries(words)) out[key] = stretched(value);
  return out as Words;
}

function stretched(value: unknown): unknown {
  if (typeof value === "string") return stretch(value);
  if (typeof value === "function") return (...args: unknown[]) => stretched(value(...args));
  if (Array.isArray(value)) return value.map(stretched);
  if (value !== null && typeof value === "object") return stretchWords(value);
  return value;
}

/** Fields of the engine's answers that hold sentences; everything else (ids, keys, numbers) stays as it is. */
const TEXT_FIELDS = new Set([
  "said",
  "title",
  "then",
  "why",
  "care",
  "kind",
  "name",
  "spotName",
  "benchName",
  "from",
  "question",
]);

/** Entries that a key would write. */
const MACHINE_FIELDS = new Set(["act", "entries", "draft", "drafts"]);

export function stretchTexts<Answer>(answer: Answer): Answer {
  if (Array.isArray(answer)) return answer.map(stretchTexts) as Answer;
  if (answer === null || typeof answer !== "object") return answer;
  const out: Record<string, unknown> = {};
  for (const [key, value] of Object.entries(answer)) {
    if (MACHINE_FIELDS.has(key)) out[key] = value;
    else out[key] = typeof value === "string" && isSaid(key, value) ? stretch(value) : stretchTexts(value);
  }
  return out as Answer;
}

/** A name such as watering.watered is for the machine, also in a field that often holds a sentence. */
const isSaid = (key: string, value: string) =>
  (TEXT_FIELDS.has(key) || key.endsWith("Said")) && !/^\w+\.\w+$/.test(value);
