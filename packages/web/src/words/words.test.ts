import { expect, test } from "vitest";
import { de as german } from "./de/index.ts";
import { light as germanLight } from "./de/light.ts";
import { people as germanPeople } from "./de/people.ts";
import { potting as germanPotting } from "./de/potting.ts";
import { en as english } from "./en/index.ts";
import { light as englishLight } from "./en/light.ts";
import { people as englishPeople } from "./en/people.ts";
import { potting as englishPotting } from "./en/potting.ts";
import { stretch, stretchTexts, stretchWords } from "./stretch.ts";

/** The catalogues with the words that come later, with the pages of a craft. */
const en = { ...english, light: englishLight, potting: englishPotting, people: englishPeople };
const de = { ...german, light: germanLight, potting: germanPotting, people: germanPeople };

/** Every text of a catalogue with its path; functions are called with small arguments. */
function texts(words: object, path = ""): [string, unknown][] {
  return Object.entries(words).flatMap(([key, value]): [string, unknown][] => {
    const at = `${path}${key}`;
    if (typeof value === "function") return [[at, value("2", "3", "4", "5")]];
    if (value !== null && typeof value === "object") return texts(value, `${at}.`);
    return [[at, value]];
  });
}

test("German says everything that English says", () => {
  expect(
    texts(de)
      .map(([path]) => path)
      .sort(),
  ).toEqual(
    texts(en)
      .map(([path]) => path)
      .sort(),
  );
});

test("no text is empty or shows a hole", () => {
  for (const [path, text] of [...texts(en), ...texts(de)]) {
    expect(typeof text, path).toBe("string");
    expect(text, path).not.toMatch(/^$|undefined|NaN|\[object/);
  }
});

test("the test locale is at least two fifths longer and full of umlauts", () => {
  const long = stretch("Round of the south sill");
  expect(long.length).toBeGreaterThanOrEqual(23 * 1.4 - 2);
  expect(long).toMatch(/[äöü]/);
  expect(stretch("127")).toBe("127");
  expect(stretchWords(en).pot.done("180 mL")).toMatch(/^DÖNE 180 mL .+/);
});

test("what the machine reads is never lengthened", () => {
  const act = { kind: "watering.watered", data: { name: "x y" } };
  const answer = { said: "180 mL of water", id: "south sill", kind: "watering.watered", act };
  const long = stretchTexts(answer);
  expect(long.said.length).toBeGreaterThan(answer.said.length);
  expect(long).toMatchObject({ id: "south sill", kind: "watering.watered", act });
});
