import { afterAll, beforeAll, expect, it } from "vitest";
import { accessibilityTroubles } from "../src/accessibility.ts";
import { askDemo, demoLook, openDemo } from "../src/demo-book.ts";
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

interface Lit {
  readonly benches: readonly {
    readonly spots: readonly {
      readonly spot: string;
      readonly number: string;
      readonly light: {
        readonly origin: string;
        readonly mid_mol_m2_d: number;
        readonly low_mol_m2_d: number;
        readonly high_mol_m2_d: number;
      };
      readonly short: {
        readonly from: { readonly date: string; readonly low: string; readonly high: string } | null;
        readonly before: { readonly entry: string; readonly from: { readonly date: string } | null } | null;
      } | null;
    }[];
  }[];
}
/** A pair wants daylight: the demo's noon. */
const NOON_ms = Date.parse("2025-01-14T20:00:00Z");
const noonLook = { ...demoLook, now_ms: NOON_ms };
/** Pot 125 stands on spot S8 of the south sill, of whose window only the direction is known. */
const SPOT = "south-sill-8";
const INSIDE_lux = "900";
const OUTSIDE_lux = "9000";

const litAt = async () => {
  const { benches } = await askDemo<Lit>(house, ["light", "south-sill"], NOON_ms + 3_600_000);
  const spot = benches[0]?.spots.find((one) => one.spot === SPOT);
  if (!spot) throw new Error("the demo's sill lacks the spot");
  return spot;
};
const days = ({ low, high }: { readonly low: string; readonly high: string }) =>
  (Date.parse(high) - Date.parse(low)) / 86_400_000;

it("walk 8: light read inside and outside turns ○ into ●, narrows the band and moves the date", async () => {
  const device = await openDevice(noonLook);
  const walker = walkerOn(device);
  try {
    const { page } = device;
    await enter(page, house, "grower");
    const entries = await entriesOf(house);
    const before = await litAt();
    expect(before.light.origin).toBe("assumed");
    if (!before.short?.from) throw new Error("the spot is never short, or always");

    // The sill's own page, its spot, and the reading begun: like a run that was chosen, it stands before the walk.
    await page.goto(`${house.address}#/craft/light/south-sill`);
    await settled(page);
    await walker.shoot("walk-08-sill");
    expect(await accessibilityTroubles(page)).toEqual([]);
    expect(await sidewaysTroubles(page)).toEqual([]);
    expect(await mainKeyTrouble(page)).toBeUndefined();
    const pot = page.locator(`[data-spot="${SPOT}"]`);
    await pot.click();
    const main = page.locator("main");
    expect(await main.innerText()).toContain("Spot S8, pot 125");
    expect(await main.getByRole("img", { name: "assumed" }).count()).toBeGreaterThan(0);
    const saidBefore = (await main.locator("[data-working]").allInnerTexts()).find((said) =>
      said.startsWith("short "),
    );
    expect(saidBefore).toBeDefined();
    await page.getByRole("button", { name: "TAKE A READING" }).click();
    await page.getByRole("heading", { name: "Light at spot S8" }).waitFor();
    await settled(page);
    expect(await accessibilityTroubles(page)).toEqual([]);
    expect(await sidewaysTroubles(page)).toEqual([]);
    expect(await page.getByRole("radio", { name: "evenly grey" }).isChecked()).toBe(true);

    await walker.pad(INSIDE_lux);
    await walker.tap(page.getByRole("button", { name: "NEXT: OUTDOORS" }));
    await walker.pad(OUTSIDE_lux);
    await walker.shoot("walk-08-reading");
    expect(await mainKeyTrouble(page)).toBeUndefined();
    await walker.tap(page.getByRole("button", { name: /^KEEP 900 lux and 9000 lux/ }));

    await page.getByRole("heading", { name: "South sill" }).waitFor();
    await allOnServer(page);
    await settled(page);
    const written = await entriesSince(house, entries);
    expect(written.map(({ kind, on, data }) => ({ kind, on, data }))).toEqual([
      { kind: "light.pair", on: [SPOT], data: { inside_lux: 900, outside_lux: 9000, sky: "evenly grey" } },
    ]);
    const after = await litAt();
    expect(after.light.origin).toBe("measured");
    const widthOf = ({ light }: typeof after) =>
      Math.log(light.high_mol_m2_d / Math.max(0.01, light.low_mol_m2_d));
    expect(widthOf(after)).toBeLessThan(0.7 * widthOf(before));
    if (!after.short?.from) throw new Error("the reading took the date away");
    expect(after.short.from.date).not.toBe(before.short.from.date);
    expect(days(after.short.from)).toBeLessThan(days(before.short.from));
    expect(after.short.before).toMatchObject({
      entry: written[0]?.id,
      from: { date: before.short.from.date },
    });

    // The same on the page: measured now, another date, the old one kept in the working.
    await pot.click();
    await settled(page);
    expect(await main.getByRole("img", { name: "measured" }).count()).toBeGreaterThan(0);
    const short = main.locator("[data-working]").filter({ hasText: /^short / });
    expect(await short.innerText()).not.toBe(saidBefore);
    await short.click();
    const slip = page.getByRole("dialog");
    await slip.waitFor();
    await walker.shoot("walk-08-working");
    const [day] = /\d+ \w+/.exec(saidBefore ?? "") ?? [];
    expect(day).toBeDefined();
    expect(await slip.innerText()).toContain(day);
    expect(await accessibilityTroubles(page)).toEqual([]);
    await page.keyboard.press("Escape");
    walker.finish({ taps_n: 2, digits_n: INSIDE_lux.length + OUTSIDE_lux.length });
  } finally {
    await device.discard();
  }
});

it("a reading brighter than the sky can be is held with its ways out, and nothing is written", async () => {
  const device = await openDevice(noonLook);
  const walker = walkerOn(device);
  try {
    const { page } = device;
    await enter(page, house, "grower");
    const entries = await entriesOf(house);
    await page.goto(`${house.address}#/craft/light/south-sill/read/${SPOT}`);
    await settled(page);
    await walker.pad("11000");
    await walker.tap(page.getByRole("button", { name: "NEXT: OUTDOORS" }));
    await walker.pad("9400");
    await walker.tap(page.getByRole("button", { name: /^KEEP / }));
    await page.getByText(/^Brighter inside than outside \(11,000 and 9,400.lux\)/).waitFor();
    for (const way of ["Swap them", "Type again"])
      expect(await page.getByRole("button", { name: way }).isVisible()).toBe(true);
    await walker.shoot("walk-08-refused");
    expect(await accessibilityTroubles(page)).toEqual([]);
    await page.getByRole("button", { name: "Type again" }).click();
    await page.getByRole("button", { name: /^KEEP / }).waitFor();
    expect(await entriesSince(house, entries)).toEqual([]);

    // Brighter than any sky at this hour: no way to keep it.
    await page.getByRole("button", { name: /^at the leaf/ }).click();
    await page.getByRole("button", { name: "wipe" }).click();
    await walker.pad("90000");
    await page.getByRole("button", { name: "NEXT: OUTDOORS" }).click();
    await page.getByRole("button", { name: /^KEEP / }).click();
    await page.getByText(/^Indoor reading is brighter than the sky can be/).waitFor();
    expect(await page.getByRole("button", { name: "It is right" }).count()).toBe(0);
    expect(await entriesSince(house, entries)).toEqual([]);
    walker.finish({ taps_n: 2 });
  } finally {
    await device.discard();
  }
});
