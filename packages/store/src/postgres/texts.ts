import { type Kysely, sql } from "kysely";
import type { Tables } from "../sql/tables.ts";

/** Canonical texts of all entries that have a body, by pages of the key. */
export async function* postgresTexts(db: Kysely<Tables>, book: string): AsyncGenerator<string[]> {
  let after = { id: "", hash: "" };
  for (;;) {
    const { rows } = await sql<{ id: string; hash: string; json: string }>`
      select id, hash, json from entry e where book = ${book} and json is not null and (id, hash) > (${after.id}, ${after.hash})
      and not exists (select 1 from damage d where d.book = e.book and d.id = e.id and d.hash = e.hash)
      order by id, hash limit 5000`.execute(db);
    const last = rows.at(-1);
    if (!last) return;
    yield rows.map(({ json }) => json);
    after = last;
  }
}
