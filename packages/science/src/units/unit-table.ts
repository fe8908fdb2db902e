import * as factor from "../units.ts";

/** What kind of quantity a unit measures; units of one kind convert into each other. */
export type QuantityKind =
  | "length"
  | "area"
  | "mass"
  | "volume"
  | "temperature"
  | "speed"
  | "pressure"
  | "daily irradiation"
  | "illuminance"
  | "depth"
  | "time";

export type UnitRow = {
  /** how it is written on screens and in commands */
  readonly symbol: string;
  /** other spellings that are understood */
  readonly also: readonly string[];
  readonly kind: QuantityKind;
  /** value in the canonical unit = factor × (value + offset) */
  readonly factor: number;
  readonly offset: number;
  readonly system: "metric" | "US" | "imperial";
};

/** The one unit of each kind that the engine keeps (STYLE section 3). */
export const canonicalSymbol: Readonly<Record<QuantityKind, string>> = {
  length: "cm",
  area: "m²",
  mass: "g",
  volume: "mL",
  temperature: "°C",
  speed: "m/s",
  pressure: "kPa",
  "daily irradiation": "MJ/m²/d",
  illuminance: "lx",
  depth: "mm",
  time: "d",
};

const unit = (
  kind: QuantityKind,
  system: UnitRow["system"],
  symbol: string,
  factor: number,
  also: readonly string[] = [],
  offset = 0,
): UnitRow => ({ symbol, also, kind, factor, offset, system });

const cm2_per_m2 = 10_000;
const inch2_m2 = factor.cm_per_inch ** 2 / cm2_per_m2;

/**
 * Every unit understood at the edges, with its factor to the canonical unit of its kind.
 *
 * @source NIST SP 811 (from memory) for the exact factors
 */
export const unitTable: readonly UnitRow[] = [
  unit("length", "metric", "cm", 1),
  unit("length", "metric", "m", 100),
  unit("length", "metric", "mm", 0.1),
  unit("length", "US", "in", factor.cm_per_inch, ["inch", "inches", '"']),
  unit("length", "US", "ft", factor.m_per_foot * 100, ["foot", "feet", "'"]),
  unit("area", "metric", "m²", 1, ["m2"]),
  unit("area", "metric", "cm²", 1 / cm2_per_m2, ["cm2"]),
  unit("area", "US", "in²", inch2_m2, ["in2", "sq in"]),
  unit("area", "US", "ft²", 144 * inch2_m2, ["ft2", "sq ft"]),
  unit("mass", "metric", "g", 1, ["gram", "grams"]),
  unit("mass", "metric", "kg", 1000),
  unit("mass", "metric", "mg", 0.001),
  unit("mass", "US", "oz", factor.g_per_ounce, ["ounce", "ounces"]),
  unit("mass", "US", "lb", factor.g_per_pound, ["lbs", "pound", "pounds"]),
  unit("volume", "metric", "mL", 1, ["ml", "cc"]),
  unit("volume", "metric", "L", 1000, ["l", "litre", "litres", "liter"]),
  unit("volume", "US", "US gal", factor.mL_per_US_gallon, ["gal", "gallon", "gallons"]),
  unit("volume", "US", "US qt", factor.mL_per_US_quart, ["qt", "quart"]),
  unit("volume", "US", "US cup", factor.mL_per_US_cup, ["cup", "cups"]),
  unit("volume", "US", "US fl oz", factor.mL_per_US_fluid_ounce, ["fl oz", "floz"]),
  unit("volume", "US", "US tbsp", factor.mL_per_US_tablespoon, ["tbsp", "tablespoon"]),
  unit("volume", "US", "US tsp", factor.mL_per_US_teaspoon, ["tsp", "teaspoon"]),
  unit("volume", "metric", "metric tbsp", factor.mL_per_metric_tablespoon),
  unit("volume", "metric", "metric tsp", factor.mL_per_metric_teaspoon),
  unit("volume", "imperial", "imp gal", factor.mL_per_imperial_gallon),
  unit("volume", "imperial", "imp fl oz", factor.mL_per_imperial_fluid_ounce),
  unit("temperature", "metric", "°C", 1, ["C", "degC"]),
  unit("temperature", "US", "°F", 5 / 9, ["F", "degF"], -32),
  unit("temperature", "metric", "K", 1, [], -factor.kelvinOffset_C),
  unit("speed", "metric", "m/s", 1, ["m s-1"]),
  unit("speed", "metric", "km/h", factor.m_s_per_km_h, ["kph"]),
  unit("speed", "metric", "km/d", factor.m_s_per_km_h / 24),
  unit("speed", "US", "mph", factor.m_s_per_mile_h),
  unit("speed", "imperial", "kn", factor.m_s_per_knot, ["knot", "knots"]),
  unit("pressure", "metric", "kPa", 1),
  unit("pressure", "metric", "hPa", factor.kPa_per_hPa, ["mbar"]),
  unit("pressure", "metric", "bar", factor.kPa_per_bar),
  unit("pressure", "metric", "mmHg", factor.kPa_per_mmHg),
  unit("pressure", "US", "inHg", factor.kPa_per_inHg),
  unit("daily irradiation", "metric", "MJ/m²/d", 1, ["MJ/m2/d"]),
  unit("daily irradiation", "metric", "W/m²", factor.MJ_m2_d_per_W_m2, ["W/m2"]),
  unit("daily irradiation", "metric", "kWh/m²/d", factor.MJ_per_kWh, ["kWh/m2/d"]),
  unit("daily irradiation", "US", "langley/d", factor.MJ_m2_per_langley, ["ly/d"]),
  unit("illuminance", "metric", "lx", 1, ["lux"]),
  unit("illuminance", "metric", "klx", 1000, ["klux"]),
  unit("illuminance", "US", "fc", factor.lx_per_footcandle, ["ft-c", "foot-candle", "foot-candles"]),
  unit("depth", "metric", "mm", 1),
  unit("depth", "US", "in", factor.cm_per_inch * 10, ["inch", "inches"]),
  unit("time", "metric", "d", 1, ["day", "days"]),
  unit("time", "metric", "h", 1 / 24, ["hour", "hours"]),
  unit("time", "metric", "min", 1 / 1440, ["minute", "minutes"]),
];
