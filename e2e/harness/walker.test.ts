import { existsSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, beforeEach, expect, it } from "vitest";
import { accessibilityTroubles } from "../src/accessibility.ts";
import { type Device, openDevice } from "../src/device.ts";
import type { House } from "../src/house.ts";
import { clippedWords, isInLowest, sidewaysScroll_px, smallTargets } from "../src/layout.ts";
import { walkerOn } from "../src/walker.ts";
import { openTrial } from "./open-trial.ts";

let house: House;
let device: Device;
beforeAll(async () => {
  house = await openTrial();
  device = await openDevice();
});
afterAll(async () => {
  await device?.discard();
  await house?.discard();
});
beforeEach(() => device.page.goto(house.address));

const doneKey = () => device.page.getByRole("button", { name: "DONE" });

it("counts taps, keys, digits, decisions and typed values, and holds the walk to its budget", async () => {
  const walker = walkerOn(device);
  await walker.tap(doneKey());
  await walker.pad("160");
  await walker.tap(device.page.getByLabel("Value"), { decision: false });
  await walker.type("6.5");
  await walker.key("Enter");
  expect(walker.effort).toEqual({ taps_n: 2, keys_n: 7, digits_n: 6, decisions_n: 1, typedValues_n: 2 });
  expect(await device.page.locator("#typed").textContent()).toBe("nothing160");
  walker.finish({ taps_n: 2, keys_n: 7 });
  expect(() => walker.finish({ taps_n: 1 })).toThrow("2 taps; at most 1");
  expect(() => walker.finish({ typedValues_n: 0 })).toThrow("2 typed values; at most 0");
});

it("hears the console and uncaught errors, and lets pass only what was expected", async () => {
  for (const [fault, words] of [
    ["error", "planted"],
    ["throw", "uncaught: planted throw"],
  ] as const) {
    await device.page.goto(`${house.address}?${fault}`);
    const walker = walkerOn(device);
    await walker.tap(doneKey());
    await expect.poll(() => walker.troubles().join()).toContain(words);
    expect(() => walker.finish({})).toThrow(words);
    walker.expectTrouble(/planted/);
    walker.finish({});
  }
});

it("saves pictures where it is told to, and nowhere otherwise", async () => {
  const folder = mkdtempSync(join(tmpdir(), "shots-"));
  const before = process.env["SILLWOOD_SHOTS"];
  try {
    delete process.env["SILLWOOD_SHOTS"];
    await walkerOn(device).shoot("trial");
    process.env["SILLWOOD_SHOTS"] = join(folder, "inner");
    await walkerOn(device).shoot("trial");
    expect(existsSync(join(folder, "inner/trial.png"))).toBe(true);
  } finally {
    if (before === undefined) delete process.env["SILLWOOD_SHOTS"];
    else process.env["SILLWOOD_SHOTS"] = before;
    rmSync(folder, { recursive: true });
  }
});

it("finds pale words by axe, and nothing on a clean page", async () => {
  expect(await accessibilityTroubles(device.page)).toEqual([]);
  await device.page.goto(`${house.address}?pale`);
  expect((await accessibilityTroubles(device.page)).join()).toContain("color-contrast");
});

it("finds what sticks out, is cut off, too small or out of the thumb's reach", async () => {
  expect(await sidewaysScroll_px(device.page)).toBe(0);
  expect(await clippedWords(device.page)).toEqual([]);
  expect(await smallTargets(device.page, 48)).toEqual([]);
  expect(await isInLowest(device.page, doneKey(), 0.45)).toBe(true);
  expect(await isInLowest(device.page, device.page.getByRole("heading"), 0.45)).toBe(false);
  await device.page.goto(`${house.address}?wide`);
  expect(await sidewaysScroll_px(device.page)).toBeGreaterThan(100);
  await device.page.goto(`${house.address}?clipped`);
  expect(await clippedWords(device.page)).toEqual(["Trial of the harness"]);
  await device.page.goto(`${house.address}?small`);
  expect((await smallTargets(device.page, 48)).length).toBeGreaterThan(5);
});
