import type { Page } from "playwright-core";
import { expect, it } from "vitest";
import { accessibilityTroubles } from "../src/accessibility.ts";
import { demoLook, openDemo } from "../src/demo-book.ts";
import { openDevice } from "../src/device.ts";
import { sidewaysScroll_px } from "../src/layout.ts";
import { allOnServer, enter, entriesOf, entriesSince } from "../src/served-book.ts";
import { type Walker, walkerOn } from "../src/walker.ts";

/** What has the focus, and whether an eye can see that it has. */
const focused = (page: Page) =>
  page.evaluate(() => {
    const one = document.activeElement as HTMLElement | null;
    const box = one?.getBoundingClientRect();
    const shows = (element: Element | null | undefined) => {
      if (!element) return false;
      const { outlineStyle, outlineWidth } = getComputedStyle(element);
      return outlineStyle !== "none" && Number.parseFloat(outlineWidth) >= 2;
    };
    return {
      tag: one?.tagName ?? "",
      said: (one?.getAttribute("aria-label") ?? one?.textContent ?? "").replaceAll(/\s+/g, " ").trim(),
      inDialog: one?.closest("dialog") !== null,
      isVisible: Boolean(
        one?.matches(":focus-visible") &&
          box &&
          box.width > 0 &&
          box.bottom > 0 &&
          box.top < innerHeight &&
          shows(one),
      ),
    };
  });

/** Tabs on until the focus stands on what is looked for; every stop on the way must be seen to have it. */
async function tabTo(walker: Walker, page: Page, wanted: RegExp): Promise<void> {
  for (let press_n = 0; press_n < 60; press_n += 1) {
    await walker.key("Tab");
    const at = await focused(page);
    if (at.tag === "BODY") continue;
    expect(at, `the focus on ${at.said}`).toMatchObject({ isVisible: true });
    if (wanted.test(at.said)) return;
  }
  throw new Error(`Tab never came to ${wanted}`);
}

/** Whether these words come in this order in what a reader hears. */
function expectOrder(heard: string, words: readonly RegExp[]): void {
  let from = 0;
  for (const word of words) {
    const found = heard.slice(from).search(word);
    expect(found, `${word} after the words before it, in:\n${heard}`).toBeGreaterThanOrEqual(0);
    from += found + 1;
  }
}

it("walk 6: a grower finds, asks why, weighs and takes back with the keyboard alone", async () => {
  const house = await openDemo();
  const device = await openDevice(demoLook);
  const walker = walkerOn(device);
  try {
    const page = device.page;
    await enter(page, house, "grower");
    const before = await entriesOf(house);
    expect(await accessibilityTroubles(page)).toEqual([]);
    expectOrder(await page.locator("body").ariaSnapshot(), [
      /heading "Round"/,
      /\d+ tasks, \d+ min/,
      /I have, in minutes/,
      /must/,
      /South sill/,
      /Lamp shelf A/,
      /Before you go/,
      /Weigh run/,
      /START South sill/,
      /Places to go/,
    ]);

    for (const key of "127") await walker.key(key);
    await page.getByRole("heading", { level: 1, name: "Number" }).waitFor();
    expect((await page.locator("output").textContent())?.trim()).toBe("127");
    expect(await accessibilityTroubles(page)).toEqual([]);
    await walker.key("Enter");
    await page.getByRole("heading", { level: 1, name: "127", exact: true }).waitFor();
    await page.getByRole("region", { name: "14 days" }).waitFor();
    await page.getByText("What is known").waitFor();
    expect((await focused(page)).said).toBe("127");
    expect(await accessibilityTroubles(page)).toEqual([]);
    expect(await sidewaysScroll_px(page)).toBe(0);
    await walker.shoot("walk-06-plant");
    expectOrder(await page.locator("body").ariaSnapshot(), [
      /heading "127"/,
      /Ember Thread/,
      /region "14 days"/,
      /paragraph/,
      /last/,
      /What is known/,
      /Enter…/,
      /DONE|WRITE AN ENTRY/,
      /Places to go/,
    ]);

    await walker.key("w");
    const slip = page.getByRole("dialog");
    await slip.waitFor();
    expect(await focused(page)).toMatchObject({ inDialog: true });
    const title = await slip.getByRole("heading", { level: 2 }).textContent();
    expect(await accessibilityTroubles(page)).toEqual([]);
    const input =
      (await slip.locator("ul [data-working]").first().textContent())?.replaceAll(/\s+/g, " ").trim() ?? "";
    expect(input).not.toBe("");
    await tabTo(walker, page, new RegExp(`^${input.replaceAll(/[.*+?^${}()|[\]\\]/g, "\\$&")}`));
    await walker.key("Enter");
    await expect.poll(() => slip.getByRole("heading", { level: 2 }).textContent()).not.toBe(title);
    expect(await focused(page)).toMatchObject({ inDialog: true });
    expect(await accessibilityTroubles(page)).toEqual([]);
    await walker.shoot("walk-06-working");
    await walker.key("Escape");
    await slip.waitFor({ state: "detached" });
    // Where it was before W.
    expect((await focused(page)).said).toBe("127");

    await tabTo(walker, page, /^Enter…$/);
    await walker.key("Enter");
    await slip.waitFor();
    await tabTo(walker, page, /^Weighed$/);
    await walker.key("Enter");
    await page.getByText("pot alone: saucer off, scale at 0").waitFor();
    const band = /expected (\d+) g to (\d+) g/.exec((await page.locator("main").textContent()) ?? "");
    const weight_g = Math.round((Number(band?.[1]) + Number(band?.[2])) / 2);
    expect(await accessibilityTroubles(page)).toEqual([]);
    for (const digit of `${weight_g}`) await walker.key(digit);
    await walker.key("Enter");
    const live = page.locator("[role=status][aria-live=polite]").first();
    await live.filter({ hasText: `wrote 127 weighed ${weight_g} g` }).waitFor();
    await allOnServer(page);
    const weighed = await entriesSince(house, before);
    expect(weighed).toMatchObject([{ kind: "watering.weighed", data: { weight_g } }]);
    expect(await accessibilityTroubles(page)).toEqual([]);

    await walker.key("u");
    await live.filter({ hasText: /^took back 127 weighed/ }).waitFor();
    await allOnServer(page);
    expect((await entriesSince(house, before))[1]).toMatchObject({
      kind: "book.corrected",
      data: { withdrawn: true },
      corrects: [weighed[0]?.id],
    });
    // The page that the weighing came back to is still one that a reader can tell.
    expect((await focused(page)).tag).not.toBe("BODY");
    await walker.shoot("walk-06-end");
    walker.finish({ taps_n: 0 });
  } finally {
    await device.discard();
    await house.discard();
  }
});
