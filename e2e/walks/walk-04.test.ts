import { expect, it } from "vitest";
import { accessibilityTroubles } from "../src/accessibility.ts";
import { demoLook, openDemo } from "../src/demo-book.ts";
import { openDevice } from "../src/device.ts";
import { sidewaysScroll_px } from "../src/layout.ts";
import { allOnServer, enter, entriesOf, entriesSince } from "../src/served-book.ts";
import { walkerOn } from "../src/walker.ts";

it("walk 4: an amount is put right, withdrawn and taken back in, and the forecast follows each time", async () => {
  const house = await openDemo();
  const device = await openDevice(demoLook);
  const walker = walkerOn(device);
  try {
    const page = device.page;
    await enter(page, house, "grower");
    const before = await entriesOf(house);
    // What the walk starts from: 200 mL written for pot 127 a moment ago.
    const plant = before.find(({ kind, data }) => /^plant\./.test(kind) && data["number"] === 127)?.on[0];
    expect(plant).toBeDefined();
    await page.goto(`${house.address}#/plant/${plant}`);
    await page.getByRole("button", { name: "Enter…" }).click();
    const slip = page.getByRole("dialog");
    await slip.getByRole("button", { name: "Watered" }).click();
    for (const digit of "200") await slip.getByRole("button", { name: digit, exact: true }).click();
    await slip.getByRole("button", { name: "200 mL" }).click();
    await page
      .getByRole("status")
      .filter({ hasText: /200 mL/ })
      .waitFor();

    /** What the plant's page says of its water and of its next watering; looked up beside the walk. */
    const forecast = async () => {
      await page.goto(`${house.address}#/plant/${plant}`);
      const line = page.getByRole("region", { name: "14 days" });
      await line.waitFor();
      await page.waitForTimeout(2_000);
      const said = `${await line.textContent()} / ${await page
        .getByText(/^water \d+ %/)
        .first()
        .textContent()}`;
      await page.goto(`${house.address}#/book`);
      await page.getByRole("heading", { level: 1, name: "Book" }).waitFor();
      return said;
    };
    const with200 = await forecast();

    const entry = page.getByRole("main").getByRole("button").filter({ hasText: "127" }).first();
    expect(await accessibilityTroubles(page)).toEqual([]);
    expect(await sidewaysScroll_px(page)).toBe(0);
    await walker.tap(entry);
    expect(await accessibilityTroubles(page)).toEqual([]);
    await walker.tap(page.getByRole("button", { name: "Put it right" }));
    await page.getByRole("heading", { level: 1, name: /^Put right: 127/ }).waitFor();
    await walker.shoot("walk-04-put-right");
    // The amount is what was written wrongly: it has the focus, and typing replaces it.
    const field = page.getByRole("textbox", { name: "Poured" });
    await expect.poll(() => field.evaluate((one) => one === document.activeElement)).toBe(true);
    await walker.type("160");
    expect(await field.inputValue()).toBe("160");
    expect(await accessibilityTroubles(page)).toEqual([]);
    await walker.tap(page.getByRole("button", { name: "PUT IT RIGHT" }));
    await page.getByRole("heading", { level: 1, name: "Book" }).waitFor();
    await entry.locator("s", { hasText: "200 mL" }).waitFor();
    expect(await entry.textContent()).toMatch(
      /200 mL.*the grower.*160 mL.*put right; first written by the grower/,
    );
    await walker.shoot("walk-04-ruled-through");
    const with160 = await forecast();
    expect(with160).not.toBe(with200);

    await walker.tap(entry);
    await walker.tap(page.getByRole("button", { name: "Withdraw" }));
    await entry.getByText("withdrawn").waitFor();
    const last = page.getByRole("status").first();
    await expect.poll(() => last.textContent()).toMatch(/^wrote withdrawal: 127 watered 160.mL/);
    await walker.shoot("walk-04-withdrawn");
    for (const amount of ["200 mL", "160 mL"]) await entry.locator("s", { hasText: amount }).waitFor();
    const without = await forecast();
    expect(without).not.toBe(with160);
    expect(without).not.toBe(with200);

    await walker.tap(page.getByRole("button", { name: "Undo" }));
    await expect.poll(() => entry.getByText("withdrawn").count()).toBe(0);
    await expect.poll(() => last.textContent()).toMatch(/^took back withdrawal: 127 watered 160.mL/);
    await page.waitForTimeout(1_000);
    await walker.shoot("walk-04-undone");
    // What moves elsewhere is said, and what stays is not said to move.
    expect(await last.textContent()).not.toMatch(/from (.+) to \1\./);
    await entry.locator("s", { hasText: "200 mL" }).waitFor();
    // All three were to be read in the book; now it reads again as it did before the withdrawal.
    expect(await entry.locator("s").allTextContents()).toHaveLength(1);
    expect(await entry.textContent()).toMatch(/200 mL.*160 mL/);
    expect(await forecast()).toBe(with160);
    await walker.shoot("walk-04-end");

    await allOnServer(page);
    const written = await entriesSince(house, before);
    const watered = written[0];
    expect(watered).toMatchObject({ kind: "watering.watered", data: { volume_mL: 200 }, on: [plant] });
    expect(written.slice(1).map(({ kind, corrects }) => [kind, corrects])).toEqual(
      Array(3).fill(["book.corrected", [watered?.id]]),
    );
    expect(written[1]?.data).toMatchObject({ data: { volume_mL: 160 } });
    expect(written[2]?.data).toEqual({ withdrawn: true });
    expect(written[3]?.data).toEqual({ restored: true });
    walker.finish({ taps_n: 6, digits_n: 3, keys_n: 3 });
  } finally {
    await device.discard();
    await house.discard();
  }
});
