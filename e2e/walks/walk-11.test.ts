import { afterAll, beforeAll, expect, it } from "vitest";
import { accessibilityTroubles } from "../src/accessibility.ts";
import { askDemo, demoLook, openDemo } from "../src/demo-book.ts";
import { openDevice } from "../src/device.ts";
import { settled } from "../src/every-screen.ts";
import type { House } from "../src/house.ts";
import { sidewaysTroubles } from "../src/layout.ts";
import { enter, entriesOf, entriesSince } from "../src/served-book.ts";
import { walkerOn } from "../src/walker.ts";

interface ShellTask {
  readonly must: boolean;
  readonly latest: string;
  readonly minutes: number;
}
interface ShellRound {
  readonly benches: readonly {
    readonly spots: readonly {
      readonly number: string;
      readonly tasks: readonly ShellTask[];
      readonly moved: readonly ShellTask[];
    }[];
  }[];
}

/** The grower of the demo comes every day at 07:00 in Seattle. */
const nextRound_ms = Date.parse("2025-01-15T15:00:00Z");

let house: House;
beforeAll(async () => {
  house = await openDemo();
});
afterAll(() => house?.discard());

it("walk 11: thirty minutes hold every must; what moves on is listed with its latest date", async () => {
  const device = await openDevice({ ...demoLook, screen: "smallPhone" });
  const walker = walkerOn(device);
  try {
    const { page } = device;
    await enter(page, house, "grower");
    const before = await entriesOf(house);
    const count = async (name: string) =>
      Number(await page.locator("dl > div", { hasText: name }).locator("dd").textContent());
    const counts = async () => ({
      must: await count("must"),
      fits: await count("fits"),
      wait: await count("can wait"),
    });
    const minutesSaid = async () =>
      Number(/(\d+)\smin/.exec((await page.locator("main p").first().textContent()) ?? "")?.[1]);
    const all = await counts();
    const allMinutes = await minutesSaid();
    expect(all.wait).toBe(0);
    expect(all.must).toBeGreaterThan(0);
    expect(allMinutes).toBeGreaterThan(30);

    await walker.tap(page.getByRole("button", { name: "30 minutes" }));
    await expect.poll(() => count("can wait")).toBeGreaterThan(0);
    await settled(page);
    await walker.shoot("walk-11-thirty");
    const thirty = await counts();
    expect(thirty.must).toBe(all.must);
    expect(thirty.must + thirty.fits + thirty.wait).toBe(all.must + all.fits);
    expect(await minutesSaid()).toBeLessThan(allMinutes);

    const shellRound = await askDemo<ShellRound>(house, ["round", "--minutes", "30"]);
    const rows = await page.getByText(/ at the latest$/).allTextContents();
    expect(rows).toHaveLength(thirty.wait);
    await page.getByRole("heading", { name: `Can wait ${thirty.wait}: until when` }).waitFor();
    for (const row of rows)
      expect(row).toMatch(/^\d{3} .+: (tomorrow|(Mon|Tue|Wed|Thu|Fri|Sat|Sun) \d{1,2} Jan) at the latest$/);
    // The book says the same to a shell. Whoever waits lasts until tomorrow's round.
    const spots = shellRound.benches.flatMap((bench) => bench.spots);
    const moved = spots.flatMap((spot) => spot.moved.map((task) => ({ ...task, number: spot.number })));
    const kept = spots.flatMap((spot) => spot.tasks);
    expect(rows.map((row) => row.slice(0, 3))).toEqual(moved.map(({ number }) => number));
    expect(moved.filter(({ must }) => must)).toEqual([]);
    expect(moved.filter(({ latest }) => Date.parse(latest) < nextRound_ms)).toEqual([]);
    // Beyond the half hour stands only what cannot wait.
    const pressing = kept.filter(({ must, latest }) => must || Date.parse(latest) < nextRound_ms);
    const pressing_min = pressing.reduce((sum, { minutes }) => sum + minutes, 0);
    const kept_min = kept.reduce((sum, { minutes }) => sum + minutes, 0);
    expect(kept_min).toBeLessThanOrEqual(Math.max(30, pressing_min));
    // When that alone is more than the half hour, it is said why.
    const over = page.getByText(/^What can't wait takes \d+.min alone, more than 30.min\.$/);
    expect(await over.count()).toBe(pressing_min > 30 ? 1 : 0);

    expect(await accessibilityTroubles(page)).toEqual([]);
    expect(await sidewaysTroubles(page)).toEqual([]);
    // How much time there is concerns this device, not the book.
    expect(await entriesSince(house, before)).toEqual([]);
    walker.finish({ taps_n: 1, decisions_n: 1, typedValues_n: 0, keys_n: 0 });
  } finally {
    await device.discard();
  }
});
