import { expect, it } from "vitest";
import { browserTrouble, nodeSuffices } from "./requirements.mjs";

it.each([
  ["20.18.3", false],
  ["20.19.0", true],
  ["21.7.0", false],
  ["22.11.0", false],
  ["22.12.0", true],
  ["24.0.0", true],
  ["18.20.0", false],
])("Node %s: %s", (version, suffices) => {
  expect(nodeSuffices(version)).toBe(suffices);
});

it("says what to set where no test browser is shipped for the system", () => {
  expect(browserTrouble({}, "darwin", "arm64")).toContain("Set SILLWOOD_CHROMIUM");
  expect(browserTrouble({}, "linux", "riscv64")).toContain("linux on riscv64");
});

it("takes a browser that is named, and refuses one that is not there", () => {
  expect(browserTrouble({ SILLWOOD_CHROMIUM: process.execPath }, "darwin", "arm64")).toBeUndefined();
  expect(browserTrouble({ SILLWOOD_CHROMIUM: "/no/such/browser" }, "linux", "x64")).toContain(
    "/no/such/browser",
  );
});
