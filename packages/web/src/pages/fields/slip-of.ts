import type { UnitSystem } from "@sillwood/bench/words";

/** What a number outside its range most likely was meant to be. */
export interface LikelySlip {
  readonly value: number;
  readonly why: "fahrenheit" | "celsius" | "digit" | "percent" | "sign";
}

interface Range {
  readonly min: number;
  readonly max: number;
  readonly unit: string;
}

/**
 * The likely slip behind a value, in the kept unit: degrees of the other scale, a digit too many, a share typed as per cent.
 * Undefined when nothing likely lies inside the range.
 */
export function slipOf(value: number, { min, max, unit }: Range, system: UnitSystem): LikelySlip | undefined {
  const fits = (one: number) => one >= min && one <= max;
  if (fits(value)) return undefined;
  if (unit === "°C") {
    const asF_C = (value - 32) / 1.8;
    // With US units the field was read as °F already: then somebody typed °C.
    const asC_C = value * 1.8 + 32;
    if (system === "metric" && fits(asF_C)) return { value: asF_C, why: "fahrenheit" };
    if (system === "us" && fits(asC_C)) return { value: asC_C, why: "celsius" };
  }
  if (max <= 1.5 && value > 1 && fits(value / 100)) return { value: value / 100, why: "percent" };
  if (value > max && fits(value / 10)) return { value: value / 10, why: "digit" };
  if (value < 0 && fits(-value)) return { value: -value, why: "sign" };
  return undefined;
}
