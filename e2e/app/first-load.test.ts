import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, expect, it } from "vitest";
import { openDevice } from "../src/device.ts";
import { type House, openHouse } from "../src/house.ts";
import { judgePage } from "../src/lighthouse.ts";
import { firstScripts } from "../src/script-size.ts";

const built = fileURLToPath(new URL("../../packages/web/dist", import.meta.url));
let house: House;
beforeAll(async () => {
  house = await openHouse({ demo: true });
});
afterAll(() => house?.discard());

it("needs at most 250 kB of compressed script for the first screen, the worker counted", () => {
  const { total_bytes, files } = firstScripts(built);
  const list = files.map(({ path, sent_bytes }) => `${path} ${sent_bytes}`).join("\n");
  expect(total_bytes, list).toBeLessThanOrEqual(250_000);
});

it("sends a browser no more of each script than is counted there", async () => {
  const device = await openDevice();
  try {
    await device.page.goto(house.address);
    await device.page.getByRole("heading", { level: 1 }).waitFor();
    const sent = await device.page.evaluate(() =>
      (performance.getEntriesByType("resource") as PerformanceResourceTiming[]).map(
        ({ name, encodedBodySize }) => [new URL(name).pathname.slice(1), encodedBodySize] as const,
      ),
    );
    const sizes = new Map(sent);
    const counted = firstScripts(built).files.filter(({ path }) => sizes.has(path));
    expect(counted.length).toBeGreaterThan(5);
    for (const { path, sent_bytes } of counted) expect(sizes.get(path), path).toBe(sent_bytes);
  } finally {
    await device.discard();
  }
});

it("gets at least 95 marks for accessibility and best practices on its first page", async () => {
  const { scores, failing } = await judgePage(house.address);
  expect(scores.accessibility, failing.join("\n")).toBeGreaterThanOrEqual(95);
  expect(scores["best-practices"], failing.join("\n")).toBeGreaterThanOrEqual(95);
});
