import { expect, it } from "vitest";
import { accessibilityTroubles } from "../src/accessibility.ts";
import { demoLook, openDemo } from "../src/demo-book.ts";
import { openDevice } from "../src/device.ts";
import { allOnServer, enter, entriesOf, entriesSince, forecastsKept } from "../src/served-book.ts";
import { walkerOn } from "../src/walker.ts";

const pots_n = 5;

it("walk 5: five pots done without a server outlive a reload and a dead battery, and go home once", async () => {
  const house = await openDemo();
  const device = await openDevice(demoLook);
  const walker = walkerOn(device);
  // The server is away for most of this walk: the browser says so of everything that it asked in vain.
  walker.expectTrouble(/ERR_CONNECTION_REFUSED|ERR_EMPTY_RESPONSE|ERR_CONNECTION_RESET|INCOMPLETE_CHUNKED/);
  try {
    await enter(device.page, house, "helper");
    await forecastsKept(house);
    await allOnServer(device.page);
    // The app itself is on the phone once its service worker stands.
    const worker = () =>
      device.page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.active?.state);
    await expect.poll(worker, { timeout: 60_000 }).toBe("activated");
    const before = await entriesOf(house);
    const fiveOnPhone = () =>
      device.page.getByRole("button", { name: `Save mark: ${pots_n} on phone` }).waitFor({ timeout: 60_000 });
    const place = () => device.page.getByText(/^\d+ of \d+$/).first();
    const potShown = async () => (await device.page.locator("main p").first().textContent()) ?? "";

    await walker.tap(device.page.getByRole("button", { name: /^START South sill, / }));
    await place().waitFor();
    const stops = (await place().textContent())?.replace(/^\d+ /, "") ?? "";
    await house.stop();
    const shown: string[] = [];
    for (let pot_n = 0; pot_n < pots_n; pot_n += 1) {
      await device.page.getByText(`${pot_n + 1} ${stops}`, { exact: true }).waitFor();
      await device.page.locator("[data-main-key]:not([aria-disabled])").waitFor();
      const done = device.page.getByRole("button", { name: /^DONE/ });
      shown.push((await done.textContent()) ?? "");
      await walker.tap(done);
    }
    await fiveOnPhone();
    await device.page.getByText(`6 ${stops}`, { exact: true }).waitFor();
    const sixth = await potShown();
    expect(sixth).toMatch(/^\d{3}/);
    expect(await accessibilityTroubles(device.page)).toEqual([]);
    await walker.shoot("walk-05-on-phone");

    await device.page.reload();
    await device.page.getByText(`6 ${stops}`, { exact: true }).waitFor({ timeout: 60_000 });
    await fiveOnPhone();
    expect(await potShown()).toBe(sixth);

    await device.kill();
    await device.reopen();
    await device.page.goto(house.address);
    await device.page.getByRole("button", { name: /^GO ON at / }).waitFor({ timeout: 60_000 });
    await fiveOnPhone();
    expect(await accessibilityTroubles(device.page)).toEqual([]);
    await walker.shoot("walk-05-go-on");
    await walker.tap(device.page.getByRole("button", { name: `GO ON at ${sixth.slice(0, 3)}`, exact: true }));
    await device.page.getByText(`6 ${stops}`, { exact: true }).waitFor();
    expect(await potShown()).toBe(sixth);

    await house.start();
    await allOnServer(device.page);
    const written = await entriesSince(house, before);
    expect(written.map(({ kind }) => kind)).toEqual(Array(pots_n).fill("watering.watered"));
    expect(written.map(({ data }) => `DONE ${data["volume_mL"]} mL`)).toEqual(shown);
    expect(new Set(written.flatMap(({ on }) => on)).size).toBe(pots_n);
    expect(await potShown()).toBe(sixth);
    walker.finish({ taps_n: 7, keys_n: 0 });
  } finally {
    await device.discard();
    await house.discard();
  }
});
