import { afterAll, beforeAll, expect, it } from "vitest";
import { demoLook, openDemo } from "../src/demo-book.ts";
import { openDevice } from "../src/device.ts";
import { settled } from "../src/every-screen.ts";
import type { House } from "../src/house.ts";
import { enter, entriesOf } from "../src/served-book.ts";
import { walkerOn } from "../src/walker.ts";

let house: House;
beforeAll(async () => {
  house = await openDemo();
});
afterAll(() => house?.discard());

it("walk 22: droops, can't tell: a ranking, and nothing moves on what could not be told", async () => {
  const device = await openDevice(demoLook);
  const walker = walkerOn(device);
  try {
    const { page } = device;
    await enter(page, house, "grower");
    const plant = (await entriesOf(house)).find(
      ({ kind, data }) => kind === "plant.brought" && data["number"] === 107,
    )?.on[0];
    await page.goto(`${house.address}#/wrong/${plant}`);
    await page.getByRole("heading", { level: 1, name: "What is wrong?" }).waitFor();
    await settled(page);
    const ranking = () => page.locator("ol > li").allTextContents();
    await walker.tap(page.getByRole("button", { name: /droop/ }));
    await page.getByText("One look would settle it:").waitFor();
    const before = await ranking();
    expect(await page.getByText("A ranking, not a chance").count()).toBe(1);
    await walker.tap(page.getByRole("button", { name: /can.t tell/i }).first());
    await settled(page);
    expect(await ranking()).toEqual(before);
    expect(await page.getByRole("heading", { name: "Do now" }).count()).toBe(1);
    expect(await page.getByRole("heading", { name: "Do not" }).count()).toBe(1);
    await walker.shoot("walk-22-ranking");
    walker.finish({ taps_n: 4 });
  } finally {
    await device.discard();
  }
});
