import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { refKey } from "@sillwood/bench/book";
import { openSqlite } from "@sillwood/store/sqlite";
import { afterAll, expect, it } from "vitest";
import { seeded, someEntries } from "../../bench/test/entry-maker.ts";
import { linesOf, startChild } from "../../store/test/child.ts";

const folder = mkdtempSync(join(tmpdir(), "sillwood-server-kill-"));
afterAll(() => rmSync(folder, { recursive: true }));

it("a server killed at random while 500 entries are pushed loses none that it named", async () => {
  const path = join(folder, "book.sillwood");
  const random = seeded(8);
  const entries = someEntries(1, 4000);
  const named = new Set<string>();
  let next = 0;
  let kills_n = 0;
  while (named.size < 500) {
    const child = startChild("../../server/test/serve-child.ts", [path]);
    let url: (line: string) => void = () => undefined;
    const listening = new Promise<string>((resolve) => {
      url = resolve;
    });
    const ended = linesOf(child, (line) => url(line));
    const base = await listening;
    const killAfter_n = named.size + 60 + Math.floor(random() * 100);
    for (;;) {
      const { entry } = entries[next] as (typeof entries)[0];
      // The same entry is pushed again to the next server when its answer was lost.
      const answer = await push(base, entry);
      if (!answer) break;
      next++;
      for (const ref of answer.stored) named.add(refKey(ref));
      if (named.size === killAfter_n) setTimeout(() => child.kill("SIGKILL"), random() * 4);
    }
    kills_n++;
    await ended;
  }
  expect(kills_n).toBeGreaterThan(2);
  const store = await openSqlite({ path });
  const there = new Set<string>();
  for await (const chunk of store.all()) for (const ref of chunk) there.add(refKey(ref));
  expect([...named].filter((key) => !there.has(key))).toEqual([]);
  expect(await store.verify("all")).toMatchObject({ damaged: [], recounted_n: 0, checked_n: there.size });
  await store.close();
}, 90_000);

async function push(
  base: string,
  entry: unknown,
): Promise<{ stored: { id: string; hash: string }[] } | undefined> {
  try {
    const response = await fetch(`${base}/books/main/sync/entries`, {
      method: "POST",
      headers: { "content-type": "application/json" },
      body: JSON.stringify({ entries: [entry] }),
    });
    return (await response.json()) as { stored: { id: string; hash: string }[] };
  } catch {
    return undefined;
  }
}
