import { describe, expect, it } from "vitest";
import { sayFor } from "../words/say-for.ts";
import type { Brought } from "./kinds.ts";
import { plantSentences } from "./sentences.ts";

const say = (language: "en" | "de") => sayFor({ language, units: "metric", zone: "UTC", nameOf: (id) => id });

describe("plant sentences", () => {
  it("says a plant that was brought in without a word of its medium, as entries may leave out what has a default", () => {
    const bare = { habit: "thin" } as Brought;
    expect(plantSentences(say("en")).brought(bare)).toContain("medium not known");
    expect(plantSentences(say("de")).brought(bare)).toContain("Substrat unbekannt");
  });
});
