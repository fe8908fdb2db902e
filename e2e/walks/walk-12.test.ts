import type { Locator, Page } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { accessibilityTroubles } from "../src/accessibility.ts";
import { demoLook, openDemo } from "../src/demo-book.ts";
import { openDevice } from "../src/device.ts";
import { everyScreen, goTo, settled } from "../src/every-screen.ts";
import type { House } from "../src/house.ts";
import {
  clippedWords,
  isSeenAtOnce,
  mainKeyTrouble,
  readingShare_frac,
  sidewaysScroll_px,
  sidewaysTroubles,
} from "../src/layout.ts";
import { enter } from "../src/served-book.ts";
import { walkerOn } from "../src/walker.ts";

let house: House;
beforeAll(async () => {
  house = await openDemo();
});
afterAll(() => house?.discard());

/** What the owner has set: the text of the whole phone at twice its size, and in the app the stretched test locale. */
const twiceTheText = (page: Page) =>
  page.addInitScript(() => {
    addEventListener("DOMContentLoaded", () => {
      document.documentElement.style.setProperty("font-size", "200%", "important");
    });
  });
const set = (page: Page, change: Readonly<Record<string, unknown>>) =>
  page.evaluate((more) => {
    const kept = JSON.parse(localStorage.getItem("sillwood.settings") ?? "{}") as object;
    localStorage.setItem("sillwood.settings", JSON.stringify({ ...kept, ...more }));
  }, change);

async function troublesHere(page: Page, needsMainKey: boolean): Promise<readonly string[]> {
  const px = await sidewaysScroll_px(page);
  return [
    ...(px > 0 ? [`the page can be pushed ${px} px sideways`] : []),
    ...(await sidewaysTroubles(page)),
    ...(await clippedWords(page)).map((words) => `clipped: ${words}`),
    ...(needsMainKey ? [await mainKeyTrouble(page)].filter((trouble) => trouble !== undefined) : []),
  ];
}

/** With all words doubled the keys may take half of the view, a hair's rounding aside. */
const LEAST_READING_frac = 0.49;
/** The number that a screen of the round is for. */
const SEEN_AT_ONCE: Readonly<Record<string, (page: Page) => Locator>> = {
  "at-the-pot": (page) => page.locator("main [data-working]").first(),
  "weighing-run": (page) => page.locator("main output"),
};

it("walk 12: every screen holds at twice the text, with longer words, in the sun look, without motion", async () => {
  const screens = await everyScreen(house);
  const device = await openDevice({ ...demoLook, screen: "smallPhone", reducedMotion: true });
  const walker = walkerOn(device);
  const found: string[] = [];
  const note = (where: string, troubles: readonly string[]) =>
    found.push(...new Set(troubles.map((trouble) => `${where}: ${trouble}`)));
  try {
    const { page } = device;
    await page.goto(house.address);
    await set(page, { stretched: true });
    await twiceTheText(page);
    await page.reload();
    await page.locator("[data-main-key]:not([aria-disabled])").waitFor();
    await settled(page);
    await walker.shoot("walk-12-first-start");
    note("first start", await troublesHere(page, true));

    await set(page, { stretched: false });
    await enter(page, house, "grower");
    await set(page, { stretched: true, paper: "sun" });
    await page.reload();
    await settled(page);
    expect(await page.evaluate(() => document.documentElement.dataset["paper"])).toBe("sun");
    expect(await page.evaluate(() => getComputedStyle(document.documentElement).fontSize)).toBe("32px");
    for (const screen of screens) {
      if (screen.then) continue;
      await goTo(page, screen);
      for (const look of ["paper", "sun"]) {
        await page.evaluate((name) => {
          document.documentElement.dataset["paper"] = name;
        }, look);
        await walker.shoot(`walk-12-${look}-${screen.name}`);
        note(`${screen.name}, ${look}`, await troublesHere(page, !screen.noMainKey));
        const share_frac = await readingShare_frac(page);
        if (share_frac < LEAST_READING_frac)
          note(`${screen.name}, ${look}`, [`keys leave ${Math.round(share_frac * 100)} % for reading`]);
        const seen = SEEN_AT_ONCE[screen.name]?.(page);
        if (seen && !(await isSeenAtOnce(page, seen)))
          note(`${screen.name}, ${look}`, ["what it is for is not seen at once"]);
      }
      const moving = await page.evaluate(
        () => document.getAnimations().filter(({ playState }) => playState === "running").length,
      );
      if (moving > 0) note(screen.name, [`${moving} things move`]);
    }
    note("the last screen", await accessibilityTroubles(page));
    expect(found, found.join("\n")).toEqual([]);
    walker.finish({});
  } finally {
    await device.discard();
  }
});
