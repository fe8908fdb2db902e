import { afterAll, beforeAll, expect, it } from "vitest";
import { accessibilityTroubles } from "../src/accessibility.ts";
import { demoLook, openDemo } from "../src/demo-book.ts";
import { openDevice } from "../src/device.ts";
import { settled } from "../src/every-screen.ts";
import type { House } from "../src/house.ts";
import { mainKeyTrouble, sidewaysTroubles } from "../src/layout.ts";
import { enter, entriesOf, entriesSince } from "../src/served-book.ts";
import { walkerOn } from "../src/walker.ts";

let house: House;
beforeAll(async () => {
  house = await openDemo();
});
afterAll(() => house?.discard());

it("walk 15: four bags and a shallow bowl become scoops; the wet layer moves with the depth; says when no mix will do", async () => {
  const device = await openDevice(demoLook);
  const walker = walkerOn(device);
  try {
    const { page } = device;
    await enter(page, house, "grower");
    const entries = await entriesOf(house);
    await page.goto(`${house.address}#/craft/potting/mix`);
    await page.getByRole("heading", { name: "Mix medium" }).waitFor();
    await settled(page);
    const bag = (name: RegExp) => page.getByRole("button", { name });
    const wet = async () => Number(await page.locator("[data-wet-share]").getAttribute("data-wet-share"));
    expect(await page.getByRole("button", { name: "CHOOSE BAGS FIRST" }).isVisible()).toBe(true);

    await walker.tap(bag(/^peat and perlite 70:30/));
    await walker.tap(bag(/^coir and perlite 80:20/));
    await walker.tap(page.getByRole("radio", { name: "oval" }).locator(".."));
    // The bowl is set by dragging: one decision, no typing.
    const depth = page.getByRole("slider", { name: /^Depth/ });
    await depth.fill("5");
    await page.getByText(/Granular mixes only in this tray/).waitFor();
    await expect.poll(wet, { timeout: 10_000 }).toBe(1);
    expect(await page.getByRole("button", { name: "NO MIX OF THESE WILL DO" }).isVisible()).toBe(true);
    await settled(page);
    await walker.shoot("walk-15-no-mix");

    await walker.tap(bag(/^pumice$/));
    await walker.tap(bag(/^bark$/));
    await page.getByRole("heading", { name: "Recipe" }).waitFor();
    await settled(page);
    const main = page.locator("main");
    const recipe = await main.locator("ol").first().innerText();
    expect(recipe).toMatch(/1\. \d+ × (pumice|bark)/);
    expect(await main.innerText()).toMatch(/Chance of 15.% air or more after watering: about \d+ in 10/);
    // Weighed: how much a scoop is and what all of it weighs.
    expect(await main.innerText()).toMatch(/a scoop of [\d,]+.mL each; [\d,]+.g when dry/);
    await walker.shoot("walk-15-recipe");
    expect(await accessibilityTroubles(page)).toEqual([]);
    expect(await sidewaysTroubles(page)).toEqual([]);
    expect(await mainKeyTrouble(page)).toBeUndefined();

    const shallow = await wet();
    await depth.fill("14");
    await expect.poll(wet, { timeout: 10_000 }).toBeLessThan(shallow);
    await settled(page);
    await walker.shoot("walk-15-deep");
    expect(await entriesSince(house, entries)).toEqual([]);
    // Five taps and two drags: seven decisions of the twelve allowed, and nothing typed.
    walker.finish({ taps_n: 5, decisions_n: 12 - 2, digits_n: 0 });
  } finally {
    await device.discard();
  }
});
