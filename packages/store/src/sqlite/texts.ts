import type Database from "better-sqlite3";

/** By row number, which is how the file lies on the disk; the plus keeps SQLite from going by the key and sorting each page. */
export async function* sqliteTexts(sqlite: Database.Database, book: string): AsyncGenerator<string[]> {
  const damaged = sqlite.prepare("select 1 from damage where book = ? limit 1").pluck().get(book);
  const not = damaged
    ? "and not exists (select 1 from damage d where d.book = e.book and d.id = e.id and d.hash = e.hash)"
    : "";
  const page = sqlite
    .prepare(
      `select rowid, json from entry e where rowid > ? and +book = ? and json is not null ${not} order by rowid limit 5000`,
    )
    .raw();
  let after = 0;
  for (;;) {
    const rows = page.all(after, book) as [number, string][];
    if (rows.length === 0) return;
    yield rows.map(([, json]) => json);
    after = (rows.at(-1) as [number, string])[0];
  }
}
