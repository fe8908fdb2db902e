import type { Task } from "@sillwood/bench/round";
import { expect, test } from "vitest";
import { actOf, lineOf, skipOf, stepOf } from "./acts.ts";

const task = {
  plant: "p",
  amount: { value: 180, unit: "mL" },
  act: { kind: "watering.watered", data: { volume_mL: 180, drained: "unknown" } },
} as unknown as Task;

test("DONE writes the advised act", () => {
  expect(actOf(task)).toEqual({
    kind: "watering.watered",
    on: ["p"],
    data: { volume_mL: 180, drained: "unknown" },
  });
});

test("another amount goes into the field of the same unit and leaves the rest", () => {
  expect(actOf(task, 160).data).toEqual({ volume_mL: 160, drained: "unknown" });
});

test("an act without a number of that unit stays as advised", () => {
  const look = { ...task, act: { kind: "watering.looked", data: { look: "dry", yes: true } } } as Task;
  expect(actOf(look, 160).data).toEqual({ look: "dry", yes: true });
});

test("a step is about a tenth, in half marks of the jug, never nothing", () => {
  expect(stepOf(task, 20)).toBe(20);
  expect(stepOf({ ...task, amount: { value: 15, unit: "mL" } } as Task, 20)).toBe(10);
});

test("what was left is written by craft and work, and what nobody was sure of waits for the grower", () => {
  const look = { ...task, craft: "watering", work: "look" } as Task;
  const skipped = {
    kind: "round.skipped",
    on: ["p"],
    data: { task: "watering:look", reason: "no reason said" },
  };
  expect(skipOf(look, "no reason said")).toEqual([skipped]);
  expect(skipOf(look, "not sure", "not sure: LOOK")).toMatchObject([
    { kind: "round.skipped", data: { reason: "not sure" } },
    { kind: "round.left", on: ["p"], data: { text: "not sure: LOOK" } },
  ]);
});

test("a verb is not said twice", () => {
  expect(lineOf({ title: "WATER", said: "180 mL", amount: { value: 180, unit: "mL" } })).toBe("WATER 180 mL");
  expect(lineOf({ title: "LOOK", said: "look at the roots" })).toBe("look at the roots");
});
