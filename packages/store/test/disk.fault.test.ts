import {
  chmodSync,
  copyFileSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  truncateSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { digestOf, readersFrom, refKey } from "@sillwood/bench/book";
import Database from "better-sqlite3";
import { afterAll, describe, expect, it } from "vitest";
import { seeded, someEntries, testKinds, writer } from "../../bench/test/entry-maker.ts";
import type { EntryStore } from "../src/entry-store.ts";
import { openSqlite } from "../src/sqlite/index.ts";
import { linesOf, startChild } from "./child.ts";

const folder = mkdtempSync(join(tmpdir(), "sillwood-disk-"));
afterAll(() => rmSync(folder, { recursive: true }));
const readersOf = readersFrom(testKinds);
const HOUR_ms = 3_600_000;

async function digestsHold(store: EntryStore): Promise<number> {
  let n = 0;
  for (const [bucket, digest] of Object.entries(await store.summary(readersOf))) {
    expect(digestOf(await store.refs(bucket, readersOf))).toEqual(digest);
    n += digest.n;
  }
  return n;
}

describe("torn log", () => {
  it("a log cut or spoilt anywhere leaves an intact beginning of what was written", async () => {
    const path = join(folder, "torn.sillwood");
    const store = await openSqlite({ path });
    const entries = someEntries(1, 40);
    for (const entry of entries) await store.append({ entries: [entry], redacted: [] });
    const random = seeded(2);
    const log = readFileSync(`${path}-wal`);
    const lengths = new Set<number>();
    for (let trial = 0; trial < 40; trial++) {
      const copy = join(folder, `torn-${trial}.sillwood`);
      copyFileSync(path, copy);
      const torn = Buffer.from(log.subarray(0, Math.floor(random() * (log.length + 1))));
      const spoilt = trial % 2 === 1 && torn.length > 0 ? Math.floor(random() * torn.length) : undefined;
      if (spoilt !== undefined) torn[spoilt] = (torn[spoilt] as number) ^ 0x10;
      writeFileSync(`${copy}-wal`, torn);
      // Cut so early that not even the tables are there, the book is new; all else is a beginning.
      const again = await openSqlite({ path: copy, now_ms: () => Date.now() + HOUR_ms });
      const texts: string[] = [];
      for await (const chunk of again.texts()) texts.push(...chunk);
      expect(texts).toEqual(entries.slice(0, texts.length).map(({ text }) => text));
      expect(await digestsHold(again)).toBe(texts.length);
      lengths.add(texts.length);
      await again.close();
    }
    expect(lengths.size).toBeGreaterThan(10);
    await store.close();
  }, 60_000);
});

describe("full disk", () => {
  it("says so, keeps all that was acknowledged, and goes on when there is room", async () => {
    const path = join(folder, "full.sillwood");
    const small = await openSqlite({ path, maxPage_n: 60 });
    const entries = someEntries(3, 2000);
    let kept_n = 0;
    const refusal = await (async () => {
      for (; kept_n < entries.length; kept_n += 10)
        await small.append({ entries: entries.slice(kept_n, kept_n + 10), redacted: [] });
    })().catch((error) => error);
    expect(refusal).toMatchObject({ fault: "full" });
    expect(kept_n).toBeGreaterThan(10);
    expect(await small.count_n()).toBe(kept_n);
    expect(await digestsHold(small)).toBe(kept_n);
    await small.close();
    const roomy = await openSqlite({ path });
    expect((await roomy.append({ entries: entries.slice(0, kept_n + 50), redacted: [] })).added_n).toBe(50);
    expect((await roomy.verify("all")).damaged).toEqual([]);
    await roomy.close();
  });
});

describe("locks", () => {
  it("waits for another program's transaction, then says that the book is busy", async () => {
    const path = join(folder, "busy.sillwood");
    const store = await openSqlite({ path });
    const other = new Database(path);
    other.exec("begin immediate");
    await expect(store.append({ entries: someEntries(4, 1), redacted: [] })).rejects.toMatchObject({
      fault: "busy",
    });
    other.exec("rollback");
    other.close();
    expect((await store.append({ entries: someEntries(4, 1), redacted: [] })).added_n).toBe(1);
    await store.close();
  }, 20_000);

  it("two openers of one process: the second is told", async () => {
    const path = join(folder, "two.sillwood");
    const store = await openSqlite({ path, label: "first opener" });
    await expect(openSqlite({ path })).rejects.toMatchObject({
      fault: "in use",
      message: expect.stringContaining("first opener"),
    });
    await store.close();
    await (await openSqlite({ path })).close();
  });

  it.each([
    ["fresh beat of another machine", 0, "in use"],
    ["clock set back by less than the beat lasts", 30_000, "in use"],
    ["clock set back by a day", 24 * HOUR_ms, "opens"],
    ["another machine silent for an hour", -HOUR_ms, "opens"],
  ])("%s: %d ms away, %s", async (_name, away_ms, expected) => {
    const path = join(folder, `clock${away_ms}.sillwood`);
    const now_ms = 1_790_000_000_000;
    await (await openSqlite({ path })).close();
    const db = new Database(path);
    const book = db.prepare("select book from meta").pluck().get();
    db.prepare("insert into writer values (?, 'x', 'a server elsewhere', 'elsewhere.invalid', 1, ?)").run(
      book,
      now_ms + away_ms,
    );
    db.close();
    const opening = openSqlite({ path, now_ms: () => now_ms });
    if (expected === "in use") await expect(opening).rejects.toMatchObject({ fault: "in use" });
    else await (await opening).close();
  });

  it("a writer that was taken over can't append any more", async () => {
    const path = join(folder, "over.sillwood");
    const store = await openSqlite({ path });
    const db = new Database(path);
    db.exec("update writer set holder = 'somebody else'");
    db.close();
    await expect(store.append({ entries: someEntries(5, 1), redacted: [] })).rejects.toMatchObject({
      fault: "taken over",
    });
    expect(await store.count_n()).toBe(0);
    await store.close();
  });
});

describe("places where a book can't be", () => {
  it("a folder that may not be written is named as such", async () => {
    const locked = join(folder, "locked");
    mkdirSync(locked);
    chmodSync(folder, 0o755);
    chmodSync(locked, 0o555);
    // The superuser may write anywhere, so the attempt is made as somebody else.
    const as = process.getuid?.() === 0 ? { uid: 65534, gid: 65534 } : undefined;
    const lines: string[] = [];
    const { errors } = await linesOf(
      startChild("open-child.ts", [join(locked, "book.sillwood")], as),
      (line) => lines.push(line),
    );
    expect(errors).toBe("");
    expect(lines).toEqual(["read-only"]);
    expect(existsSync(join(locked, "book.sillwood"))).toBe(false);
    chmodSync(locked, 0o755);
  });

  it.each([
    ["an empty file", "", undefined],
    ["a picture", "\u0089PNG and no database at all ".repeat(50), "damaged"],
  ])("%s", async (name, content, fault) => {
    const path = join(folder, `${name}.sillwood`);
    writeFileSync(path, content);
    if (fault) await expect(openSqlite({ path })).rejects.toMatchObject({ fault });
    else await (await openSqlite({ path })).close();
  });

  it("a book cut in half is refused, not read", async () => {
    const path = join(folder, "half.sillwood");
    const store = await openSqlite({ path });
    await store.append({ entries: someEntries(6, 400), redacted: [] });
    await store.close();
    truncateSync(path, readFileSync(path).length / 2);
    await expect(openSqlite({ path })).rejects.toMatchObject({ fault: "damaged" });
  });

  it("a page overwritten while the book was closed is found by verification, and after a crash before the start", async () => {
    const path = join(folder, "overwritten.sillwood");
    const store = await openSqlite({ path });
    await store.append({ entries: someEntries(6, 400), redacted: [] });
    await store.close();
    const bytes = readFileSync(path);
    bytes.fill(0x55, bytes.length - 3 * 4096, bytes.length - 2 * 4096);
    writeFileSync(path, bytes);
    const opened = await openSqlite({ path });
    await expect(opened.verify("next")).rejects.toMatchObject({ fault: "damaged" });
    await opened.close();
    writeFileSync(`${path}-wal`, "");
    await expect(openSqlite({ path })).rejects.toMatchObject({ fault: "damaged" });
  });
});

describe("redaction", () => {
  it("leaves no trace of the words in the file, nor in its log", async () => {
    const path = join(folder, "redacted.sillwood");
    const store = await openSqlite({ path });
    const { write } = writer(7);
    const secret = write("test.noted", { text: "lives at Sample Street 7" });
    await store.append({ entries: [...someEntries(8, 30), secret], redacted: [] });
    const bytesHold = () =>
      [path, `${path}-wal`].some((file) => existsSync(file) && readFileSync(file).includes("Sample Street"));
    expect(bytesHold()).toBe(true);
    const redaction = write("book.redacted", { id: secret.entry.id, hash: secret.hash });
    await store.append({ entries: [redaction], redacted: [] });
    expect(bytesHold()).toBe(false);
    const named: string[] = [];
    for await (const chunk of store.all()) named.push(...chunk.map(refKey));
    expect(named).toContain(`${secret.entry.id}/${secret.hash}`);
    await store.close();
  });
});
