import type { UnitSystem } from "@sillwood/bench/words";

/** How a quantity kept in one unit is typed and read in another. */
export interface ShownUnit {
  readonly symbol: string;
  readonly shown: (value: number) => number;
  readonly kept: (shown: number) => number;
  /** Decimals that hands can mean. */
  readonly digits_n: number;
}

const same = (symbol: string, digits_n = 2): ShownUnit => ({
  symbol,
  shown: (value) => value,
  kept: (shown) => shown,
  digits_n,
});
const times = (symbol: string, factor: number, digits_n = 2): ShownUnit => ({
  symbol,
  shown: (value) => value / factor,
  kept: (shown) => shown * factor,
  digits_n,
});

/** Factors are exact by definition (inch, pound, US gallon); the engine's own table is proved against the same ones. */
const US: Readonly<Record<string, ShownUnit>> = {
  mL: times("fl oz", 29.5735295625, 1),
  L: times("US gal", 3.785411784),
  g: times("oz", 28.349523125),
  kg: times("lb", 0.45359237),
  cm: times("in", 2.54),
  mm: times("in", 25.4, 3),
  m: times("ft", 0.3048),
  "m/s": times("mph", 0.44704),
  "m²": times("ft²", 0.09290304),
  lux: times("fc", 1 / 0.09290304, 1),
  "°C": {
    symbol: "°F",
    shown: (air_C) => air_C * 1.8 + 32,
    kept: (air_F) => (air_F - 32) / 1.8,
    digits_n: 1,
  },
};

/** Differences of temperature have no zero to move. */
const US_DIFFERENCE = times("°F", 5 / 9, 1);

export function shownUnit(unit: string, system: UnitSystem, isDifference = false): ShownUnit {
  if (system === "metric") return same(unit, 4);
  return unit === "°C" && isDifference ? US_DIFFERENCE : (US[unit] ?? same(unit, 4));
}

/** A number as a field shows it: no thousands, no more decimals than the unit has. */
export function inField(value: number, { digits_n, shown }: ShownUnit): string {
  const text = shown(value).toFixed(digits_n);
  return text.includes(".") ? text.replace(/\.?0+$/, "") : text;
}
