import { existsSync } from "node:fs";
import { afterAll, beforeAll, expect, it } from "vitest";
import { type Device, openDevice } from "../src/device.ts";
import type { House } from "../src/house.ts";
import { openTrial } from "./open-trial.ts";

let house: House;
let device: Device;
beforeAll(async () => {
  house = await openTrial();
  device = await openDevice({ screen: "smallPhone", colorScheme: "dark", reducedMotion: true });
});
afterAll(async () => {
  await device?.discard();
  await house?.discard();
});

const written = async () => Number(await (await fetch(`${house.address}entries`)).text());
const kept = () => device.page.locator("#kept").textContent();
const done = async () => {
  const before = Number(await kept());
  await device.page.getByRole("button", { name: "DONE" }).click();
  await expect.poll(kept).toBe(String(before + 1));
};

it("opens a phone of the asked size and look", async () => {
  await device.page.goto(house.address);
  const seen = await device.page.evaluate(() => ({
    width: innerWidth,
    dark: matchMedia("(prefers-color-scheme: dark)").matches,
    still: matchMedia("(prefers-reduced-motion: reduce)").matches,
    touch: navigator.maxTouchPoints > 0,
    temporal: "Temporal" in globalThis,
  }));
  expect(seen).toEqual({ width: 360, dark: true, still: true, touch: true, temporal: true });
});

it("works on with the server stopped, through a reload and a killed browser, and goes on when it is back", async () => {
  await device.page.goto(house.address);
  await device.page.evaluate(async () => void (await navigator.serviceWorker.ready));
  await done();
  await expect.poll(written).toBe(1);

  await house.stop();
  await expect(fetch(house.address)).rejects.toThrow();
  await done();
  await device.page.reload();
  await expect.poll(kept).toBe("2");

  await device.kill();
  await device.reopen();
  await device.page.goto(house.address);
  await expect.poll(kept).toBe("2");
  await done();

  await house.start();
  expect(await written()).toBe(1);
  await done();
  await expect.poll(written).toBe(2);
});

it("kills the server and starts it again on the same port with what it had written", async () => {
  const before = await written();
  await house.kill();
  await expect(fetch(house.address)).rejects.toThrow();
  await house.start();
  expect(await written()).toBe(before);
});

it("leaves nothing behind", async () => {
  const other = await openTrial();
  expect(existsSync(other.folder)).toBe(true);
  await other.discard();
  expect(existsSync(other.folder)).toBe(false);
  await expect(fetch(other.address)).rejects.toThrow();
});
