import type { Json } from "@sillwood/bench/book";

export type Meter = "lux" | "fc" | "umol";
export type Sky = "evenly grey" | "broken" | "clear";

/** A foot-candle is a lumen on a square foot of exactly 0.09290304 m². */
const LUX_PER_FC = 1 / 0.09290304;

/** What a meter can show, by place: as the kinds of readings allow it. */
const RANGES = {
  inside: { lux: [1, 150_000], umol: [0.05, 2600] },
  outside: { lux: [50, 150_000], umol: [1, 2600] },
  lamp: { lux: [1, 150_000], umol: [0.1, 2600] },
} as const;
export type Where = keyof typeof RANGES;

/** In lux or µmol/m²s, as the book keeps it; undefined when what was typed is no reading. */
export function readingOf(text: string, meter: Meter): number | undefined {
  const value = Number(text.replace(",", "."));
  if (text === "" || !Number.isFinite(value) || value <= 0) return undefined;
  return meter === "fc" ? Math.round(value * LUX_PER_FC) : value;
}

export const isPossible = (value: number, where: Where, meter: Meter): boolean => {
  const [min, max] = RANGES[where][meter === "umol" ? "umol" : "lux"];
  return value >= min && value <= max;
};

/** The limits as the meter shows them. */
export function rangeOf(where: Where, meter: Meter): readonly [number, number] {
  const [min, max] = RANGES[where][meter === "umol" ? "umol" : "lux"];
  return meter === "fc"
    ? [Math.ceil((min / LUX_PER_FC) * 10) / 10, Math.floor(max / LUX_PER_FC)]
    : [min, max];
}

/** The data of `light.pair` or `light.lamp`. */
export function pairData(inside: number, outside: number, meter: Meter, sky: Sky): Json {
  return meter === "umol"
    ? { inside_umol_m2_s: inside, outside_umol_m2_s: outside, sky }
    : { inside_lux: inside, outside_lux: outside, sky };
}
export const lampData = (value: number, meter: Meter): Json =>
  meter === "umol" ? { ppfd_umol_m2_s: value } : { under_lux: value };
