import { type Kysely, sql } from "kysely";
import type { Engine } from "./index.ts";

/** The first shape of a book on disk. A later migration may add, never rewrite entries. */
export async function makeBook(db: Kysely<unknown>, engine: Engine): Promise<void> {
  const { schema } = db;
  await schema
    .createTable("meta")
    .addColumn("book", "text", (c) => c.primaryKey())
    .addColumn("made_ms", "bigint", (c) => c.notNull())
    .execute();
  await schema
    .createTable("entry")
    .addColumn("book", "text", (c) => c.notNull())
    .addColumn("id", "text", (c) => c.notNull())
    .addColumn("hash", "text", (c) => c.notNull())
    .addColumn("device", "text", (c) => c.notNull())
    .addColumn("month", "text", (c) => c.notNull())
    .addColumn("kind", "text", (c) => c.notNull())
    .addColumn("v", "integer", (c) => c.notNull())
    .addColumn("at_ms", "bigint", (c) => c.notNull())
    .addColumn("json", "text")
    .addPrimaryKeyConstraint("entry_key", ["book", "id", "hash"])
    .execute();
  await schema
    .createTable("digest")
    .addColumn("book", "text", (c) => c.notNull())
    .addColumn("device", "text", (c) => c.notNull())
    .addColumn("month", "text", (c) => c.notNull())
    .addColumn("kind", "text", (c) => c.notNull())
    .addColumn("n", "bigint", (c) => c.notNull())
    .addColumn("h", "text", (c) => c.notNull())
    .addPrimaryKeyConstraint("digest_key", ["book", "device", "month", "kind"])
    .execute();
  for (const table of ["redaction", "damage"])
    await schema
      .createTable(table)
      .addColumn("book", "text", (c) => c.notNull())
      .addColumn("id", "text", (c) => c.notNull())
      .addColumn("hash", "text", (c) => c.notNull())
      .addPrimaryKeyConstraint(`${table}_key`, ["book", "id", "hash"])
      .execute();
  await makeSideTables(db, engine);
  for (const statement of engine === "sqlite" ? SQLITE_GUARD : POSTGRES_GUARD)
    await sql.raw(statement).execute(db);
}

async function makeSideTables({ schema }: Kysely<unknown>, engine: Engine): Promise<void> {
  await schema
    .createTable("file")
    .addColumn("book", "text", (c) => c.notNull())
    .addColumn("hash", "text", (c) => c.notNull())
    .addColumn("type", "text", (c) => c.notNull())
    .addColumn("size_B", "bigint", (c) => c.notNull())
    .addPrimaryKeyConstraint("file_key", ["book", "hash"])
    .execute();
  await schema
    .createTable("file_piece")
    .addColumn("book", "text", (c) => c.notNull())
    .addColumn("hash", "text", (c) => c.notNull())
    .addColumn("n", "integer", (c) => c.notNull())
    .addColumn("bytes", engine === "sqlite" ? "blob" : "bytea", (c) => c.notNull())
    .addPrimaryKeyConstraint("file_piece_key", ["book", "hash", "n"])
    .execute();
  await schema
    .createTable("cache")
    .addColumn("book", "text", (c) => c.notNull())
    .addColumn("key", "text", (c) => c.notNull())
    .addColumn("value", "text", (c) => c.notNull())
    .addPrimaryKeyConstraint("cache_key", ["book", "key"])
    .execute();
  await schema
    .createTable("person_card")
    .addColumn("book", "text", (c) => c.notNull())
    .addColumn("id", "text", (c) => c.notNull())
    .addColumn("card", "text", (c) => c.notNull())
    .addPrimaryKeyConstraint("person_card_key", ["book", "id"])
    .execute();
  await schema
    .createTable("writer")
    .addColumn("book", "text", (c) => c.primaryKey())
    .addColumn("holder", "text", (c) => c.notNull())
    .addColumn("label", "text", (c) => c.notNull())
    .addColumn("host", "text", (c) => c.notNull())
    .addColumn("pid", "integer", (c) => c.notNull())
    .addColumn("beat_ms", "bigint", (c) => c.notNull())
    .execute();
}

// The one UPDATE that passes sets a body: to nothing where a redaction asks for it, or anew where the old one is known as damaged.
const SQLITE_GUARD = [
  `create trigger entry_never_deleted before delete on entry
   begin select raise(abort, 'entries are never deleted'); end`,
  `create trigger entry_never_changed before update on entry
   when not (
     new.book = old.book and new.id = old.id and new.hash = old.hash and new.device = old.device
     and new.month = old.month and new.kind = old.kind and new.v = old.v and new.at_ms = old.at_ms
     and ((new.json is null and exists (select 1 from redaction r where r.book = old.book and r.id = old.id and r.hash = old.hash))
       or exists (select 1 from damage d where d.book = old.book and d.id = old.id and d.hash = old.hash)))
   begin select raise(abort, 'entries are never changed'); end`,
];

const POSTGRES_GUARD = [
  `create function entry_guard() returns trigger language plpgsql as $$
   begin
     if tg_op = 'DELETE' or tg_op = 'TRUNCATE' then raise exception 'entries are never deleted'; end if;
     if new.book = old.book and new.id = old.id and new.hash = old.hash and new.device = old.device
        and new.month = old.month and new.kind = old.kind and new.v = old.v and new.at_ms = old.at_ms
        and ((new.json is null and exists (select 1 from redaction r where r.book = old.book and r.id = old.id and r.hash = old.hash))
          or exists (select 1 from damage d where d.book = old.book and d.id = old.id and d.hash = old.hash))
     then return new; end if;
     raise exception 'entries are never changed';
   end $$`,
  "create trigger entry_guarded before update or delete on entry for each row execute function entry_guard()",
  "create trigger entry_not_emptied before truncate on entry for each statement execute function entry_guard()",
];
