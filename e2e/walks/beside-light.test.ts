import { afterAll, beforeAll, expect, it } from "vitest";
import { accessibilityTroubles } from "../src/accessibility.ts";
import { askDemo, demoLook, openDemo } from "../src/demo-book.ts";
import { openDevice } from "../src/device.ts";
import { settled } from "../src/every-screen.ts";
import type { House } from "../src/house.ts";
import { mainKeyTrouble, sidewaysTroubles } from "../src/layout.ts";
import { allOnServer, enter, entriesOf, entriesSince } from "../src/served-book.ts";
import { walkerOn } from "../src/walker.ts";

/** The demo's noon: readings want daylight. */
const NOON_ms = Date.parse("2025-01-14T20:00:00Z");
const noonLook = { ...demoLook, now_ms: NOON_ms };
const METRIC = /\d[\s\u202f\u00a0]?(mL|L|litres?|g|kg|°C|cm|mm|lux)\b/;

let house: House;
beforeAll(async () => {
  house = await openDemo();
});
afterAll(() => house?.discard());

interface Seated {
  readonly benches: readonly {
    readonly spots: readonly { readonly name: string; readonly number: string | null }[];
  }[];
}
const seats = async (bench: string) => {
  const { benches } = await askDemo<Seated>(house, ["light", bench], NOON_ms + 3_600_000);
  return Object.fromEntries((benches[0]?.spots ?? []).map(({ name, number }) => [name, number]));
};

it("benches and light by keyboard: arrows walk the spots, M moves a pot, U takes both moves back", async () => {
  const device = await openDevice({ ...noonLook, screen: "desktop" });
  const walker = walkerOn(device);
  try {
    const { page } = device;
    await enter(page, house, "grower");
    const entries = await entriesOf(house);
    const before = await seats("cold-room");
    await page.goto(`${house.address}#/craft/light/cold-room`);
    await settled(page);
    const chosen = page.locator("[data-spot][aria-pressed=true]");
    const nameOf = () => page.evaluate(() => document.activeElement?.getAttribute("data-spot"));
    for (let step = 0; step < 12; step += 1) await walker.key("ArrowLeft");
    expect(await nameOf()).toBe("cold-room-1");
    expect(await chosen.getAttribute("aria-label")).toMatch(/^Spot C1, pot 131: .* of .* needed/);
    await walker.key("m");
    await page.getByText("131 moves. Press its new spot.").waitFor();
    await walker.key("ArrowRight");
    await walker.key("ArrowRight");
    expect(await nameOf()).toBe("cold-room-3");
    await walker.key("Enter");
    await page.getByText(/^wrote 131 moved/).waitFor();
    await allOnServer(page);
    const moved = await entriesSince(house, entries);
    expect(moved.map(({ kind }) => kind)).toEqual(["plant.moved", "plant.moved"]);
    expect(await seats("cold-room")).toEqual({ ...before, C1: before["C3"], C3: before["C1"] });
    await settled(page);
    await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
    await walker.key("u");
    await page.getByText(/^took back /).waitFor();
    await allOnServer(page);
    expect(await seats("cold-room")).toEqual(before);
    expect(await accessibilityTroubles(page)).toEqual([]);
    walker.finish({ taps_n: 0 });
  } finally {
    await device.discard();
  }
});

it("a window nobody knows is drawn as two cases with the reading that tells them apart; then it is described", async () => {
  await house.stop();
  await askDemo(
    house,
    ["enter", "bench.laid", "new", "name=Attic sill", "place=sill", "spots=T1,T2"],
    NOON_ms,
  );
  await house.start();
  const device = await openDevice(noonLook);
  const walker = walkerOn(device);
  try {
    const { page } = device;
    await enter(page, house, "grower");
    const entries = await entriesOf(house);
    const bench = entries.find(({ kind, data }) => kind === "bench.laid" && data["name"] === "Attic sill")
      ?.on[0];
    await page.goto(`${house.address}#/craft/light/${bench}`);
    await settled(page);
    await walker.shoot("light-unsure");
    expect(await page.getByText(/at noon of a clear day/).count()).toBeGreaterThan(1);
    expect(await page.getByRole("button", { name: "READ IT AT NOON" }).isVisible()).toBe(true);
    expect(await accessibilityTroubles(page)).toEqual([]);
    expect(await sidewaysTroubles(page)).toEqual([]);

    await page.goto(`${house.address}#/craft/light/${bench}/draw/window/1`);
    await settled(page);
    expect(await page.getByRole("button", { name: "SOMETHING IS STILL MISSING" }).isVisible()).toBe(true);
    await page.getByRole("button", { name: "not sure" }).click();
    expect(await page.getByText(/at noon of a clear day/).count()).toBeGreaterThan(1);
    await page.getByRole("radio", { name: "south-west", exact: true }).click();
    await page.getByLabel(/^Glass, wide/).fill("1.1");
    await page.getByLabel(/^Glass, high/).fill("1.3");
    await page.getByRole("radio", { name: "double", exact: true }).click();
    await walker.shoot("light-window");
    expect(await mainKeyTrouble(page)).toBeUndefined();
    await page.getByRole("button", { name: "KEEP THIS WINDOW" }).click();
    await page.getByText(/^wrote .*a window /).waitFor();
    await allOnServer(page);
    const [written] = await entriesSince(house, entries);
    expect(written).toMatchObject({
      kind: "bench.window",
      on: [bench],
      data: { window_n: 1, faces_deg: 225, width_m: 1.1, height_m: 1.3, glazing: "double" },
    });
    await settled(page);
    expect(await page.getByRole("button", { name: "READ IT AT NOON" }).count()).toBe(0);
    walker.finish({});
  } finally {
    await device.discard();
  }
});

it("US units: feet and inches and foot-candles on the pages of light, lux in the book; the timer and an outage are written", async () => {
  const device = await openDevice(noonLook);
  const walker = walkerOn(device);
  try {
    const { page } = device;
    await enter(page, house, "grower");
    const entries = await entriesOf(house);
    await page.goto(`${house.address}#/settings`);
    await settled(page);
    await page.getByRole("radio", { name: "US", exact: true }).click();
    for (const path of [
      "/craft/light/cold-room",
      "/craft/light/lamp-shelf-a",
      "/craft/light/cold-room/print",
    ]) {
      await page.goto(`${house.address}#${path}`);
      await settled(page);
      const words = await page.locator("main").innerText();
      expect(words.split("\n").filter((line) => METRIC.test(line))).toEqual([]);
    }
    await page.goto(`${house.address}#/craft/light/cold-room/read/cold-room-1`);
    await settled(page);
    expect(await page.getByRole("radio", { name: "fc", exact: true }).isChecked()).toBe(true);
    await walker.pad("90");
    await page.getByRole("button", { name: "NEXT: OUTDOORS" }).click();
    await walker.pad("700");
    await page.getByRole("button", { name: /^KEEP 90 fc and 700 fc/ }).click();
    await page.getByRole("heading", { name: "Cold room" }).waitFor();
    await allOnServer(page);
    const [read] = await entriesSince(house, entries);
    expect(read?.data).toEqual({ inside_lux: 969, outside_lux: 7535, sky: "evenly grey" });

    await page.goto(`${house.address}#/craft/light/lamp-shelf-a/draw/timer`);
    await settled(page);
    await page.getByLabel("On at").fill("05:30");
    await page.getByLabel("Off at").fill("19:00");
    await page.getByRole("button", { name: "KEEP 05:30 to 19:00" }).click();
    await page.getByRole("heading", { name: "Lamp shelf A" }).waitFor();
    await settled(page);
    await page.getByRole("button", { name: "The lamps are out" }).click();
    await page.getByRole("button", { name: "The lamps are back" }).waitFor();
    await allOnServer(page);
    const written = await entriesSince(house, entries);
    expect(written.slice(1).map(({ kind, data }) => [kind, data])).toEqual([
      ["bench.timer", { from_h: 5.5, hours_h: 13.5 }],
      ["bench.outage", { what: "lamps", is: "out" }],
    ]);
    walker.finish({});
  } finally {
    await device.discard();
  }
});
