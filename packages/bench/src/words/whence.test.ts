import { expect, it } from "vitest";
import type { PlantId } from "../book/entry.ts";
import { usualCapacity } from "../plants/capacity.ts";
import { unmetPlant } from "../plants/fold.ts";
import { type ReadingName, readingKinds } from "../readings.ts";
import { type Language, sayFor, type UnitSystem } from "./index.ts";

const sayIn = (language: Language, units: UnitSystem = "metric") =>
  sayFor({ language, units, zone: "UTC", nameOf: (id) => id });

const plant = unmetPlant("plant-1" as PlantId, 0);

it("says where a usual reading comes from in the language of whoever asks", () => {
  for (const name of Object.keys(readingKinds) as ReadingName[]) {
    const { from } = readingKinds[name].usual(plant, 0);
    expect(from(sayIn("de")), name).not.toBe(from(sayIn("en")));
  }
});

it("says it in the units of whoever asks", () => {
  const { from } = usualCapacity(plant);
  expect(from(sayIn("en"))).toContain("mL of");
  expect(from(sayIn("en", "us"))).toContain("cups of");
});
