import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { readersFrom, syncOnce } from "@sillwood/bench/book";
import { afterAll, expect, it } from "vitest";
import { seeded, someEntries, testKinds } from "../../bench/test/entry-maker.ts";
import { memoryStore } from "../src/memory/index.ts";
import { openSqlite } from "../src/sqlite/index.ts";
import { directTransport } from "./direct-transport.ts";

const folder = mkdtempSync(join(tmpdir(), "sillwood-flip-"));
afterAll(() => rmSync(folder, { recursive: true }));

it("a byte flipped on the disk is found by the turns of verification and healed by the next sync", async () => {
  const path = join(folder, "book.sillwood");
  const entries = someEntries(1, 200);
  const server = memoryStore();
  await server.append({ entries, redacted: [] });
  const store = await openSqlite({ path });
  await store.append({ entries, redacted: [] });
  await store.close();

  const random = seeded(9);
  for (let trial = 0; trial < 12; trial++) {
    const victim = entries[Math.floor(random() * entries.length)] as (typeof entries)[0];
    flipByte(path, victim.text, random);
    const opened = await openSqlite({ path });
    expect((await opened.verify("all")).damaged).toEqual([{ id: victim.entry.id, hash: victim.hash }]);
    const report = await syncOnce({
      store: opened,
      transport: directTransport(server, testKinds),
      kinds: testKinds,
      now_ms: () => 0,
    });
    expect(report).toMatchObject({ fetched_n: 0, sent_n: 0, missing: [], unnamed: [] });
    expect(await opened.verify("all")).toMatchObject({ damaged: [], recounted_n: 0 });
    expect(await opened.summary(readersFrom(testKinds))).toEqual(
      await server.summary(readersFrom(testKinds)),
    );
    await opened.close();
  }
});

/** Changes one bit somewhere in the stored text of an entry, on the disk. */
function flipByte(path: string, text: string, random: () => number): void {
  const bytes = readFileSync(path);
  const at = bytes.indexOf(text);
  if (at < 0) throw new Error("the text does not stand in one piece in the file");
  const place = at + Math.floor(random() * Buffer.byteLength(text));
  bytes[place] = (bytes[place] as number) ^ (1 << Math.floor(random() * 7));
  writeFileSync(path, bytes);
}
