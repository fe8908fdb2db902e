import { expect, test } from "vitest";
import { sheetCode, sheetMoment_ms, wholeMinute_ms } from "./sheet-code.ts";

const now_ms = Date.UTC(2026, 0, 14, 7, 31, 29);

test("a code leads back to the minute of the sheet", () => {
  expect(sheetCode(now_ms)).toMatch(/^\d{8}$/);
  expect(sheetMoment_ms(sheetCode(now_ms))).toBe(wholeMinute_ms(now_ms));
});

test("one wrong digit is found at every place", () => {
  const code = sheetCode(now_ms);
  for (let place_n = 0; place_n < code.length; place_n++)
    for (let slip = 1; slip < 10; slip++) {
      const wrong = code.slice(0, place_n) + ((Number(code[place_n]) + slip) % 10) + code.slice(place_n + 1);
      expect(sheetMoment_ms(wrong), wrong).toBeUndefined();
    }
});

test("pot numbers and words are no sheet", () => {
  for (const text of ["127", "", "1234567a", "123456789"]) expect(sheetMoment_ms(text)).toBeUndefined();
});
