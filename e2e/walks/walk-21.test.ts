import { afterAll, beforeAll, expect, it } from "vitest";
import { accessibilityTroubles } from "../src/accessibility.ts";
import { askDemo, DEMO_NOW_ms, demoLook, openDemo } from "../src/demo-book.ts";
import { openDevice } from "../src/device.ts";
import { settled } from "../src/every-screen.ts";
import type { House } from "../src/house.ts";
import { sidewaysTroubles } from "../src/layout.ts";
import { allOnServer, enter, entriesOf, entriesSince } from "../src/served-book.ts";
import { walkerOn } from "../src/walker.ts";

let house: House;
beforeAll(async () => {
  house = await openDemo();
});
afterAll(() => house?.discard());

interface Cleared {
  readonly plants: readonly { readonly label: string | null; readonly sell: { readonly open: boolean } }[];
}

it("walk 21: a spray without a re-entry time is refused; with it the label's dates hold everybody", async () => {
  const device = await openDevice(demoLook);
  const walker = walkerOn(device);
  try {
    const { page } = device;
    await enter(page, house, "grower");
    const before = await entriesOf(house);
    const plant =
      before.find(({ kind, data }) => kind === "plant.brought" && data["number"] === 131)?.on[0] ?? "";
    await page.goto(`${house.address}#/craft/scout/${plant}/treat`);
    await page.getByRole("heading", { level: 1, name: "Treat pot 131" }).waitFor();
    await settled(page);
    const main = page.locator("main");
    expect(await accessibilityTroubles(page)).toEqual([]);
    expect(await sidewaysTroubles(page)).toEqual([]);
    await main.getByText(/^(Can win|Cannot win)/).waitFor();
    expect(await main.locator("[data-gate]").count()).toBeGreaterThan(4);
    await walker.shoot("walk-21-gates");
    await page.getByLabel("Name on the label").fill("Rinsewell soap");
    await page.getByLabel(/^Do not pick for/).fill("1");
    await walker.tap(page.getByRole("button", { name: "TREATED: write it" }));
    await main
      .getByText("This label has no re-entry time written. Without it the spray cannot be planned.")
      .waitFor();
    expect(await entriesSince(house, before)).toEqual([]);
    await page.getByLabel(/^Do not touch for/).fill("12");
    await main.getByText(/untouchable until/).waitFor();
    await main.getByText(/do not pick until/).waitFor();
    await walker.shoot("walk-21-label");
    await walker.tap(page.getByRole("button", { name: "TREATED: write it" }));
    await page.getByRole("heading", { level: 1, name: "Look, pot 131" }).waitFor();
    await allOnServer(page);
    const written = await entriesSince(house, before);
    expect(written.map(({ kind, data }) => [kind, data["reentry_h"], data["preharvest_d"]])).toEqual([
      ["scouting.treated", 12, 1],
    ]);
    const { plants } = await askDemo<Cleared>(house, ["clear", "131"], DEMO_NOW_ms + 3_600_000);
    expect(plants[0]?.label).toMatch(/not to be touched until/);
    expect(plants[0]?.sell.open).toBe(false);
    walker.finish({ taps_n: 8 });
  } finally {
    await device.discard();
  }
});
