/** Minutes are counted from here, so that seven digits last until 2044. */
const FROM_ms = Date.UTC(2025, 0, 1);
const MINUTE_ms = 60_000;
const DIGITS_n = 7;

/** Weights of the check digit: a slip of one digit is always found, a swap of neighbours nearly always. */
const WEIGHTS = [3, 7, 9, 1];
const checkOf = (digits: string): number =>
  [...digits].reduce(
    (sum, digit, place_n) => sum + Number(digit) * (WEIGHTS[place_n % WEIGHTS.length] ?? 1),
    0,
  ) % 10;

/** The moment a sheet was printed as eight digits: whoever types them sees the same round in the same order. */
export function sheetCode(printed_ms: number): string {
  const digits = String(Math.floor((printed_ms - FROM_ms) / MINUTE_ms)).padStart(DIGITS_n, "0");
  return `${digits}${checkOf(digits)}`;
}

/** The moment of a code; undefined when it is no sheet of ours. */
export function sheetMoment_ms(code: string): number | undefined {
  if (!/^\d{8}$/.test(code)) return undefined;
  const digits = code.slice(0, DIGITS_n);
  return checkOf(digits) === Number(code.at(-1)) ? FROM_ms + Number(digits) * MINUTE_ms : undefined;
}

/** A sheet's numbers are those of a whole minute, so that its code names them exactly. */
export const wholeMinute_ms = (at_ms: number): number => Math.floor(at_ms / MINUTE_ms) * MINUTE_ms;
