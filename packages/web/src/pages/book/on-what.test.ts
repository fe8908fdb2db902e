import { describe, expect, it } from "vitest";
import { numbersIn } from "./on-what.tsx";

describe("numbersIn", () => {
  it("reads numbers and stretches of them", () => {
    expect(numbersIn("127 128, 130-133")).toEqual([127, 128, 130, 131, 132, 133]);
  });
  it("leaves words and backward or endless stretches aside", () => {
    expect(numbersIn("sill 133-130 1-99999")).toEqual([]);
  });
});
