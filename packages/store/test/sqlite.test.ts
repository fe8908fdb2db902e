import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Database from "better-sqlite3";
import { afterAll, describe, expect, it } from "vitest";
import { someEntries } from "../../bench/test/entry-maker.ts";
import { storeContract } from "../src/contract.ts";
import type { EntryStore } from "../src/entry-store.ts";
import { assertDurable, openChecked, openSqlite, refuseOldSqlite } from "../src/sqlite/index.ts";
import { flipInFile } from "./flip.ts";

const folder = mkdtempSync(join(tmpdir(), "sillwood-sqlite-"));
afterAll(() => rmSync(folder, { recursive: true }));
let books_n = 0;
const newPath = () => join(folder, `book-${books_n++}.sillwood`);
const paths = new WeakMap<EntryStore, string>();

storeContract({
  name: "SQLite",
  async open() {
    const path = newPath();
    const store = await openSqlite({ path, book: "main" });
    paths.set(store, path);
    return store;
  },
  damage: async (store, ref) => flipInFile(paths.get(store) as string, ref),
});

describe("SQLite", () => {
  it("syncs every commit, also of a book that is opened again", async () => {
    const path = newPath();
    await (await openSqlite({ path })).close();
    const db = openChecked(path);
    assertDurable(db);
    expect(db.pragma("synchronous", { simple: true })).toBe(2);
    expect(db.pragma("journal_mode", { simple: true })).toBe("wal");
    expect(db.pragma("foreign_keys", { simple: true })).toBe(1);
    expect(db.pragma("busy_timeout", { simple: true })).toBe(5000);
    expect(db.pragma("trusted_schema", { simple: true })).toBe(0);
    db.pragma("synchronous = NORMAL");
    expect(() => assertDurable(db)).toThrow(/synchronous is 1/);
    db.close();
  });

  it.each(["3.51.2", "3.50.9", "2.99.99", "3.7.17"])("refuses SQLite %s", (version) => {
    expect(() => refuseOldSqlite(version)).toThrow(expect.objectContaining({ fault: "old sqlite" }));
  });

  it.each(["3.51.3", "3.53.2", "4.0.0", "3.100.0"])("takes SQLite %s", (version) => {
    expect(() => refuseOldSqlite(version)).not.toThrow();
  });

  it("lets nobody change or delete an entry", async () => {
    const path = newPath();
    const store = await openSqlite({ path });
    await store.append({ entries: someEntries(1, 3), redacted: [] });
    const db = new Database(path);
    for (const statement of [
      "delete from entry",
      "update entry set json = null",
      "update entry set json = json || ' '",
      "update entry set at_ms = 0",
      "insert or replace into entry select book, id, hash, device, month, kind, v, at_ms + 1, json from entry limit 1",
    ]) {
      // REPLACE deletes without asking delete triggers unless told to; the store never uses it, and a stranger's tool must fail.
      db.pragma("recursive_triggers = ON");
      expect(() => db.exec(statement), statement).toThrow(/entries are never/);
    }
    db.close();
    expect(await store.count_n()).toBe(3);
    await store.close();
  });

  it("keeps its name and refuses another", async () => {
    const path = newPath();
    await (await openSqlite({ path, book: "bench" })).close();
    const again = await openSqlite({ path });
    expect(again.book).toBe("bench");
    await again.close();
    await expect(openSqlite({ path, book: "other" })).rejects.toMatchObject({ fault: "not a book" });
  });

  it("refuses the database of another program, and a file that is none", async () => {
    const path = newPath();
    const other = new Database(path);
    other.exec("create table thing (x)");
    other.close();
    await expect(openSqlite({ path })).rejects.toMatchObject({ fault: "not a book" });
  });

  it("refuses a book that a newer version of this program has changed", async () => {
    const path = newPath();
    await (await openSqlite({ path })).close();
    const db = new Database(path);
    db.exec(
      "insert into kysely_migration (name, timestamp) values ('999-later', '2030-01-01T00:00:00.000Z')",
    );
    db.close();
    await expect(openSqlite({ path })).rejects.toMatchObject({ fault: "newer" });
  });

  it("a backup opens on its own while the book stays open", async () => {
    const path = newPath();
    const store = await openSqlite({ path });
    await store.append({ entries: someEntries(2, 25), redacted: [] });
    const report = await store.backup(join(folder, "backup"));
    const copy = await openSqlite({ path: report.paths.find((at) => at.endsWith(".sqlite")) as string });
    expect(await copy.count_n()).toBe(25);
    expect(await copy.verify("all")).toMatchObject({ checked_n: 25, damaged: [], recounted_n: 0 });
    await copy.close();
    await store.close();
  });

  it("a digest that went wrong is counted anew", async () => {
    const path = newPath();
    const store = await openSqlite({ path });
    await store.append({ entries: someEntries(3, 25), redacted: [] });
    const db = new Database(path);
    db.exec("update digest set h = '0123456789abcdef', n = n + 1 where kind = 'test.noted'");
    db.close();
    expect((await store.verify("all")).recounted_n).toBe(1);
    expect((await store.verify("all")).recounted_n).toBe(0);
    expect(await store.count_n()).toBe(25);
    await store.close();
  });
});
