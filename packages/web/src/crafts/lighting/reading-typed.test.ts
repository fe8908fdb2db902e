import { type AnyEntryKind, checkData } from "@sillwood/bench/book";
import { lightKinds } from "@sillwood/bench/places";
import { expect, test } from "vitest";
import { isPossible, lampData, type Meter, pairData, rangeOf, readingOf } from "./reading-typed.ts";

test("what is typed is kept in lux or µmol; foot-candles become lux", () => {
  expect(readingOf("1400", "lux")).toBe(1400);
  expect(readingOf("12,5", "umol")).toBe(12.5);
  expect(readingOf("130", "fc")).toBe(1399);
  for (const text of ["", "0", ".", "abc"]) expect(readingOf(text, "lux")).toBeUndefined();
});

test("limits are those of the kinds of entries, in the unit of the meter", () => {
  const kept = (text: number, meter: Meter) => readingOf(`${text}`, meter) as number;
  for (const meter of ["lux", "fc", "umol"] as const) {
    for (const where of ["inside", "outside", "lamp"] as const) {
      const [min, max] = rangeOf(where, meter);
      for (const edge of [min, max])
        expect(isPossible(kept(edge, meter), where, meter), `${where} ${meter}`).toBe(true);
      expect(isPossible(kept(max * 1.01, meter), where, meter)).toBe(false);
      const data =
        where === "lamp"
          ? lampData(kept(max, meter), meter)
          : pairData(kept(max, meter), kept(max, meter), meter, "clear");
      const kind = where === "lamp" ? lightKinds.underLamp : lightKinds.pair;
      expect(checkData(kind as AnyEntryKind, data), `${where} ${meter}`).toEqual([]);
    }
  }
  expect(isPossible(49, "outside", "lux")).toBe(false);
});
