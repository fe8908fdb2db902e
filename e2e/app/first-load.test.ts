import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, expect, it } from "vitest";
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
  const list = files.map(({ path, gzip_bytes }) => `${path} ${gzip_bytes}`).join("\n");
  expect(total_bytes, list).toBeLessThanOrEqual(250_000);
});

it("gets at least 95 marks for accessibility and best practices on its first page", async () => {
  const { scores, failing } = await judgePage(house.address);
  expect(scores.accessibility, failing.join("\n")).toBeGreaterThanOrEqual(95);
  expect(scores["best-practices"], failing.join("\n")).toBeGreaterThanOrEqual(95);
});
