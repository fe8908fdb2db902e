import { expect, test } from "vitest";
import { clockOf, hourOf, timerData } from "./timer-typed.ts";

test("clocks and hours are each other's inverse", () => {
  for (const clock of ["00:00", "05:30", "17:05", "23:59"])
    expect(clockOf(hourOf(clock) ?? Number.NaN)).toBe(clock);
  expect(clockOf(25.5)).toBe("01:30");
  for (const clock of ["", "24:00", "7", "12:60"]) expect(hourOf(clock)).toBeUndefined();
});

test("a lamp burns from on to off, through midnight if it must", () => {
  expect(timerData(17, 20.5)).toEqual({ from_h: 17, hours_h: 3.5 });
  expect(timerData(22, 4)).toEqual({ from_h: 22, hours_h: 6 });
  expect(timerData(6, 6)).toEqual({ from_h: 6, hours_h: 24 });
  expect(timerData(undefined, 6)).toBeUndefined();
});
