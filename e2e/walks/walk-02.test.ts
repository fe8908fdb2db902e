import { expect, it } from "vitest";
import { accessibilityTroubles } from "../src/accessibility.ts";
import { demoLook, openDemo } from "../src/demo-book.ts";
import { openDevice } from "../src/device.ts";
import { isInLowest, sidewaysScroll_px } from "../src/layout.ts";
import { allOnServer, enter, entriesOf, entriesSince } from "../src/served-book.ts";
import { walkerOn } from "../src/walker.ts";

it("walk 2: a helper with wet hands waters a shelf, one touch a pot", async () => {
  const house = await openDemo();
  const device = await openDevice(demoLook);
  const walker = walkerOn(device);
  try {
    const page = device.page;
    // The wet hand is a setting of the device, on before the walk.
    await page.goto(house.address);
    await page.evaluate(() => localStorage.setItem("sillwood.settings", JSON.stringify({ wet: true })));
    await enter(page, house, "helper");
    const count = async (name: string) => {
      const said = await page.locator("dl > div", { hasText: name }).locator("dd").textContent();
      return Number(said);
    };
    const totalDue_n = async () => (await count("must")) + (await count("fits")) + (await count("can wait"));
    const due_n = await totalDue_n();
    expect(await accessibilityTroubles(page)).toEqual([]);
    expect(await sidewaysScroll_px(page)).toBe(0);
    await walker.shoot("walk-02-round");
    const before = await entriesOf(house);

    await walker.tap(page.getByRole("button", { name: /^START South sill, / }));
    const place = page.getByText(/^\d+ of \d+$/);
    await place.waitFor();
    const stops_n = Number(/of (\d+)/.exec((await place.first().textContent()) ?? "")?.[1]);
    const most_n = Math.min(12, stops_n);
    expect(most_n).toBeGreaterThanOrEqual(10);
    const done = page.getByRole("button", { name: /^DONE/ });
    const shown: string[] = [];
    expect(await accessibilityTroubles(page)).toEqual([]);
    for (let pot_n = 0; pot_n < most_n; pot_n += 1) {
      await page.getByText(`${pot_n + 1} of ${stops_n}`, { exact: true }).waitFor();
      expect(await isInLowest(page, done, 0.45)).toBe(true);
      const said = (await done.textContent()) ?? "";
      shown.push(said);
      await page.locator("[data-main-key]:not([aria-disabled])").waitFor();
      if (pot_n === 0) await walker.shoot("walk-02-pot");
      await walker.tap(done);
      if (pot_n === 0) {
        // A second drop on the same place of the glass, which now belongs to the next pot.
        await page.getByText(`2 of ${stops_n}`, { exact: true }).waitFor();
        const key = await done.boundingBox();
        if (!key) throw new Error("no main key at the second pot");
        await page.mouse.click(key.x + key.width / 2, key.y + key.height / 2);
        await page.waitForTimeout(300);
        await page.mouse.click(key.x + key.width / 2, key.y + key.height / 2);
        await page.waitForTimeout(900);
        await page.getByText(`2 of ${stops_n}`, { exact: true }).waitFor();
      }
    }
    await page
      .getByRole("status")
      .filter({ hasText: /^wrote/ })
      .waitFor();
    await allOnServer(page);
    const acts = async () =>
      (await entriesSince(house, before)).filter(({ kind }) => kind !== "round.walked");
    // The last touch may still be on its way to the disk of the phone when all before it are on the server.
    await expect.poll(async () => (await acts()).length).toBeGreaterThanOrEqual(most_n);
    await allOnServer(page);
    const written = await acts();
    const helper = before.find(({ kind, data }) => kind === "person.joined" && data["role"] === "helper");
    expect(helper).toBeDefined();
    expect(written.map(({ by }) => by)).toEqual(written.map(() => helper?.on[0]));
    expect(written.map(({ data }) => `DONE ${data["volume_mL"]} mL`)).toEqual(shown);
    expect(new Set(written.flatMap(({ on }) => on)).size).toBe(most_n);
    await walker.shoot("walk-02-end");
    // Back on the round, the count has fallen by what was done.
    await page.goto(`${house.address}#/`);
    await page.locator("[data-main-key]").waitFor();
    await expect.poll(totalDue_n).toBe(due_n - most_n);
    walker.finish({ taps_n: most_n + 1, keys_n: 0 });
  } finally {
    await device.discard();
    await house.discard();
  }
});
