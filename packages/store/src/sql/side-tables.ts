import type { Json } from "@sillwood/bench/book";
import { type Kysely, sql } from "kysely";
import type { CacheStore, PersonCards } from "../entry-store.ts";
import type { Ask } from "./one-at-a-time.ts";
import type { Tables } from "./tables.ts";

export const sqlCache = (db: Kysely<Tables>, book: string, ask: Ask): CacheStore => ({
  get: (key) =>
    ask(async () => {
      const row = await db
        .selectFrom("cache")
        .select("value")
        .where("book", "=", book)
        .where("key", "=", key)
        .executeTakeFirst();
      return row?.value;
    }),
  put: (key, value) =>
    ask(async () => {
      const row = { book, key, value };
      await db
        .insertInto("cache")
        .values(row)
        .onConflict((c) => c.columns(["book", "key"]).doUpdateSet({ value }))
        .execute();
    }),
  drop: (prefix) =>
    ask(async () => {
      // substr, not LIKE: a key may hold % and _.
      await db
        .deleteFrom("cache")
        .where("book", "=", book)
        .where(sql<boolean>`substr(key, 1, ${sql.lit(prefix.length)}) = ${prefix}`)
        .execute();
    }),
});

export const sqlPeople = (db: Kysely<Tables>, book: string, ask: Ask): PersonCards => ({
  get: (id) =>
    ask(async () => {
      const row = await db
        .selectFrom("person_card")
        .select("card")
        .where("book", "=", book)
        .where("id", "=", id)
        .executeTakeFirst();
      return row && (JSON.parse(row.card) as Json);
    }),
  put: (id, card) =>
    ask(async () => {
      const row = { book, id, card: JSON.stringify(card) };
      await db
        .insertInto("person_card")
        .values(row)
        .onConflict((c) => c.columns(["book", "id"]).doUpdateSet({ card: row.card }))
        .execute();
    }),
  erase: (id) =>
    ask(async () => {
      await db.deleteFrom("person_card").where("book", "=", book).where("id", "=", id).execute();
    }),
  ids: () =>
    ask(async () => {
      const rows = await db
        .selectFrom("person_card")
        .select("id")
        .where("book", "=", book)
        .orderBy("id")
        .execute();
      return rows.map(({ id }) => id);
    }),
});
