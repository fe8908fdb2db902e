import type { EntryRef } from "@sillwood/bench/book";
import pg from "pg";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { someEntries } from "../../bench/test/entry-maker.ts";
import { storeContract } from "../src/contract.ts";
import { openPostgres } from "../src/postgres/index.ts";
import { startPostgres } from "./embedded.ts";

let server: Awaited<ReturnType<typeof startPostgres>>;
let books_n = 0;
beforeAll(async () => {
  server = await startPostgres();
  await server.make("sillwood");
}, 120_000);
afterAll(() => server?.stop());

const open = (book = `book-${books_n++}`) => openPostgres({ url: server.url("sillwood"), book });
async function ask(statement: string, values: readonly unknown[] = []) {
  const client = new pg.Client({ connectionString: server.url("sillwood") });
  await client.connect();
  try {
    return await client.query(statement, [...values]);
  } finally {
    await client.end();
  }
}
async function flip({ id, hash }: EntryRef, book: string) {
  await ask("alter table entry disable trigger entry_guarded");
  await ask(
    `update entry set json = replace(json, 'Europe/Berlin', 'Europe/Verlin') where id = $1 and hash = $2 and book = $3`,
    [id, hash, book],
  );
  await ask("alter table entry enable trigger entry_guarded");
}

storeContract({ name: "PostgreSQL", open: () => open(), damage: (store, ref) => flip(ref, store.book) });

describe("PostgreSQL", () => {
  it("lets nobody change, delete or empty entries", async () => {
    const store = await open();
    await store.append({ entries: someEntries(1, 3), redacted: [] });
    for (const statement of [
      "delete from entry",
      "update entry set json = null",
      "update entry set at_ms = 0",
      "truncate entry",
    ])
      await expect(ask(statement), statement).rejects.toThrow(/entries are never/);
    expect(await store.count_n()).toBe(3);
    await store.close();
  });

  it("keeps the books of one database apart", async () => {
    const [one, two] = [await open(), await open()];
    await one.append({ entries: someEntries(2, 5), redacted: [] });
    expect(await two.count_n()).toBe(0);
    await two.append({ entries: someEntries(2, 5), redacted: [] });
    expect(await two.count_n()).toBe(5);
    await Promise.all([one.close(), two.close()]);
  });

  it("one writer: the second opener hears who has the book, and may have it after", async () => {
    const store = await openPostgres({ url: server.url("sillwood"), book: "shared", label: "the first" });
    await expect(open("shared")).rejects.toMatchObject({
      fault: "in use",
      message: expect.stringContaining("the first"),
    });
    await store.close();
    await (await open("shared")).close();
  });

  it("a writer that was taken over can't append any more", async () => {
    const store = await open("lost");
    await ask("update writer set holder = 'somebody else' where book = 'lost'");
    await expect(store.append({ entries: someEntries(3, 1), redacted: [] })).rejects.toMatchObject({
      fault: "taken over",
    });
    expect(await store.count_n()).toBe(0);
    await store.close();
  });

  it("refuses a server that does not sync its commits", async () => {
    await server.make("careless");
    await ask("alter database careless set synchronous_commit = off");
    await expect(openPostgres({ url: server.url("careless"), book: "main" })).rejects.toThrow(
      /synchronous_commit = off/,
    );
  });

  it("fills its book in big batches and reads all of it", async () => {
    const store = await open();
    const entries = someEntries(4, 6000);
    for (let i = 0; i < entries.length; i += 500)
      await store.append({ entries: entries.slice(i, i + 500), redacted: [] });
    let read_n = 0;
    for await (const texts of store.texts()) read_n += texts.length;
    expect(read_n).toBe(6000);
    await store.close();
  });
});
