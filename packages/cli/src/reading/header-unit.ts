import { inSuffixUnit } from "../typed/units.ts";

/** Units that loggers write and that can't be turned into what a column holds without more than the number. */
const OTHERS: readonly (readonly [RegExp, string])[] = [
  [/\blux\b|\blx\b|klx|foot-?candle|\bfc\b/i, "lux"],
  [/(?<![uµμ])mol[_/ ]?m[²2]?|\bdli\b/i, "mol/m² a day"],
  [/\bw[_/ ]m[²2]?\b/i, "W/m²"],
];

export type HeaderUnit =
  /** The unit as the table of units knows it; undefined where the header names none. */
  | { readonly unit: string | undefined }
  /** The header names something else. */
  | { readonly other: string };

/** The unit in the name of a column: `Temp (°F)`, `weight_oz`, `air °C`. */
export function headerUnit(header: string, suffix: string): HeaderUnit {
  const bracketed = /[([]\s*([^)\]]+?)\s*[)\]]/.exec(header)?.[1];
  const cut = header.indexOf("_");
  const tailed = cut > 0 ? header.slice(cut + 1) : /\s(\S+)$/.exec(header)?.[1];
  for (const unit of [bracketed, tailed]) {
    if (unit === undefined || unit === suffix) continue;
    if (inSuffixUnit(1, unit, suffix) !== undefined) return { unit };
    const degrees = unit.replace(/^(deg|degrees?)\s*/i, "°");
    if (inSuffixUnit(1, degrees, suffix) !== undefined) return { unit: degrees };
  }
  if (suffix !== "umol_m2_s") return { unit: undefined };
  const other = OTHERS.find(([shape]) => shape.test(header))?.[1];
  return other === undefined ? { unit: undefined } : { other };
}
