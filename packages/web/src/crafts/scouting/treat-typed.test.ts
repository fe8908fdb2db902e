import { expect, it } from "vitest";
import { numberOf, treatedData } from "./treat-typed.ts";

const typed = {
  product: "soap",
  reentry: "12",
  preharvest: "1",
  strength: "2",
  volume: "500",
  every: "4",
  times: "3",
};

it("reads numbers with comma or point and nothing else", () => {
  expect([numberOf("0,5"), numberOf("12"), numberOf(""), numberOf("a"), numberOf("-1")]).toEqual([
    0.5,
    12,
    undefined,
    undefined,
    undefined,
  ]);
});

it("what the label does not say is left out, never 0", () => {
  const data = treatedData({ tool: "soap", pest: "aphid" }, { ...typed, reentry: "" });
  expect(data).not.toHaveProperty("reentry_h");
  expect(data).toMatchObject({
    product: "soap",
    preharvest_d: 1,
    strength_frac: 0.02,
    every_d: 4,
    course_n: 3,
  });
});

it("washing has no label", () => {
  expect(treatedData({ tool: "wash", pest: "aphid" }, typed)).toEqual({
    tool: "wash",
    against: ["aphid"],
    course_n: 3,
    every_d: 4,
  });
});
