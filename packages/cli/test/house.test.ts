import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { run } from "../src/run.ts";
import { shell } from "./shell.ts";

it("writes through the house while it has the book open, and reads beside it", async () => {
  const sh = shell();
  await sh.run("enter", "plant.brought", "new", "habit=thin", "pot=12x9", "medium=spongy", "window=S");
  let stop = (): void => undefined;
  const stopped = new Promise<void>((resolve) => {
    stop = resolve;
  });
  let address = "";
  let said = (): void => undefined;
  const ready = new Promise<void>((resolve) => {
    said = resolve;
  });
  const house = run(["open", "--port", "0", "--json"], {
    ...sh.around,
    out: (text) => {
      address = (JSON.parse(text) as { address: string }).address;
      said();
    },
    err: () => undefined,
    stopped: () => stopped,
  });
  await ready;
  expect(address).toMatch(/^http:\/\/127\.0\.0\.1:\d{2,5}\/$/);

  const wrote = await sh.run("enter", "watering.weighed", "1", "weight=612");
  expect(wrote.code).toBe(0);
  expect(wrote.err).toContain(`The house at ${address.replace(/\/$/, "")} has the book open`);
  const photo = Buffer.concat([
    Buffer.from([0xff, 0xd8, 0xff, 0xda, 0, 3, 0]),
    Buffer.from([1, 2, 0xff, 0xd9]),
  ]);
  writeFileSync(join(sh.home, "p.jpg"), photo);
  expect((await sh.run("enter", "plant.noted", "1", "text=leans", "--photo", "p.jpg")).code).toBe(0);
  expect((await sh.run("enter", "plant.noted", "1", "text=x", "--photo", "none.jpg")).err).toContain(
    "no file",
  );
  writeFileSync(
    join(sh.home, "air.csv"),
    "time,air,humidity\n2026-03-11 08:00,21,48\n2026-03-11 09:00,21.5,47\n",
  );
  expect((await sh.run("read", "logger", "air.csv", "--bench", "South window", "--keep")).code).toBe(0);
  expect((await sh.run("book", "log", "1")).out).toContain("weighed 612 g");
  expect((await sh.run("book", "export", "copy")).out).toContain("2 files");
  expect((await sh.run("book", "backup", "safe")).err).toContain("stop it first");

  stop();
  expect(await house).toBe(0);
  expect((await sh.run("book", "verify")).out).toContain("all sound");
  expect((await sh.run("enter", "watering.looked", "1", "look=heavy")).err).toBe("");
}, 30_000);

it("founds no book by a slip in its name", async () => {
  const sh = shell();
  for (const argv of [
    ["round"],
    ["book", "verify"],
    ["book", "backup", "b"],
    ["book", "withdraw", "abcdef"],
  ]) {
    const { code, err } = await sh.run(...argv, "--book", "bok.sillwood");
    expect([argv, code]).toEqual([argv, 1]);
    expect(err).toContain("there is no book at");
  }
});
