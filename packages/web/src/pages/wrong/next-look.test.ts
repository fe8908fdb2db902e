import type { Sign } from "@sillwood/bench/crafts";
import { expect, test } from "vitest";
import { nextLook } from "./next-look.ts";

const sign = (key: string, weight: number, question?: string): Sign => ({
  key,
  cause: key,
  weight,
  evidence: [],
  ...(question
    ? {
        lookApart: {
          question,
          answers: [
            { key: `${question} yes`, said: "yes" },
            { key: `${question} no`, said: "no" },
          ],
        },
      }
    : {}),
  doNow: [],
  doNot: [],
  lookAgainIn_h: 24,
});

test("the look that two leading causes share comes before the look of a likelier third", () => {
  const signs = [sign("heat", 1, "dusk"), sign("thirst", 0.7, "lift"), sign("wet roots", 0.6, "lift")];
  expect(nextLook(signs, [], [])?.question).toBe("lift");
});

test("what was answered or could not be told is asked no more", () => {
  const signs = [sign("heat", 1, "dusk"), sign("thirst", 0.7, "lift"), sign("wet roots", 0.6, "lift")];
  expect(nextLook(signs, ["lift no"], [])?.question).toBe("dusk");
  expect(nextLook(signs, [], ["lift"])?.question).toBe("dusk");
  expect(nextLook(signs, ["dusk yes"], ["lift"])).toBeUndefined();
});

test("once a look has settled it, an unlikely cause asks nothing", () => {
  expect(nextLook([sign("wet roots", 8), sign("heat", 0.15, "dusk")], ["heavy pot"], [])).toBeUndefined();
  expect(nextLook([], [], [])).toBeUndefined();
});
