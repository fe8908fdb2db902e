import { afterAll, beforeAll, expect, it } from "vitest";
import { accessibilityTroubles } from "../src/accessibility.ts";
import { demoLook, openDemo } from "../src/demo-book.ts";
import { openDevice } from "../src/device.ts";
import { settled } from "../src/every-screen.ts";
import type { House } from "../src/house.ts";
import { loneOptions, mainKeyTrouble, sidewaysTroubles } from "../src/layout.ts";
import { allOnServer, enter, entriesOf, entriesSince } from "../src/served-book.ts";
import { walkerOn } from "../src/walker.ts";

let house: House;
beforeAll(async () => {
  house = await openDemo();
});
afterAll(() => house?.discard());

const ML_PER_US_FL_OZ = 29.5735295625;
/** Units of the book that an American jug, scale or thermometer does not have. */
const METRIC = /\d[\s\u202f\u00a0]?(mL|L|litres?|g|kg|°C|cm|mm)\b/;

it("walk 9: US units stand on every edge, and the book stays in SI", async () => {
  const device = await openDevice({ ...demoLook, screen: "smallPhone" });
  const walker = walkerOn(device);
  try {
    const { page } = device;
    await enter(page, house, "grower");
    const before = await entriesOf(house);
    const plant = before.find(({ kind, data }) => kind === "plant.brought" && data["number"] === 127)?.on[0];
    // Only what changes something is a tap of this walk; from screen to screen one goes by address, as links do.
    const stand = async (path: string) => {
      await page.goto(`${house.address}#${path}`);
      await settled(page);
      expect(await accessibilityTroubles(page)).toEqual([]);
      expect(await sidewaysTroubles(page)).toEqual([]);
    };
    const noMetric = async () => {
      const words = await page.locator("body").innerText();
      expect(words.split("\n").filter((line) => METRIC.test(line))).toEqual([]);
    };

    await stand("/settings");
    expect(await loneOptions(page)).toEqual([]);
    await walker.tap(page.getByRole("radio", { name: "US", exact: true }));
    await settled(page);
    await walker.shoot("walk-09-settings");
    expect(await page.getByRole("radio", { name: "US" }).isChecked()).toBe(true);

    await stand("/");
    await walker.shoot("walk-09-round");
    expect(await page.locator("main").innerText()).toMatch(/US gal|fl oz|gal/);
    await noMetric();
    await stand("/walk/south-sill");
    await walker.shoot("walk-09-pot");
    // A jug's mark: half ounces below 16, then whole cups' quarters; never a tail of decimals.
    expect(await page.getByRole("button", { name: /^DONE/ }).textContent()).toMatch(
      /^DONE \d+(½|\.5)?[\s\u202f]fl oz$/,
    );
    await noMetric();
    await stand("/supplies");
    expect(await page.locator("main").innerText()).toMatch(/[A-Z][a-z]{2} \d{1,2}, 20\d\d/);
    expect(await page.locator("main").innerText()).not.toMatch(/\d{4}-\d\d-\d\d/);
    // Paper too: the grams column asks for ounces.
    await stand("/print/round");
    expect(await page.locator("article").innerText()).toMatch(/\boz\b/);
    await noMetric();
    expect((await page.locator("article").innerText()).split(/\s+/)).not.toContain("g");
    await stand("/reckon/dewPoint_C");
    await page.getByRole("textbox").first().fill("1.2");
    await settled(page);
    await walker.shoot("walk-09-reckoner");
    expect(await page.locator("main").innerText()).toMatch(/\d[\s\u202f]?°F/);
    await noMetric();
    await stand(`/plant/${plant}`);
    await walker.shoot("walk-09-plant");
    expect(await page.locator("main").innerText()).toMatch(/fl oz|oz/);
    await noMetric();

    await walker.tap(page.getByRole("button", { name: "Enter…" }));
    await walker.tap(page.getByRole("button", { name: "Watered", exact: true }));
    await walker.pad("6.5");
    await walker.shoot("walk-09-typed");
    expect(await mainKeyTrouble(page)).toBeUndefined();
    await walker.tap(page.locator("dialog").getByRole("button", { name: /^6(½|\.5)[\s\u202f]fl oz$/ }));
    await page
      .getByRole("status")
      .filter({ hasText: /^wrote .*6(\.5|½)[\s\u202f]fl oz/ })
      .waitFor();
    await allOnServer(page);
    await walker.shoot("walk-09-written");
    const written = await entriesSince(house, before);
    expect(written).toHaveLength(1);
    expect(written[0]).toMatchObject({ kind: "watering.watered", on: [plant] });
    expect(written[0]?.data["volume_mL"]).toBeCloseTo(6.5 * ML_PER_US_FL_OZ, -0.5);
    walker.finish({ taps_n: 4, digits_n: 3, typedValues_n: 1 });

    // Switching back is not part of the walk; what it must leave alone is.
    const whole = await entriesOf(house);
    expect(JSON.stringify(whole)).not.toMatch(/fl oz|_F"|_oz"|_gal"/);
    await stand("/settings");
    await page.getByRole("radio", { name: "metric", exact: true }).click();
    await stand(`/plant/${plant}`);
    expect(await page.locator("main").innerText()).toMatch(/190[\s\u202f]mL/);
    await page.evaluate(() => new Promise((done) => setTimeout(done, 1000)));
    await allOnServer(page);
    expect(await entriesOf(house)).toEqual(whole);
  } finally {
    await device.discard();
  }
});
