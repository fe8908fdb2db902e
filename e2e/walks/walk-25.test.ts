import type { Page } from "playwright-core";
import { expect, it } from "vitest";
import { accessibilityTroubles } from "../src/accessibility.ts";
import { demoLook, openDemo } from "../src/demo-book.ts";
import { openDevice } from "../src/device.ts";
import { sidewaysScroll_px } from "../src/layout.ts";
import { codeFor, letIn } from "../src/let-in.ts";
import { layLine } from "../src/line.ts";
import { allOnServer, enter, entriesOf, entriesSince, forecastsKept } from "../src/served-book.ts";
import { walkerOn } from "../src/walker.ts";

const NO_LINE =
  /ERR_CONNECTION|ERR_EMPTY_RESPONSE|INCOMPLETE_CHUNKED|ERR_SOCKET|ERR_NETWORK|status of 4(01|23)/;

it("walk 25: two phones water 127, one without a line; both are kept and asked about; one is shut out and hands in what it has", async () => {
  const house = await openDemo({ atHome: true });
  const line = await layLine(house.homePort as number);
  const grower = await openDevice(demoLook);
  const phone = await openDevice({ ...demoLook, trusts: true });
  const [mine, theirs] = [walkerOn(grower), walkerOn(phone)];
  for (const walker of [mine, theirs]) walker.expectTrouble(NO_LINE);
  try {
    await enter(grower.page, house, "grower");
    await forecastsKept(house);
    // Set up beside the walk: the phone is let in once.
    await letIn(phone.page, line, await codeFor(grower.page, house, /for the helper/), "shed phone");
    expect(await accessibilityTroubles(phone.page)).toEqual([]);
    const worker = () =>
      phone.page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.active?.state);
    await expect.poll(worker, { timeout: 60_000 }).toBe("activated");
    const before = await entriesOf(house);
    const numbered = (number: number) =>
      before.find(({ kind, data }) => /^plant\./.test(kind) && data["number"] === number)?.on[0] as string;

    line.cut();
    const water = async (page: Page, base: string, plant: string) => {
      await page.goto(`${base}#/plant/${plant}`);
      await page.getByRole("button", { name: "Enter…" }).click();
      const slip = page.getByRole("dialog");
      await slip.getByRole("button", { name: "Watered" }).click();
      for (const digit of "180") await slip.getByRole("button", { name: digit, exact: true }).click();
      return slip.getByRole("button", { name: "180 mL" });
    };
    const phoneBase = `https://127.0.0.1:${line.port}/`;
    await theirs.tap(await water(phone.page, phoneBase, numbered(127)));
    await phone.page.getByRole("button", { name: "Save mark: 1 on phone" }).waitFor({ timeout: 60_000 });
    await mine.tap(await water(grower.page, house.address, numbered(127)));
    await allOnServer(grower.page);
    line.mend();
    await allOnServer(phone.page);

    await grower.page.goto(`${house.address}#/`);
    await grower.page
      .getByText(/^127 was watered twice: .*helper.*Both true\?$/)
      .waitFor({ timeout: 60_000 });
    await mine.shoot("walk-25-watered-twice");
    await mine.tap(grower.page.getByRole("button", { name: "Both", exact: true }));
    const both = (await entriesSince(house, before)).filter(({ kind }) => kind === "watering.watered");
    expect(both).toHaveLength(2);
    expect(new Set(both.map(({ by }) => by)).size).toBe(2);

    // Two more are written on the phone without a line; meanwhile it is lost, and shut out.
    line.cut();
    for (const number of [107, 131]) {
      await (await water(phone.page, phoneBase, numbered(number))).click();
      await phone.page
        .getByRole("status")
        .filter({ hasText: `wrote ${number} watered` })
        .waitFor();
    }
    await grower.page.goto(`${house.address}#/settings/people`);
    await grower.page.getByRole("button", { name: "Close it: shed phone" }).waitFor();
    expect(await accessibilityTroubles(grower.page)).toEqual([]);
    expect(await sidewaysScroll_px(grower.page)).toBe(0);
    await mine.shoot("walk-25-people");
    await mine.tap(grower.page.getByRole("button", { name: "Close it: shed phone" }));
    await grower.page.getByText("“shed phone” is closed.", { exact: false }).waitFor();
    await allOnServer(grower.page);
    line.mend();
    const shut = "This phone was closed by the grower; 2 entries kept for them.";
    await phone.page.getByRole("heading", { level: 1, name: shut }).waitFor({ timeout: 150_000 });
    expect(await accessibilityTroubles(phone.page)).toEqual([]);
    expect(await sidewaysScroll_px(phone.page)).toBe(0);
    await theirs.shoot("walk-25-closed");
    expect(
      (await entriesSince(house, before)).filter(({ kind }) => kind === "watering.watered"),
    ).toHaveLength(2);
    expect(mine.effort.taps_n + theirs.effort.taps_n).toBe(4);

    // Still shut after a flat battery and without a line.
    line.cut();
    await phone.kill();
    await phone.reopen();
    await phone.page.goto(phoneBase);
    await phone.page.getByRole("heading", { level: 1, name: shut }).waitFor({ timeout: 60_000 });

    // Beside the walk: the grower takes one and drops the other.
    await grower.page.goto(`${house.address}#/book`);
    await grower.page.goto(`${house.address}#/settings/people`);
    await grower.page.getByRole("button", { name: /^Take it: 107/ }).click();
    await grower.page.getByText("1 entry taken into the book.").waitFor();
    await mine.shoot("walk-25-waits");
    await grower.page.getByRole("button", { name: /^Drop it: 131/ }).click();
    await grower.page.getByText("1 entry dropped.").waitFor();
    const watered = (await entriesSince(house, before)).filter(({ kind }) => kind === "watering.watered");
    expect(watered.map(({ on }) => on[0]).sort()).toEqual(
      [numbered(107), numbered(127), numbered(127)].sort(),
    );
    mine.finish({});
    theirs.finish({});
  } finally {
    await phone.discard();
    await grower.discard();
    await line.close();
    await house.discard();
  }
});
