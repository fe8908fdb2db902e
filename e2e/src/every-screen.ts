import type { Page } from "playwright-core";
import type { House } from "./house.ts";
import { entriesOf } from "./served-book.ts";

/** A screen as somebody comes to stand before it. */
export interface Screen {
  readonly name: string;
  /** After the `#` of the address. */
  readonly path: string;
  /** What is pressed there, such as a key that opens a slip. */
  readonly then?: (page: Page) => Promise<void>;
  /** Only reading, or rows and pads that are themselves the keys. */
  readonly noMainKey?: true;
}

const press = (name: string | RegExp) => (page: Page) => page.getByRole("button", { name }).first().click();

/** Every screen and slip of the house on the demo book. The first start stands before them all and is looked at apart. */
export async function everyScreen(house: House): Promise<readonly Screen[]> {
  const entries = await entriesOf(house);
  const plantOf = (number: number) =>
    entries.find(({ kind, data }) => kind === "plant.brought" && data["number"] === number)?.on[0];
  const plant = plantOf(127);
  const drowned = plantOf(107);
  const watered = entries.findLast(({ kind, on }) => kind === "watering.watered" && on[0] === plant)?.id;
  if (!plant || !drowned || !watered) throw new Error("the demo book lacks what the screens need");
  return [
    { name: "round", path: "/" },
    { name: "at-the-pot", path: "/walk/south-sill" },
    { name: "at-the-pot-working", path: "/walk/south-sill", then: press(/uses .* a day/), noMainKey: true },
    { name: "at-the-pot-other", path: "/walk/south-sill", then: press("Other…"), noMainKey: true },
    { name: "at-the-pot-not-here", path: "/walk/south-sill", then: press("Not here…"), noMainKey: true },
    { name: "at-the-pot-skip", path: "/walk/south-sill", then: press("Skip…"), noMainKey: true },
    { name: "whole-bench", path: "/whole/south-sill" },
    { name: "weighing-run", path: "/weigh/south-sill" },
    { name: "plant", path: `/plant/${plant}` },
    { name: "plant-enter", path: `/plant/${plant}`, then: press("Enter…"), noMainKey: true },
    { name: "plants", path: "/plants" },
    { name: "read-a-list", path: "/plants/list" },
    { name: "first-run", path: "/first" },
    { name: "new-batch", path: "/new/batch.started" },
    { name: "benches", path: "/benches" },
    { name: "bench", path: "/bench/south-sill" },
    { name: "new-bench", path: "/bench/new" },
    { name: "light", path: "/craft/light" },
    { name: "light-sill", path: "/craft/light/south-sill" },
    { name: "light-shelf", path: "/craft/light/lamp-shelf-a" },
    { name: "light-working", path: "/craft/light/cold-room", then: press(/mol\/m² a day/), noMainKey: true },
    { name: "light-read", path: "/craft/light/south-sill/read/south-sill-8" },
    { name: "light-window", path: "/craft/light/cold-room/draw/window/1" },
    { name: "light-lamp", path: "/craft/light/lamp-shelf-a/draw/lamp/1" },
    { name: "light-timer", path: "/craft/light/lamp-shelf-a/draw/timer" },
    { name: "light-stands", path: "/craft/light/cold-room/draw/stands/cold-room-3" },
    { name: "light-print", path: "/craft/light/cold-room/print" },
    { name: "potting-day", path: "/craft/potting" },
    { name: "mix-medium", path: "/craft/potting/mix" },
    { name: "fruit", path: "/craft/fruit" },
    { name: "fruit-plant", path: `/craft/fruit/${plant}` },
    { name: "desk", path: "/desk" },
    { name: "wrong-which", path: "/wrong", noMainKey: true },
    { name: "wrong", path: `/wrong/${drowned}` },
    { name: "reckoner", path: "/reckon", noMainKey: true },
    { name: "reckoner-sum", path: "/reckon/dewPoint_C" },
    { name: "away", path: "/away" },
    { name: "supplies", path: "/supplies" },
    { name: "settings", path: "/settings", noMainKey: true },
    { name: "settings-assumed", path: "/settings/assumed", noMainKey: true },
    { name: "settings-people", path: "/settings/people", noMainKey: true },
    { name: "settings-cautions", path: "/settings/cautions", noMainKey: true },
    { name: "book", path: "/book" },
    { name: "book-take", path: "/book/take" },
    { name: "write-which", path: "/write", noMainKey: true },
    { name: "write", path: "/write/watering.watered" },
    { name: "put-right", path: `/right/${watered}` },
    { name: "number", path: "/number" },
    { name: "print-round", path: "/print/round" },
    { name: "print-labels", path: "/print/labels" },
    { name: "print-plant", path: `/print/plant/${plant}` },
    { name: "sheet", path: "/sheet/00196501" },
    { name: "no-such-page", path: "/nowhere" },
  ];
}

/** Goes to a screen and waits until it has settled. */
export async function goTo(page: Page, screen: Screen): Promise<void> {
  // A page of its own each time: what one screen left open must not stand on the next.
  await page.evaluate(() => {
    location.hash = "#/left";
  });
  await settled(page);
  await page.evaluate((path) => {
    document.querySelector("h1")?.setAttribute("data-left", "");
    location.hash = `#${path}`;
  }, screen.path);
  await page.locator("h1[data-left]").waitFor({ state: "detached" });
  await settled(page);
  if (screen.then) {
    await screen.then(page);
    await settled(page);
  }
}

/** Until the page has its heading and its content, and nothing moves any more. */
export async function settled(page: Page): Promise<void> {
  let before = "";
  for (let look = 0; look < 300; look += 1) {
    const now = await page.evaluate(() => {
      const reading = document.querySelector("main p[role=status]") !== null;
      const main = document.querySelector("main")?.textContent ?? "";
      const settling = "settling" in document.documentElement.dataset;
      return reading || settling || main.trim() === "" ? "" : document.body.innerText;
    });
    if (now !== "" && now === before) return;
    before = now;
    await page.waitForTimeout(70);
  }
  throw new Error(`the page at ${page.url()} does not settle`);
}
