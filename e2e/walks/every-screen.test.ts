import { afterAll, beforeAll, expect, it } from "vitest";
import { accessibilityTroubles, contrastTroubles } from "../src/accessibility.ts";
import { demoLook, openDemo } from "../src/demo-book.ts";
import { type Device, openDevice } from "../src/device.ts";
import { everyScreen, goTo, type Screen } from "../src/every-screen.ts";
import type { House } from "../src/house.ts";
import { clippedWords, emptyScroll_px, sidewaysTroubles } from "../src/layout.ts";
import { enter } from "../src/served-book.ts";
import { walkerOn } from "../src/walker.ts";

/** Dozens of screens in four papers, two devices at once; the machine may have other work. */
const SCREENS_ms = 480_000;
const papers = ["dark", "sun", "night"] as const;

let house: House;
let screens: readonly Screen[];
beforeAll(async () => {
  house = await openDemo();
  screens = await everyScreen(house);
});
afterAll(() => house?.discard());

async function lookAtAll(device: Device, size: string): Promise<readonly string[]> {
  const { page } = device;
  const walker = walkerOn(device);
  await enter(page, house, "grower");
  const found: string[] = [];
  for (const screen of screens) {
    const note = (troubles: readonly string[]) =>
      found.push(...troubles.map((trouble) => `${screen.name} ${trouble}`));
    await goTo(page, screen);
    await walker.shoot(`screen-${size}-${screen.name}`);
    note(await accessibilityTroubles(page));
    note(await sidewaysTroubles(page));
    const below_px = await emptyScroll_px(page);
    if (below_px > 0) note([`${below_px} px of nothing below the page`]);
    note((await clippedWords(page)).map((words) => `clipped: ${words}`));
    note(await contrastTroubles(page, papers));
  }
  return [...found, ...walker.troubles()];
}

it.concurrent.each(["phone", "desktop"] as const)(
  "every screen is axe clean on a %s in all four papers",
  async (screen) => {
    const device = await openDevice({ ...demoLook, screen });
    try {
      const found = await lookAtAll(device, screen);
      expect(found, found.join("\n")).toEqual([]);
    } finally {
      await device.discard();
    }
  },
  SCREENS_ms,
);
