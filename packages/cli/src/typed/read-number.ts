import type { UnitSystem } from "@sillwood/bench/words";
import { bareUnit, fittingUnits, inSuffixUnit } from "./units.ts";

export type ReadNumber =
  | { readonly value: number }
  /** What is wrong, without the name of the field. */
  | { readonly wrong: string };

const SHAPE = /^([+\-−]?(?:\d+(?:[.,]\d+)?|[.,]\d+)(?:e[+-]?\d+)?)?\s*([½¼¾⅛⅜⅝⅞])?\s*(.*)$/i;
const PARTS: Readonly<Record<string, number>> = {
  "½": 1 / 2,
  "¼": 1 / 4,
  "¾": 3 / 4,
  "⅛": 1 / 8,
  "⅜": 3 / 8,
  "⅝": 5 / 8,
  "⅞": 7 / 8,
};
/** 1,200 is one thousand two hundred to some and one and a fifth to others. */
const TWO_WAYS = /^[+\-−]?[1-9]\d{0,2},\d{3}$/;
const LARGEST = 1e9;

/**
 * A number with or without a unit, in the unit of a suffix: `6.5floz`, `180 mL`, `7½ in`, `45%`, `1,5`.
 *
 * @param suffix unit suffix of the field: mL, C, frac, ...
 * @param units what a bare number means; `own` says that it is already in the unit of the suffix
 */
export function readNumber(typed: string, suffix: string, units: UnitSystem | "own"): ReadNumber {
  const text = typed.trim();
  const [, digits, part, rest = ""] = SHAPE.exec(text) ?? [];
  if (digits === undefined && part === undefined) return { wrong: "is no number" };
  if (digits !== undefined && TWO_WAYS.test(digits))
    return {
      wrong: `could be ${digits.replace(",", "")} or ${Number(digits.replace(",", "."))}; expected one of them, written without a comma`,
    };
  const whole = digits === undefined ? 0 : Number(digits.replace(",", ".").replace("−", "-"));
  const value = whole + (part === undefined ? 0 : (PARTS[part] as number));
  if (!Number.isFinite(value) || Math.abs(value) > LARGEST)
    return { wrong: `is beyond every range; expected at most ${LARGEST}` };
  if (rest !== "") return converted(value, rest.trim(), suffix);
  if (units !== "us") return { value };
  const unit = bareUnit(suffix, units);
  return unit === "" ? { value } : converted(value, unit, suffix);
}

function converted(value: number, unit: string, suffix: string): ReadNumber {
  const read = inSuffixUnit(value, unit, suffix);
  if (read !== undefined) return { value: read };
  const fitting = fittingUnits(suffix);
  return {
    wrong:
      fitting.length === 0
        ? `carries ${JSON.stringify(unit.slice(0, 40))}; expected a number without a unit`
        : `is in ${JSON.stringify(unit.slice(0, 40))}; expected ${listOf(fitting)}`,
  };
}

const listOf = (words: readonly string[]) =>
  words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} or ${words.at(-1)}`;
