import type { UnitSystem } from "@sillwood/bench/words";

const G_PER_OZ = 28.349523125;
/** A miniature's pot with its plant, empty scale to a full tub; the kind of the entry has the last word. */
export const LIGHTEST_g = 1;
export const HEAVIEST_g = 100_000;

/** What was typed, in grams; undefined when it is no weight. */
export function typedWeight_g(text: string, units: UnitSystem): number | undefined {
  const value = Number(text.replace(",", "."));
  if (text === "" || !Number.isFinite(value) || value <= 0) return undefined;
  return units === "us" ? Math.round(value * G_PER_OZ * 10) / 10 : value;
}

/** Adds a digit or a point, as the pad or a scale that types does. */
export function typeOn(text: string, key: string): string {
  if (key === "." || key === ",") return text.includes(".") ? text : `${text === "" ? "0" : text}.`;
  if (!/^\d$/.test(key) || text.length >= 7) return text;
  return text === "0" ? key : text + key;
}

export interface Band {
  readonly low_g: number;
  readonly high_g: number;
}

/** Whether a weight is so far off that it is held until a person has said why. */
export const isOutside = (weight_g: number, { low_g, high_g }: Band): boolean =>
  weight_g < low_g || weight_g > high_g;
