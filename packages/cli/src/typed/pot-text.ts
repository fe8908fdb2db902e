import type { UnitSystem } from "@sillwood/bench/words";
import { readNumber } from "./read-number.ts";

type Measures = Readonly<Record<string, number | string>>;

/**
 * A pot as people write it: `12x9` (round: across, deep), `round 12x9`, `oval 18x12x6`, `box 20x10x6`, each number with or
 * without a unit. The ranges are judged by the gate.
 */
export function potOf(
  typed: string,
  units: UnitSystem,
): { readonly pot: Measures } | { readonly wrong: string } {
  const expected = "expected 12x9 (across, deep), oval 18x12x6 or box 20x10x6, in cm or with units";
  const match = /^(round|oval|box|rectangular)?\s*(.+)$/i.exec(typed.trim());
  const parts = (match?.[2] ?? "").split(/\s*[x×*]\s*/i);
  const form = match?.[1]?.toLowerCase() ?? (parts.length === 3 ? "rectangular" : "round");
  if (parts.length !== (form === "round" ? 2 : 3))
    return { wrong: `is ${JSON.stringify(typed.slice(0, 60))}; ${expected}` };
  const sizes: number[] = [];
  for (const part of parts) {
    const size = readNumber(part, "cm", units);
    if ("wrong" in size)
      return { wrong: `holds ${JSON.stringify(part.slice(0, 40))}, which ${size.wrong}; ${expected}` };
    sizes.push(size.value);
  }
  const [a = 0, b = 0, c = 0] = sizes;
  if (form === "round") return { pot: { form, top_cm: a, depth_cm: b } };
  return { pot: { form: form === "oval" ? "oval" : "rectangular", length_cm: a, width_cm: b, depth_cm: c } };
}
