import { openSqlite } from "@sillwood/store/sqlite";
import { type BigBookSize, bigBook } from "./big-book.ts";

/** Writes a big book to disk as a book is: its entries through the store, its series as files. */
export async function keepBigBook(path: string, size: BigBookSize): Promise<void> {
  const book = bigBook(size);
  const store = await openSqlite({ path });
  try {
    for (const { file, text } of book.series) await store.files.put(file, "text/csv", inOne(text));
    for (const entries of book.portions()) await store.append({ entries, redacted: [] });
  } finally {
    await store.close();
  }
}

async function* inOne(text: string): AsyncGenerator<Uint8Array> {
  yield new TextEncoder().encode(text);
}
