import { expect, test } from "vitest";
import { heardWords } from "./heard-words.ts";

test("digits one by one, as a numeral, and with a point", () => {
  expect(heardWords("four one two", "en")).toEqual({ digits: "412" });
  expect(heardWords(" 412. ", "en")).toEqual({ digits: "412" });
  expect(heardWords("four 12", "en")).toEqual({ digits: "412" });
  expect(heardWords("one four point five", "en")).toEqual({ digits: "14.5" });
  expect(heardWords("vier eins zwo", "de")).toEqual({ digits: "412" });
  expect(heardWords("14,5", "de")).toEqual({ digits: "14.5" });
});

test("four words lead on, in the person's language", () => {
  expect(heardWords("Next.", "en")).toEqual({ word: "next" });
  expect(heardWords("again", "en")).toEqual({ word: "again" });
  expect(heardWords("noch einmal", "de")).toEqual({ word: "again" });
  expect(heardWords("auslassen", "de")).toEqual({ word: "skip" });
});

test("talk beside the scale is no weight, even with numbers in it", () => {
  for (const talk of ["pass me the four litre can", "next please hand me one", "1.2.3", "point", "", "-4"])
    expect(heardWords(talk, "en"), talk).toHaveProperty("unknown");
  expect(heardWords("four", "de")).toHaveProperty("unknown");
});
