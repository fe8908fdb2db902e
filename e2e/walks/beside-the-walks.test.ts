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

const plantOf = async (number: number) =>
  (await entriesOf(house)).find(({ kind, data }) => kind === "plant.brought" && data["number"] === number)
    ?.on[0] ?? "";

interface Asked {
  readonly asks: readonly { readonly said: string }[];
}

it("held work: a helper asks, the grower allows it on the round", async () => {
  const helper = await openDevice({ ...demoLook, screen: "smallPhone" });
  const grower = await openDevice(demoLook);
  const walker = walkerOn(helper);
  try {
    const { page } = helper;
    await enter(page, house, "helper");
    const before = await entriesOf(house);
    // The demo's rotten pot: its water is held.
    const plant = await plantOf(107);
    await page.goto(`${house.address}#/plant/${plant}`);
    await settled(page);
    expect(await page.getByRole("button", { name: "Do it anyway" }).count()).toBe(0);
    await walker.tap(page.getByRole("button", { name: "Ask the grower" }).first());
    await page.getByRole("textbox", { name: "Why, in a few words" }).fill("it stands in the sun");
    expect(await accessibilityTroubles(page)).toEqual([]);
    expect(await sidewaysTroubles(page)).toEqual([]);
    await walker.shoot("beside-helper-asks");
    await walker.tap(page.getByRole("button", { name: "ASK THE GROWER" }));
    await page
      .getByRole("status")
      .filter({ hasText: /^wrote asked the grower, WATER: it stands in the sun/ })
      .waitFor();
    await allOnServer(page);
    expect(await entriesSince(house, before)).toMatchObject([
      { kind: "round.overrode", on: [plant], data: { work: "water", reason: "it stands in the sun" } },
    ]);
    const { asks } = await askDemo<Asked>(house, ["round"], DEMO_NOW_ms + 600_000);
    expect(asks.map(({ said }) => said)).toContainEqual(
      expect.stringMatching(/^107, water though it is held: the helper asks\. it stands in the sun$/),
    );
    await page.goto(`${house.address}#/`);
    await page.getByText(/^107, water though it is held/).waitFor();
    expect(await page.getByRole("button", { name: "Allow it today" }).count()).toBe(0);

    await enter(grower.page, house, "grower");
    await grower.page.getByRole("button", { name: "Allow it today" }).click();
    await grower.page
      .getByRole("status")
      .filter({ hasText: /^wrote/ })
      .waitFor();
    await expect.poll(() => grower.page.getByText(/^107, water though it is held/).count()).toBe(0);
    await allOnServer(grower.page);
    await grower.page.goto(`${house.address}#/plant/${plant}`);
    await settled(grower.page);
    expect(await grower.page.getByRole("button", { name: "Do it anyway" }).count()).toBe(0);
    walker.finish({});
  } finally {
    await helper.discard();
    await grower.discard();
  }
});

it("Reckoner: a result goes into the entry where it belongs", async () => {
  const device = await openDevice({ ...demoLook, screen: "smallPhone" });
  const walker = walkerOn(device);
  try {
    const { page } = device;
    await enter(page, house, "grower");
    const before = await entriesOf(house);
    const plant = await plantOf(127);
    await page.goto(`${house.address}#/reckon/pourFor`);
    await settled(page);
    expect(await page.getByText(/^from 0 to [\d,]+ g$/).count()).toBeGreaterThan(0);
    await page.getByRole("combobox", { name: "Take the numbers from" }).selectOption(plant);
    await page.getByRole("textbox", { name: "depletion below the drained weight" }).fill("160");
    await settled(page);
    await walker.tap(page.getByRole("button", { name: "Use it" }));
    expect(await accessibilityTroubles(page)).toEqual([]);
    await walker.shoot("beside-use-it");
    const row = page.getByRole("button", { name: /^Watered, Poured: [\d.]+.mL \(pour\)/ });
    const poured_mL = Number(/: ([\d.]+)/.exec((await row.textContent()) ?? "")?.[1]);
    await walker.tap(row);
    await page.getByRole("heading", { level: 1, name: "Watered" }).waitFor();
    expect(Number(await page.getByRole("textbox", { name: "Poured" }).inputValue())).toBe(poured_mL);
    await page.getByRole("radio", { name: "yes" }).first().click();
    await settled(page);
    await walker.shoot("beside-used");
    await walker.tap(page.getByRole("button", { name: /^KEEP Watered/ }));
    await page
      .getByRole("status")
      .filter({ hasText: /^wrote 127 watered/ })
      .waitFor();
    await allOnServer(page);
    expect(await entriesSince(house, before)).toMatchObject([
      { kind: "watering.watered", on: [plant], data: { volume_mL: poured_mL } },
    ]);
    // What no entry counts is copied, and said to be only when it was.
    await page.goto(`${house.address}#/reckon/vapourPressureDeficit_kPa`);
    await settled(page);
    for (const [permissions, said] of [
      [[], /^This browser does not let the page copy\. Write it down: .*kPa/],
      [["clipboard-write"], /^copied .*kPa/],
    ] as const) {
      await device.context.clearPermissions();
      await device.context.grantPermissions([...permissions]);
      await page.getByRole("button", { name: "Use it" }).click();
      await page.getByRole("status").filter({ hasText: said }).waitFor();
    }
    walker.finish({});
  } finally {
    await device.discard();
  }
});

/** A browser whose recogniser hears what the test says; what it was asked for is kept. */
function fakeHearing(isLocal: boolean): void {
  const made: { onresult?: (event: unknown) => void; onend?: () => void }[] = [];
  class Fake {
    lang = "";
    onresult?: (event: unknown) => void;
    onend?: () => void;
    static available = async () => (isLocal ? "available" : "downloadable");
    get processLocally() {
      return true;
    }
    set processLocally(_value: boolean) {}
    start() {
      if (!made.includes(this)) made.push(this);
    }
    abort() {
      this.onend?.();
    }
  }
  navigator.mediaDevices.enumerateDevices = async () =>
    [{ kind: "audioinput", deviceId: "", groupId: "", label: "" }] as unknown as MediaDeviceInfo[];
  Object.assign(globalThis, {
    SpeechRecognition: Fake,
    hearNow: (transcript: string) =>
      made.at(-1)?.onresult?.({ resultIndex: 0, results: [{ isFinal: true, 0: { transcript } }] }),
  });
}

it("weighing run: digits are heard on the device, read back, and kept only after a word", async () => {
  const device = await openDevice({ ...demoLook, screen: "smallPhone" });
  const walker = walkerOn(device);
  try {
    await device.context.addInitScript(fakeHearing, true);
    const { page } = device;
    await enter(page, house, "grower");
    const before = await entriesOf(house);
    await page.goto(`${house.address}#/weigh/south-sill`);
    await settled(page);
    const number = (await page.locator("main [class*=number]").first().textContent()) ?? "";
    const expected = await page.getByText(/^expected/).textContent();
    const [low, high] = [...(expected ?? "").matchAll(/[\d,]+/g)].map(([text]) =>
      Number(text.replace(",", "")),
    );
    const weight_g = Math.round(((low ?? 0) + (high ?? 0)) / 2);
    const hear = (words: string) =>
      page.evaluate(
        (text) => (globalThis as unknown as { hearNow(text: string): void }).hearNow(text),
        words,
      );
    await walker.tap(page.getByRole("button", { name: "Listen" }));
    await page.getByText(/^Say the digits one by one/).waitFor();
    expect(await accessibilityTroubles(page)).toEqual([]);
    expect(await sidewaysTroubles(page)).toEqual([]);
    await walker.shoot("beside-listening");
    await hear("the radio says forty degrees");
    await page.getByText(/^Not a weight/).waitFor();
    await hear([...String(weight_g)].join(" "));
    await page.getByText(`Heard ${[...String(weight_g)].join(" ")}.`, { exact: false }).waitFor();
    expect(await page.locator("main output").innerText()).toContain(String(weight_g));
    expect(await entriesSince(house, before)).toEqual([]);
    await hear("next");
    await page
      .getByRole("status")
      .filter({ hasText: new RegExp(`^wrote ${number} weighed ${weight_g}`) })
      .waitFor();
    await allOnServer(page);
    expect(await entriesSince(house, before)).toMatchObject([
      { kind: "watering.weighed", data: { weight_g, state: "as found" } },
    ]);
    walker.finish({ taps_n: 1, keys_n: 0 });
  } finally {
    await device.discard();
  }
});

it("weighing run: where sound would leave the device there is no key to listen", async () => {
  const device = await openDevice({ ...demoLook, screen: "smallPhone" });
  try {
    await device.context.addInitScript(fakeHearing, false);
    const { page } = device;
    await enter(page, house, "grower");
    await page.goto(`${house.address}#/weigh/south-sill`);
    await settled(page);
    await page.waitForTimeout(300);
    expect(await page.getByRole("button", { name: "Listen" }).count()).toBe(0);
  } finally {
    await device.discard();
  }
});
