import type { Kysely } from "kysely";

/** Keys of paired devices, and what a device may not write by itself, set aside for the grower. */
export async function addDevices({ schema }: Kysely<unknown>): Promise<void> {
  await schema
    .createTable("device_key")
    .addColumn("book", "text", (c) => c.notNull())
    .addColumn("hash", "text", (c) => c.notNull())
    .addColumn("device", "text", (c) => c.notNull())
    .addColumn("person", "text", (c) => c.notNull())
    .addColumn("role", "text", (c) => c.notNull())
    .addColumn("name", "text", (c) => c.notNull())
    .addColumn("made_ms", "bigint", (c) => c.notNull())
    .addColumn("seen_ms", "bigint", (c) => c.notNull())
    .addColumn("closed_ms", "bigint")
    .addPrimaryKeyConstraint("device_key_key", ["book", "hash"])
    .execute();
  await schema
    .createTable("aside")
    .addColumn("book", "text", (c) => c.notNull())
    .addColumn("id", "text", (c) => c.notNull())
    .addColumn("hash", "text", (c) => c.notNull())
    .addColumn("device", "text", (c) => c.notNull())
    .addColumn("why", "text", (c) => c.notNull())
    .addColumn("came_ms", "bigint", (c) => c.notNull())
    .addColumn("json", "text")
    .addPrimaryKeyConstraint("aside_key", ["book", "id", "hash"])
    .execute();
}
