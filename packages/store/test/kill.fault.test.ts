import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { refKey } from "@sillwood/bench/book";
import { afterAll, expect, it } from "vitest";
import { seeded } from "../../bench/test/entry-maker.ts";
import { openSqlite } from "../src/sqlite/index.ts";
import { linesOf, startChild } from "./child.ts";

const folder = mkdtempSync(join(tmpdir(), "sillwood-kill-"));
afterAll(() => rmSync(folder, { recursive: true }));

it("SIGKILL at random during 500 acknowledged appends loses none, and the book opens at once", async () => {
  const path = join(folder, "book.sillwood");
  const random = seeded(20);
  const acknowledged = new Set<string>();
  let kills_n = 0;
  while (acknowledged.size < 500) {
    const child = startChild("append-child.ts", [path, String(kills_n++)]);
    const killAfter_n = 20 + Math.floor(random() * 120);
    let here_n = 0;
    const { errors } = await linesOf(child, (line) => {
      if (line !== "open") acknowledged.add(line);
      // Some while a commit is certainly under way, some a moment later.
      if (++here_n === killAfter_n) setTimeout(() => child.kill("SIGKILL"), random() * 3);
    });
    expect(errors).toBe("");
    expect(here_n).toBeGreaterThanOrEqual(killAfter_n);

    const store = await openSqlite({ path });
    const there = new Set<string>();
    for await (const chunk of store.all()) for (const entry of chunk) there.add(refKey(entry));
    const lost = [...acknowledged].filter((key) => !there.has(key));
    expect(lost).toEqual([]);
    expect(await store.verify("all")).toMatchObject({ damaged: [], recounted_n: 0, checked_n: there.size });
    await store.close();
  }
  expect(kills_n).toBeGreaterThan(3);
}, 90_000);

it("a book open in a living process is refused to another, and given to it when that was killed", async () => {
  const path = join(folder, "shared.sillwood");
  const child = startChild("append-child.ts", [path, "1"]);
  const ended = linesOf(child, (line) => line === "open" && opened());
  let opened: () => void = () => undefined;
  await new Promise<void>((resolve) => {
    opened = resolve;
  });
  await expect(openSqlite({ path })).rejects.toMatchObject({
    fault: "in use",
    message: expect.stringContaining("the child"),
  });
  child.kill("SIGKILL");
  await ended;
  await (await openSqlite({ path })).close();
}, 30_000);
