import type { UnitSystem } from "@sillwood/bench/words";
import { findUnit, type QuantityKind, toCanonical, unitTable } from "@sillwood/science/units";
import { own } from "./own.ts";

/** A foot-candle is a lumen on a square foot, exactly 0.3048 m squared. */
const LUX_PER_FC = 1 / 0.3048 ** 2;

/** What a suffix measures, and how many of the canonical unit it is: a caliper is kept in mm, a pot in cm. */
interface Measure {
  readonly kind: QuantityKind;
  /** The unit of the suffix as the table writes it. */
  readonly symbol: string;
  /** The unit that people of US units mean by a bare number. */
  readonly us: string;
}

const MEASURES: Readonly<Record<string, Measure>> = {
  mL: { kind: "volume", symbol: "mL", us: "US fl oz" },
  g: { kind: "mass", symbol: "g", us: "oz" },
  cm: { kind: "length", symbol: "cm", us: "in" },
  mm: { kind: "length", symbol: "mm", us: "in" },
  m: { kind: "length", symbol: "m", us: "ft" },
  m2: { kind: "area", symbol: "m²", us: "ft²" },
  C: { kind: "temperature", symbol: "°C", us: "°F" },
  m_s: { kind: "speed", symbol: "m/s", us: "mph" },
  kPa: { kind: "pressure", symbol: "kPa", us: "inHg" },
  MJ_m2_d: { kind: "daily irradiation", symbol: "MJ/m²/d", us: "MJ/m²/d" },
  min: { kind: "time", symbol: "min", us: "min" },
  h: { kind: "time", symbol: "h", us: "h" },
  d: { kind: "time", symbol: "d", us: "d" },
};

/** Names that are no quantity of the table: shares, compass, light. They take their own unit only. */
const OWN_NAMES: Readonly<Record<string, readonly string[]>> = {
  deg: ["°", "deg", "degrees"],
  mol_m2_d: ["mol", "mol/m²/d", "mol/m2/d", "mol/m²d", "mol/m2d"],
  lux: ["lux", "lx", "fc"],
  W: ["W", "watts", "watt"],
  umol_J: ["µmol/J", "umol/J"],
  minor_kWh: ["cents", "ct"],
  umol_m2_s: ["µmol", "umol", "µmol/m²/s", "umol/m2/s", "µmol/m²s", "umol/m2s"],
  ms: ["ms"],
  n: [],
};

/** The unit whose suffix a name carries where no bench field says so: `minutes` are minutes. */
export const suffixOf = (suffix: string, unit: string): string =>
  suffix === "" && unit === "min" ? "min" : suffix;

/** The unit in which a bare number of this suffix is read, as people write it. */
export function bareUnit(suffix: string, units: UnitSystem): string {
  const measure = own(MEASURES, suffix);
  if (suffix === "lux" && units === "us") return "fc";
  if (!measure) return own(OWN_NAMES, suffix)?.[0] ?? "";
  return units === "us" ? measure.us : measure.symbol;
}

/** Spellings of units that fit a suffix, for messages. */
export function fittingUnits(suffix: string): readonly string[] {
  const measure = own(MEASURES, suffix);
  if (measure) return unitTable.filter(({ kind }) => kind === measure.kind).map(({ symbol }) => symbol);
  return suffix === "frac" ? ["%"] : (own(OWN_NAMES, suffix) ?? []);
}

/**
 * A value in the unit of the suffix.
 *
 * @param written the unit as somebody wrote it
 * @returns undefined when the unit does not measure this
 */
export function inSuffixUnit(value: number, written: string, suffix: string): number | undefined {
  if (suffix === "frac") return written === "%" ? value / 100 : undefined;
  const measure = own(MEASURES, suffix);
  if (suffix === "lux" && written === "fc") return tidy(value * LUX_PER_FC);
  if (!measure) return (own(OWN_NAMES, suffix) ?? []).some((name) => name === written) ? value : undefined;
  const row = findUnit(measure.kind, written) ?? findUnit(measure.kind, written.replaceAll("_", "/"));
  const kept = findUnit(measure.kind, measure.symbol);
  if (!row || !kept) return undefined;
  const canonical = toCanonical({ value, kind: measure.kind, unit: row.symbol });
  return tidy(row === kept ? value : canonical / kept.factor - kept.offset);
}

/** Fifteen digits are all that a double holds; what a conversion leaves behind them is noise. */
const tidy = (value: number): number => Number(value.toPrecision(14));
