const FRACTIONS: Readonly<Record<string, number>> = {
  "½": 0.5,
  "¼": 0.25,
  "¾": 0.75,
  "⅛": 0.125,
  "⅜": 0.375,
  "⅝": 0.625,
  "⅞": 0.875,
};

/** A number as thumbs type it: point or comma, any minus, a fraction behind it. Undefined when it is none. */
export function readNumber(text: string): number | undefined {
  const bare = text
    .trim()
    .replace(/[\s\u2009\u202f]/g, "")
    .replace("−", "-")
    .replace(",", ".");
  const match = /^(-?)(\d*\.?\d*)([½¼¾⅛⅜⅝⅞]?)$/.exec(bare);
  if (!match) return undefined;
  const [, minus, digits = "", fraction = ""] = match;
  if (digits === "" && fraction === "") return undefined;
  if (digits === ".") return undefined;
  const value = Number(digits || "0") + (FRACTIONS[fraction] ?? 0);
  return Number.isFinite(value) ? (minus ? -value : value) : undefined;
}
