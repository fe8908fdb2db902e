import { afterAll, beforeAll, expect, it } from "vitest";
import { demoLook, openDemo } from "../src/demo-book.ts";
import { openDevice } from "../src/device.ts";
import { settled } from "../src/every-screen.ts";
import type { House } from "../src/house.ts";
import { entriesOf } from "../src/served-book.ts";

let house: House;
beforeAll(async () => {
  house = await openDemo();
});
afterAll(() => house?.discard());

it("speaks German from its first screen on, in the house's words and in the engine's, and English when it is told to", async () => {
  const device = await openDevice({ ...demoLook, locale: "de-DE" });
  const { page } = device;
  try {
    await page.goto(house.address);
    await page.getByRole("button", { name: "DIE GÄRTNERIN" }).click();
    await page.getByText("Ich habe, in Minuten").waitFor();
    expect(await page.locator("html").getAttribute("lang")).toBe("de");
    const plant = (await entriesOf(house)).find(
      ({ kind, data }) => kind === "plant.brought" && data["number"] === 127,
    )?.on[0];
    await page.goto(`${house.address}#/plant/${plant}`);
    await settled(page);
    const said = (await page.locator("main").innerText()).replace(/\s+/g, " ");
    // The house's frame, the crafts' heads and where numbers come from.
    expect(said).toContain("Was bekannt ist");
    expect(said).toContain("Wasser übrig");
    expect(said).toMatch(/gemessen notiert/);
    expect(said).not.toMatch(/\b(the|and|water|leaves|days)\b/i);
    await page.goto(`${house.address}#/settings`);
    await settled(page);
    await page.getByRole("radio", { name: "English" }).or(page.getByText("English")).first().click();
    await page.goto(`${house.address}#/plants`);
    await settled(page);
    expect(await page.locator("main").innerText()).not.toMatch(/undefined|Pflanze/);
    await page.getByRole("button", { name: "NEW PLANT" }).waitFor();
  } finally {
    await device.discard();
  }
});
