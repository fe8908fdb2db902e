import type { PlantId } from "@sillwood/bench/book";
import { expect, it } from "vitest";
import { lookDrafts } from "./look-typed.ts";

const [plant, beside] = ["p1", "p2"] as unknown as [PlantId, PlantId];
const none = { tips: false, leaves: false, stem: false, tap: false };

it("a clean look carries its method, and nothing is written for what was not ticked", () => {
  expect(lookDrafts(plant, [beside], { ...none, tips: true, leaves: true }, {}, undefined)).toEqual([
    { kind: "scouting.looked", on: [plant], data: { way: "lens", tips_n: 3, leaves_n: 6, found: [] } },
  ]);
  expect(lookDrafts(plant, [], none, {}, undefined)).toEqual([]);
});

it("a find goes to the look and tells the neighbours", () => {
  const drafts = lookDrafts(plant, [beside], { ...none, stem: true }, { "fungus gnat": 2 }, "7");
  expect(drafts.map(({ kind, on }) => [kind, ...on])).toEqual([
    ["scouting.looked", plant],
    ["scouting.card", plant],
    ["scouting.exposed", beside],
  ]);
  expect(drafts[0]?.data).toMatchObject({ found: [{ pest: "fungus gnat", count_n: 2 }] });
  expect(drafts[1]?.data).toMatchObject({ out_d: 7, caught: [] });
});

it("with only a card, what flies was on the card; a lost card says nothing", () => {
  expect(lookDrafts(plant, [], none, { "fungus gnat": 3 }, "7")[0]?.data).toMatchObject({
    caught: [{ pest: "fungus gnat", count_n: 3 }],
  });
  expect(lookDrafts(plant, [], none, {}, "lost")[0]?.data).toEqual({ lost: true, caught: [] });
});
