import { expect, it } from "vitest";
import { chanceOf } from "../nursery/chance.ts";
import { colonyOf } from "./colony.ts";
import { creatureNames, drawCreature, paceAt } from "./creatures.ts";
import { drawEyes } from "./eyes.ts";
import { watchedRun } from "./watched-plants.ts";

const total = (counts: Readonly<Record<string, number>>) =>
  Object.values(counts).reduce((sum, n) => sum + n, 0);

it("pests live faster in the warm, stand still in the cold and stop in the heat", () => {
  const aphid = drawCreature("aphid", chanceOf(1));
  expect(paceAt(20, aphid)).toBeCloseTo(1, 9);
  expect(paceAt(25, aphid)).toBeGreaterThan(1.2);
  expect(paceAt(aphid.still_C, aphid)).toBe(0);
  expect(paceAt(aphid.fastest_C + 9, aphid)).toBe(0);
});

it("a warm colony outgrows a cool one and every kind can grow", () => {
  for (const name of creatureNames) {
    const grown = [17, 24].map((air_C) => {
      let sum = 0;
      for (let seed = 0; seed < 8; seed++) {
        const chance = chanceOf(`${name} ${seed}`);
        const colony = colonyOf(drawCreature(name, chance), 1, chance);
        colony.found("adult", 3);
        for (let day = 0; day < (name === "aphid" ? 14 : 28); day++) colony.day(air_C, 2);
        sum += total(colony.counts());
      }
      return sum;
    });
    expect(grown[1], name).toBeGreaterThan(grown[0] as number);
  }
});

it("a lone gnat cohort leaves no adult on a card for more than two weeks", () => {
  const chance = chanceOf(5);
  const colony = colonyOf(drawCreature("fungus gnat", chance), 1, chance);
  colony.found("egg", 20);
  const adults: number[] = [];
  for (let day = 0; day < 30; day++) {
    colony.day(20, 0);
    adults.push(colony.counts().adult);
  }
  expect(adults.slice(0, 14).every((count) => count === 0)).toBe(true);
  expect(adults.slice(18).some((count) => count > 0)).toBe(true);
});

it("nobody finds what is not there, and many are found sooner than few", () => {
  const eyes = drawEyes(chanceOf(3));
  const none = { egg: 0, young: 0, pupa: 0, adult: 0 };
  let few = 0;
  let many = 0;
  for (let i = 0; i < 200; i++) {
    expect(eyes.look("lens", "aphid", none, 0)).toBe(0);
    few += Math.min(1, eyes.look("lens", "aphid", { ...none, adult: 1 }, 0));
    many += Math.min(1, eyes.look("lens", "aphid", { ...none, adult: 12 }, 0));
  }
  expect(many).toBeGreaterThan(2 * few);
});

it("a run is the same from the same seed; bought and exposed plants bring more than quiet ones", () => {
  expect(watchedRun(4, 6, 20)).toEqual(watchedRun(4, 6, 20));
  const brought: Record<string, number[]> = {};
  for (let seed = 1; seed <= 12; seed++)
    for (const plant of watchedRun(seed, 40, 1).plants)
      brought[plant.origin] = [
        ...(brought[plant.origin] ?? []),
        creatureNames.filter((name) => plant.isOn[name][0]).length,
      ];
  const mean = (key: string) =>
    (brought[key] ?? []).reduce((sum, n) => sum + n, 0) / (brought[key]?.length ?? 1);
  expect(mean("bought")).toBeGreaterThan(1.5 * mean("quiet"));
  expect(mean("exposed")).toBeGreaterThan(1.5 * mean("quiet"));
});
