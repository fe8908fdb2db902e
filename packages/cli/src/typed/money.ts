import type { TypedValue } from "./typing.ts";

/** A price as people write it, `12.90` or `12,90 EUR`, in minor units of its currency (two decimals where none is named). */
export function readMoney(
  text: string,
  typed: readonly TypedValue[],
): { readonly value: number } | { readonly wrong: string } {
  const match = /^(\d{1,9})(?:[.,](\d{1,3}))?\s*([A-Za-z]{3})?$/.exec(text.trim());
  if (!match) return { wrong: "expected a price as 12.90" };
  const currency = (match[3] ?? typed.find(({ key }) => key === "currency")?.text ?? "EUR").toUpperCase();
  if (!/^[A-Z]{3}$/.test(currency))
    return { wrong: "expected a currency code of three letters beside it, as EUR" };
  const digits_n =
    new Intl.NumberFormat("en", { style: "currency", currency }).resolvedOptions().maximumFractionDigits ?? 2;
  const part = match[2] ?? "";
  if (part.length > digits_n) return { wrong: `expected at most ${digits_n} decimals in ${currency}` };
  return { value: Number(match[1]) * 10 ** digits_n + Number(part.padEnd(digits_n, "0") || "0") };
}
