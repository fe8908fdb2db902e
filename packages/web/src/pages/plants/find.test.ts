import type { PlantId } from "@sillwood/bench/book";
import { describe, expect, it } from "vitest";
import { isFound } from "./find.ts";

const row = { plant: "p" as PlantId, number: "127", kind: "red cayenne, year 3", spotName: "South sill S6" };

describe("isFound", () => {
  it("finds by the start of a number and by words in any order", () => {
    expect(isFound(row, "South sill", "12")).toBe(true);
    expect(isFound(row, "South sill", "27")).toBe(false);
    expect(isFound(row, "South sill", "sill cayenne")).toBe(true);
    expect(isFound(row, "South sill", "lantern")).toBe(false);
    expect(isFound(row, "South sill", "")).toBe(true);
  });
});
