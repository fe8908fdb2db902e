import { beforeEach, expect, test } from "vitest";
import { setTyped, typeDigit, typed } from "./typed-number.ts";

beforeEach(() => setTyped(""));

test("the code of a sheet keeps the noughts with which it begins", () => {
  for (const digit of "00196501") typeDigit(digit);
  expect(typed()).toBe("00196501");
});

test("nothing is typed beyond the eighth digit", () => {
  for (const digit of "127000001") typeDigit(digit);
  expect(typed()).toBe("12700000");
});
