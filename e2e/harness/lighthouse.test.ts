import { afterAll, beforeAll, expect, it } from "vitest";
import type { House } from "../src/house.ts";
import { judgePage } from "../src/lighthouse.ts";
import { openTrial } from "./open-trial.ts";

let house: House;
beforeAll(async () => {
  house = await openTrial();
});
afterAll(() => house?.discard());

it("gives full marks to a clean page and names what costs marks on another", async () => {
  const clean = await judgePage(house.address);
  expect(clean.failing).toEqual([]);
  expect(clean.scores).toEqual({ accessibility: 100, "best-practices": 100 });
  const pale = await judgePage(`${house.address}?pale`, ["accessibility"]);
  expect(pale.scores.accessibility).toBeLessThan(100);
  expect(pale.failing.join()).toContain("color-contrast");
});

it("says so when there is no page to judge", async () => {
  await expect(judgePage("http://127.0.0.1:9/")).rejects.toThrow("Lighthouse could not judge");
});
