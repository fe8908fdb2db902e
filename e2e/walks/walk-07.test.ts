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

const hourLater_ms = DEMO_NOW_ms + 3_600_000;

interface Asked {
  readonly asks: readonly { readonly said: string; readonly plants: readonly string[] }[];
}

it("walk 7: a pot that hangs, drained and heavy, gets no water and goes to the grower", async () => {
  const device = await openDevice({ ...demoLook, screen: "smallPhone" });
  const walker = walkerOn(device);
  try {
    const { page } = device;
    await enter(page, house, "helper");
    const before = await entriesOf(house);
    // The demo's rotten pot: its leaves hang while it is heavy with water.
    const plant = before.find(({ kind, data }) => kind === "plant.brought" && data["number"] === 107)?.on[0];
    const asksOf = async () =>
      (await askDemo<Asked>(house, ["round"], hourLater_ms)).asks.filter(({ plants }) =>
        plants.includes(plant ?? ""),
      );
    const asked_n = (await asksOf()).length;
    await page.goto(`${house.address}#/walk/lamp-shelf-a?pot=${plant}`);
    await page.locator("main").getByText("107", { exact: true }).first().waitFor();
    await settled(page);
    expect(await accessibilityTroubles(page)).toEqual([]);
    await walker.shoot("walk-07-at-the-pot");

    await walker.tap(page.getByRole("button", { name: "Other…" }));
    await walker.tap(page.getByRole("button", { name: "looks wrong" }));
    await page.getByRole("heading", { level: 1, name: "What is wrong?" }).waitFor();
    await settled(page);
    await walker.shoot("walk-07-where");
    await walker.tap(page.getByRole("button", { name: /droop/ }));
    await page.getByText("One look would settle it:").waitFor();
    await settled(page);
    await walker.shoot("walk-07-droops");
    // Before anybody lifted it the page already says not to water.
    const doNot = page.locator("section", { has: page.getByRole("heading", { name: "Do not" }) });
    await doNot.getByText(/do not water/i).waitFor();
    const heavy = page.getByRole("button", { name: /^heavy$/i });
    await walker.tap(heavy);
    await heavy.waitFor({ state: "detached" });
    await settled(page);

    await doNot.getByText(/do not water/i).waitFor();
    // It is settled: no unlikely cause asks on.
    expect(await page.getByText("One look would settle it:").count()).toBe(0);
    expect(await page.getByText("A ranking, not a chance").count()).toBe(1);
    expect(await page.locator("ol > li").first().textContent()).toMatch(/likeliest.*wet roots/);
    expect(await page.getByText("Something not in this list is possible.").count()).toBe(1);
    const keys = () => page.getByRole("button").allTextContents();
    expect((await keys()).filter((words) => /WATER|DONE|\d\s*mL/i.test(words))).toEqual([]);
    expect(await accessibilityTroubles(page)).toEqual([]);
    expect(await sidewaysTroubles(page)).toEqual([]);
    await walker.shoot("walk-07-heavy");

    await walker.tap(page.getByRole("button", { name: "WRITE IT, tell the grower" }));
    await page
      .getByRole("status")
      .filter({ hasText: /^wrote/ })
      .waitFor();
    await allOnServer(page);
    await settled(page);
    await walker.shoot("walk-07-written");
    // The walk goes on where it stood, with one look at the roots and no water.
    await page.locator("main").getByText("107", { exact: true }).first().waitFor();
    expect(new URL(page.url()).hash).toMatch(/^#\/walk\/lamp-shelf-a/);
    expect(await page.locator("main").getByText("look at the roots of 107, do not water").count()).toBe(1);
    expect(await page.locator("main").getByText("look again: does it stand?").count()).toBe(0);
    expect((await keys()).filter((words) => /WATER/.test(words))).toEqual([]);

    const helper = before.find(({ kind, data }) => kind === "person.joined" && data["role"] === "helper");
    const written = await entriesSince(house, before);
    const seenBy = { on: [plant], by: helper?.on[0] };
    expect(written).toMatchObject([
      { ...seenBy, kind: "watering.looked", data: { look: "drooping", yes: true } },
      { ...seenBy, kind: "watering.looked", data: { look: "heavy", yes: true } },
      { ...seenBy, kind: "round.left", data: { case: ["droops", "heavy pot"] } },
    ]);
    expect(written).toHaveLength(3);
    // It waits for the grower on the round, and nothing was counted as watered.
    const asks = await asksOf();
    expect(asks).toHaveLength(asked_n + 1);
    expect(asks.map(({ said }) => said).join("\n")).toMatch(/107.*helper/);
    walker.finish({ taps_n: 5, keys_n: 0, typedValues_n: 0 });
  } finally {
    await device.discard();
  }
});

interface Tasks {
  readonly benches: readonly {
    readonly spots: readonly {
      readonly number: string;
      readonly tasks: readonly { readonly work: string }[];
    }[];
  }[];
}

it("walk 7: a pot that was to be watered is not, once it was seen to hang while heavy", async () => {
  const device = await openDevice({ ...demoLook, screen: "smallPhone" });
  const walker = walkerOn(device);
  try {
    const { page } = device;
    await enter(page, house, "helper");
    const tasksOf = async (number: string) =>
      (await askDemo<Tasks>(house, ["round"])).benches
        .flatMap(({ spots }) => spots)
        .find((spot) => spot.number === number)?.tasks ?? [];
    expect((await tasksOf("110")).map(({ work }) => work)).toEqual(["water"]);
    const plant = (await entriesOf(house)).find(({ data }) => data["number"] === 110)?.on[0];
    await page.goto(`${house.address}#/walk/lamp-shelf-a?pot=${plant}`);
    await page.locator("main").getByText("110", { exact: true }).waitFor();
    await page.getByRole("button", { name: /^DONE \d+\smL$/ }).waitFor();

    await walker.tap(page.getByRole("button", { name: "Other…" }));
    await walker.tap(page.getByRole("button", { name: "looks wrong" }));
    await walker.tap(page.getByRole("button", { name: /droop/ }));
    await walker.tap(page.getByRole("button", { name: /^heavy$/i }));
    await walker.tap(page.getByRole("button", { name: "WRITE IT, tell the grower" }));
    await page
      .getByRole("status")
      .filter({ hasText: /^wrote 110 the leaves droop/ })
      .waitFor();
    await allOnServer(page);
    await settled(page);
    await walker.shoot("walk-07-held");
    expect(
      (await page.getByRole("button").allTextContents()).filter((said) => /WATER|mL/.test(said)),
    ).toEqual([]);
    // Back on the walk its roots are to be looked at, and no key pours.
    await page.locator("main").getByText("look at the roots of 110, do not water").waitFor();
    await settled(page);
    expect(await page.getByRole("button", { name: /\d\smL/ }).count()).toBe(0);
    walker.finish({ taps_n: 5, keys_n: 0 });
  } finally {
    await device.discard();
  }
});
