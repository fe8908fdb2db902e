import type { EntryId } from "@sillwood/bench/book";
import type { Kysely } from "kysely";
import type { AsideShelf, AsideWhy, DeviceKey, DeviceKeys } from "../entry-store.ts";
import type { Ask } from "./one-at-a-time.ts";
import type { Tables } from "./tables.ts";

export function sqlKeys(db: Kysely<Tables>, book: string, ask: Ask): DeviceKeys {
  const keys = () => db.selectFrom("device_key").selectAll().where("book", "=", book);
  return {
    add: ({ closed_ms = null, ...key }) =>
      ask(async () => {
        await db
          .insertInto("device_key")
          .values({ book, ...key, closed_ms })
          .execute();
      }),
    find: (hash) =>
      ask(async () => {
        const row = await keys().where("hash", "=", hash).executeTakeFirst();
        return row && keyOf(row);
      }),
    list: () =>
      ask(async () =>
        (await keys().orderBy("device").orderBy("made_ms").orderBy("hash").execute()).map(keyOf),
      ),
    close: (device, at_ms) =>
      ask(async () => {
        const { numUpdatedRows } = await db
          .updateTable("device_key")
          .set({ closed_ms: at_ms })
          .where("book", "=", book)
          .where("device", "=", device)
          .where("closed_ms", "is", null)
          .where("made_ms", "<=", at_ms)
          .executeTakeFirst();
        return Number(numUpdatedRows);
      }),
    seen: (hash, seen_ms) =>
      ask(async () => {
        await db
          .updateTable("device_key")
          .set({ seen_ms })
          .where("book", "=", book)
          .where("hash", "=", hash)
          .execute();
      }),
  };
}

interface KeyRow {
  readonly hash: string;
  readonly device: string;
  readonly person: string;
  readonly role: string;
  readonly name: string;
  readonly made_ms: number | string;
  readonly seen_ms: number | string;
  readonly closed_ms: number | string | null;
}

const keyOf = ({ hash, device, person, role, name, made_ms, seen_ms, closed_ms }: KeyRow): DeviceKey => ({
  hash,
  device,
  person,
  role: role as DeviceKey["role"],
  name,
  made_ms: Number(made_ms),
  seen_ms: Number(seen_ms),
  ...(closed_ms === null ? {} : { closed_ms: Number(closed_ms) }),
});

export const sqlAside = (db: Kysely<Tables>, book: string, ask: Ask, write: Ask): AsideShelf => ({
  put: (entries) =>
    write(() =>
      db.transaction().execute(async (tx) => {
        for (const { id, hash, device, why, came_ms, text } of entries)
          await tx
            .insertInto("aside")
            .values({ book, id, hash, device, why, came_ms, json: text ?? null })
            .onConflict((c) => c.columns(["book", "id", "hash"]).doNothing())
            .execute();
      }),
    ),
  list: () =>
    ask(async () => {
      const rows = await db
        .selectFrom("aside")
        .selectAll()
        .where("book", "=", book)
        .orderBy("came_ms")
        .orderBy("id")
        .orderBy("hash")
        .execute();
      return rows.map(({ id, hash, device, why, came_ms, json }) => ({
        id: id as EntryId,
        hash,
        device,
        why: why as AsideWhy,
        came_ms: Number(came_ms),
        ...(json === null ? {} : { text: json }),
      }));
    }),
  drop: ({ id, hash }) =>
    ask(async () => {
      await db
        .updateTable("aside")
        .set({ json: null })
        .where("book", "=", book)
        .where("id", "=", id)
        .where("hash", "=", hash)
        .execute();
    }),
  clear: ({ id, hash }) =>
    ask(async () => {
      await db
        .deleteFrom("aside")
        .where("book", "=", book)
        .where("id", "=", id)
        .where("hash", "=", hash)
        .execute();
    }),
});
