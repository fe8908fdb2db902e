import { spawn } from "node:child_process";
import { once } from "node:events";
import { fileURLToPath } from "node:url";
import { expect, it } from "vitest";
import { openHouse } from "../src/house.ts";

const start = fileURLToPath(new URL("../../tools/start.mjs", import.meta.url));

it("npm start opens the demo book on the asked port and closes it again when it is told to", async () => {
  const house = await openHouse({ program: [process.execPath, start] });
  try {
    const page = await fetch(house.address);
    expect(page.headers.get("content-type")).toContain("text/html");
    await house.stop();
    await expect(fetch(house.address)).rejects.toThrow();
  } finally {
    await house.discard();
  }
});

it("npm start says what is wrong, and ends, when the words after it make no sense", async () => {
  const child = spawn(process.execPath, [start, "--port", "no-port"], {
    env: { ...process.env, SILLWOOD_NO_BROWSER: "1" },
  });
  let said = "";
  child.stderr.setEncoding("utf8").on("data", (text) => {
    said += text;
  });
  const [code] = await once(child, "exit");
  expect(code).not.toBe(0);
  expect(said).toContain("no-port");
});
