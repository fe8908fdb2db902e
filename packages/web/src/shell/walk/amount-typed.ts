import type { UnitSystem } from "@sillwood/bench/words";

const ML_PER_US_FL_OZ = 29.5735295625;
/** More than it holds may be poured until it runs out below; beyond this share it is most often a digit too many (our choice). */
const THROUGH_frac = 1.3;

/** What was typed on the pad, in mL; undefined when it is no amount. */
export function typedVolume_mL(text: string, units: UnitSystem): number | undefined {
  const value = Number(text);
  if (text === "" || !Number.isFinite(value) || value <= 0) return undefined;
  return units === "us" ? Math.round(value * ML_PER_US_FL_OZ) : value;
}

/** The typed digits with their unit, as they stand: not rounded to the jug. */
export const volumeTyped = (text: string, units: UnitSystem): string =>
  `${text}\u202f${units === "us" ? "fl oz" : "mL"}`;

/**
 * Far more than the pot can take: most often a digit too many.
 *
 * @param most_mL what the pot holds when full; undefined when nobody knows
 */
export function doubtful(
  value_mL: number,
  most_mL: number | undefined,
): { readonly most_mL: number; readonly meant_mL: number } | undefined {
  return most_mL !== undefined && value_mL > most_mL * THROUGH_frac
    ? { most_mL, meant_mL: value_mL / 10 }
    : undefined;
}
