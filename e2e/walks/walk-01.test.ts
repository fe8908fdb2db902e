import { expect, it } from "vitest";
import { accessibilityTroubles } from "../src/accessibility.ts";
import { DEMO_NOW_ms } from "../src/demo-book.ts";
import { openDevice } from "../src/device.ts";
import { openHouse } from "../src/house.ts";
import { sidewaysScroll_px } from "../src/layout.ts";
import { allOnServer, entriesOf } from "../src/served-book.ts";
import { walkerOn } from "../src/walker.ts";

const days = ["Su", "Mo", "Tu", "We", "Th", "Fr", "Sa"];
const months = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

/** "Water: tomorrow (We to Tu)", or "(14 to 22 Jan)", "(28 Jan to 5 Feb)" from a week on: how many days the bracket spans. */
function span_d(said: string): number {
  const dates = /\((\d+)(?: (\w{3}))? to (\d+) (\w{3})\)/.exec(said);
  if (dates) {
    const [, fromDay, fromMonth, toDay, toMonth = ""] = dates;
    const at = (month: string, day: string | undefined) => Date.UTC(2025, months.indexOf(month), Number(day));
    const span_ms = at(toMonth, toDay) - at(fromMonth ?? toMonth, fromDay);
    return Math.round(span_ms / 86_400_000);
  }
  const range = /\((\w\w)(?: to (\w\w))?\)/.exec(said);
  const from = days.indexOf(range?.[1] ?? "");
  const to = days.indexOf(range?.[2] ?? range?.[1] ?? "");
  if (from < 0 || to < 0) throw new Error(`no range of days in: ${said}`);
  return (to - from + 7) % 7;
}

it("walk 1: four facts give a newcomer a date with a range", async () => {
  const house = await openHouse();
  // A fixed day: the range is said in whole days.
  const device = await openDevice({ now_ms: DEMO_NOW_ms });
  const walker = walkerOn(device);
  try {
    const page = device.page;
    await page.goto(house.address);
    expect(await accessibilityTroubles(page)).toEqual([]);
    await walker.tap(page.getByRole("button", { name: "THE GROWER" }));
    await page.getByText("Four facts, then an answer").first().waitFor();
    const answer = page.locator("[aria-live=polite]", { hasText: /^Water:/ });
    const said = async () => {
      // The answer is reckoned anew after each fact, while the one before stands.
      await page.waitForTimeout(800);
      return ((await answer.textContent()) ?? "").replaceAll(/\s+/g, " ").trim();
    };
    const what = page.getByRole("group", { name: "1 What" });
    const filled = page.getByRole("group", { name: "3 Filled with" });
    const window = page.getByRole("group", { name: "4 Spot: the window faces" });

    await walker.tap(what.getByRole("radio", { name: "fat" }));
    expect(span_d(await said())).toBeGreaterThan(0);
    await walker.tap(filled.getByRole("radio", { name: "dark, spongy" }));
    await walker.tap(window.getByRole("radio", { name: "south", exact: true }));
    const answered = await said();
    expect(answered).toMatch(/^Water: (today|tomorrow|\w+ \d+ \w+) \(/);
    expect(answered).toContain("4 guesses in it:");
    expect(answered).toContain("pot");
    expect(await page.getByRole("img", { name: "assumed" }).count()).toBeGreaterThan(0);
    expect(await window.getByRole("radio", { checked: true }).getAttribute("aria-label")).toBe("south");
    expect(await sidewaysScroll_px(page)).toBe(0);
    expect(await accessibilityTroubles(page)).toEqual([]);
    await walker.shoot("walk-01-answer");
    // Asked on the way, and no part of what the walk costs: each row's "not sure" answers as well.
    for (const [row, back] of [
      [what, "fat"],
      [filled, "dark, spongy"],
      [window, "south"],
    ] as const) {
      await row.getByRole("radio", { name: "not sure" }).click();
      const unsure = await said();
      expect(unsure).toContain("5 guesses in it:");
      expect(span_d(unsure)).toBeGreaterThanOrEqual(span_d(answered));
      await row.getByRole("radio", { name: back, exact: true }).click();
    }
    expect(await said()).toBe(answered);

    await walker.tap(page.getByRole("button", { name: "KEEP THIS PLANT" }));
    await page.getByRole("heading", { level: 1, name: "1", exact: true }).waitFor();
    await allOnServer(page);
    await walker.shoot("walk-01-plant");
    const written = await entriesOf(house);
    expect(written.map(({ kind }) => kind).sort()).toEqual(["bench.laid", "person.joined", "plant.brought"]);
    expect(written.find(({ kind }) => kind === "bench.laid")?.data).toMatchObject({
      outdoors: false,
      windowFaces_deg: 180,
    });
    expect(written.find(({ kind }) => kind === "plant.brought")?.data).toMatchObject({
      number: 1,
      habit: "fat",
      medium: "spongy",
    });
    expect(await accessibilityTroubles(page)).toEqual([]);
    walker.finish({ taps_n: 8, typedValues_n: 0, keys_n: 0 });
  } finally {
    await device.discard();
    await house.discard();
  }
});
