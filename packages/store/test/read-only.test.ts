import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { readersFrom } from "@sillwood/bench/book";
import { afterAll, expect, it } from "vitest";
import { someEntries, testKinds } from "../../bench/test/entry-maker.ts";
import { readSqlite } from "../src/read-only/index.ts";
import { openSqlite } from "../src/sqlite/index.ts";
import { flipInFile } from "./flip.ts";

const folder = mkdtempSync(join(tmpdir(), "sillwood-read-"));
afterAll(() => rmSync(folder, { recursive: true }));

it("reads beside the writer, sees what it commits, and writes nothing", async () => {
  const path = join(folder, "book.sillwood");
  const writing = await openSqlite({ path, book: "main" });
  const entries = someEntries(1, 30);
  await writing.append({ entries: entries.slice(0, 20), redacted: [] });
  const reading = await readSqlite(path);
  expect(await reading.count_n()).toBe(20);
  await writing.append({ entries: entries.slice(20), redacted: [] });
  const texts: string[] = [];
  for await (const chunk of reading.texts()) texts.push(...chunk);
  expect(texts).toEqual(entries.map(({ text }) => text));
  expect(await reading.summary(readersFrom(testKinds))).toEqual(
    await writing.summary(readersFrom(testKinds)),
  );
  const sneaky = reading as unknown as typeof writing;
  await expect(sneaky.append({ entries, redacted: [] })).rejects.toMatchObject({ fault: "read-only" });
  await expect(sneaky.cache.put("a", "b")).rejects.toMatchObject({ fault: "read-only" });
  await reading.close();
  await writing.close();
});

it("leaves out what the writer knows as damaged", async () => {
  const path = join(folder, "damaged.sillwood");
  const writing = await openSqlite({ path });
  const [first, second] = someEntries(2, 2) as [
    ReturnType<typeof someEntries>[0],
    ReturnType<typeof someEntries>[0],
  ];
  await writing.append({ entries: [first, second], redacted: [] });
  flipInFile(path, { id: first.entry.id, hash: first.hash });
  await writing.verify("all");
  const reading = await readSqlite(path);
  const texts: string[] = [];
  for await (const chunk of reading.texts()) texts.push(...chunk);
  expect(texts).toEqual([second.text]);
  await reading.close();
  await writing.close();
});

it.each(["nothing.sillwood"])("says when there is no book at %s", async (name) => {
  await expect(readSqlite(join(folder, name))).rejects.toThrow(/there is no book/);
});
