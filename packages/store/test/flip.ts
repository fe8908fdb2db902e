import type { EntryRef } from "@sillwood/bench/book";
import Database from "better-sqlite3";

/** Changes one body in a book's file, past all triggers, as a failing disk would. */
export function flipInFile(path: string, { id, hash }: EntryRef): void {
  const db = new Database(path);
  const guard = db
    .prepare("select sql from sqlite_master where name = 'entry_never_changed'")
    .pluck()
    .get() as string;
  db.exec("drop trigger entry_never_changed");
  const changed = db
    .prepare(
      `update entry set json = replace(json, 'Europe/Berlin', 'Europe/Verlin') where id = ? and hash = ?`,
    )
    .run(id, hash);
  db.exec(guard);
  db.close();
  if (changed.changes !== 1) throw new Error("nothing was flipped");
}
