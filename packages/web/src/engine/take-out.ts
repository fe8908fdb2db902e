import { endLine, entryLine, fileLine, headLine, type StoredEntry } from "@sillwood/bench/book";
import type { BookDb } from "../device/book-db.ts";

/** A whole book as it leaves the device: its lines, and the files that they name. */
export interface TakenOut {
  readonly lines: Blob;
  readonly files: readonly { readonly sha256: string; readonly type: string; readonly bytes: ArrayBuffer }[];
  readonly entries_n: number;
}

const BATCH_n = 2000;

/** The same lines that every other way out of the house writes. Read in batches, so that a large book fits a phone. */
export async function takeOut(db: BookDb, book: string): Promise<TakenOut> {
  const parts: BlobPart[] = [`${headLine(book)}\n`];
  let entries_n = 0;
  let redacted_n = 0;
  let from: IDBKeyRange | null = null;
  for (;;) {
    const batch = await db.getAll("entries", from, BATCH_n);
    const last = batch.at(-1);
    if (!last) break;
    const lines = batch.map(({ id, hash, device, kind, text }) => {
      const stored = (
        text === undefined ? { id, hash, device, kind, redacted: true } : { id, hash, text }
      ) as StoredEntry;
      "text" in stored ? entries_n++ : redacted_n++;
      return entryLine(stored);
    });
    parts.push(`${lines.join("\n")}\n`);
    from = IDBKeyRange.lowerBound([last.id, last.hash], true);
  }
  const files = await db.getAll("files");
  for (const { sha256, type, bytes } of files)
    parts.push(`${fileLine({ file: sha256, size_B: bytes.byteLength, type })}\n`);
  parts.push(`${endLine({ entries_n, redacted_n, files_n: files.length })}\n`);
  return {
    lines: new Blob(parts, { type: "application/x-ndjson" }),
    files: files.map(({ sha256, type, bytes }) => ({ sha256, type, bytes })),
    entries_n: entries_n + redacted_n,
  };
}
