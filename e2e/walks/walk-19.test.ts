import { afterAll, beforeAll, expect, it } from "vitest";
import { accessibilityTroubles } from "../src/accessibility.ts";
import { demoLook, openDemo } from "../src/demo-book.ts";
import { openDevice } from "../src/device.ts";
import { settled } from "../src/every-screen.ts";
import type { House } from "../src/house.ts";
import { mainKeyTrouble, sidewaysTroubles } from "../src/layout.ts";
import { allOnServer, enter, entriesOf, entriesSince } from "../src/served-book.ts";
import { walkerOn } from "../src/walker.ts";

let house: House;
beforeAll(async () => {
  house = await openDemo();
});
afterAll(() => house?.discard());

/** Flowers are brushed towards noon. */
const NOON_ms = Date.parse("2025-01-14T19:30:00Z");
const noonLook = { ...demoLook, now_ms: NOON_ms };

it("walk 19: the brush list by one key, then one branch thinned to its number", async () => {
  const device = await openDevice(noonLook);
  const walker = walkerOn(device);
  try {
    const { page } = device;
    await enter(page, house, "helper");
    const entries = await entriesOf(house);
    await page.goto(`${house.address}#/craft/fruit`);
    await settled(page);
    await walker.shoot("walk-19-open");
    expect(await accessibilityTroubles(page)).toEqual([]);
    expect(await sidewaysTroubles(page)).toEqual([]);
    expect(await mainKeyTrouble(page)).toBeUndefined();
    const main = page.locator("main");
    expect(await main.innerText()).toContain("9 flowers on 6 plants");
    expect(await main.innerText()).toContain("Care Hot fruit: gloves");

    await walker.tap(page.getByRole("button", { name: "ALL NINE BRUSHED" }));
    await page.getByText("9 flowers brushed").waitFor();
    await allOnServer(page);
    const brushed = await entriesSince(house, entries);
    expect(brushed.map(({ kind }) => kind)).toEqual(new Array(6).fill("fruiting.brushed"));
    expect(brushed.reduce((sum, { data }) => sum + Number(data["open_n"]), 0)).toBe(9);

    await walker.tap(main.getByRole("button", { name: /^105 pinch out/ }));
    await page.getByRole("heading", { name: "Fruit, 105" }).waitFor();
    await settled(page);
    await walker.shoot("walk-19-plant");
    expect(await accessibilityTroubles(page)).toEqual([]);
    expect(await sidewaysTroubles(page)).toEqual([]);
    const said = await main.innerText();
    expect(said).toMatch(/light feeds about \d+(\.5)? \(\d+(\.5)? to \d+(\.5)?\)/);
    expect(said).toMatch(/in all about \d+ \(/);
    expect(said).toContain("D none, too thin");
    const branch = main.getByRole("button", { name: /^A keep (\d) of 5$/ });
    const keep_n = Number(/keep (\d)/.exec(await branch.innerText())?.[1]);
    expect(keep_n).toBeGreaterThan(0);

    await walker.tap(branch);
    await walker.shoot("walk-19-branch");
    await walker.tap(page.getByRole("button", { name: `BRANCH A: PINCHED ${5 - keep_n}` }));
    await page.getByText("pinched out").waitFor();
    await allOnServer(page);
    const [thinned] = (await entriesSince(house, entries)).filter(({ kind }) => kind === "fruiting.thinned");
    expect(thinned?.data).toEqual({ what: "fruits", removed_n: 5 - keep_n, branch: "A" });
    await settled(page);
    expect(await main.innerText()).toContain(`A keep ${keep_n} of ${keep_n}`);
    walker.finish({ taps_n: 4 });
  } finally {
    await device.discard();
  }
});
