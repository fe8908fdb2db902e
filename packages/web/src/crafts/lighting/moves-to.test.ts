import type { PlantId } from "@sillwood/bench/book";
import { expect, test } from "vitest";
import { movesTo } from "./moves-to.ts";

const a = "a" as PlantId;
const b = "b" as PlantId;
const spots = [{ spot: "1", plant: a }, { spot: "2", plant: b }, { spot: "3" }];

test("onto a taken spot the two change seats", () => {
  expect(movesTo(spots, a, "2")).toEqual([
    { kind: "plant.moved", on: [a], data: { to: "2" } },
    { kind: "plant.moved", on: [b], data: { to: "1" } },
  ]);
});

test("onto a free spot one moves; onto its own nothing does", () => {
  expect(movesTo(spots, b, "3")).toEqual([{ kind: "plant.moved", on: [b], data: { to: "3" } }]);
  expect(movesTo(spots, b, "2")).toEqual([]);
});
