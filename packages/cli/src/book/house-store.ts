import {
  type AcceptedEntry,
  type AppendBatch,
  type AppendResult,
  type EntryRef,
  httpTransport,
  SYNC_BATCH_n,
} from "@sillwood/bench/book";
import { DataError, dataError } from "../errors.ts";

/** What writing asks of a store: the book's own, or the house that has it open. */
export interface WriteStore {
  append(batch: AppendBatch): Promise<Pick<AppendResult, "added_n">>;
  putFile(hash: string, type: string, bytes: Uint8Array): Promise<void>;
  close(): Promise<void>;
}

/** Writes through the running house on this machine, by the same calls as a phone. */
export function houseStore(address: string, book: string): WriteStore {
  const base = `${address}/books/${encodeURIComponent(book)}`;
  const transport = httpTransport(fetch, base);
  return {
    async append({ entries }) {
      let added_n = 0;
      for (let i = 0; i < entries.length; i += SYNC_BATCH_n)
        added_n += await send(entries.slice(i, i + SYNC_BATCH_n));
      return { added_n };
    },
    async putFile(hash, type, bytes) {
      const answer = await fetch(`${base}/files/${hash}`, {
        method: "PUT",
        headers: { "content-type": type },
        body: new Blob([Uint8Array.from(bytes)]),
      });
      if (!answer.ok) throw dataError("file", `the open house did not take the file: ${answer.status}`);
    },
    close: async () => undefined,
  };

  async function send(entries: readonly AcceptedEntry[]): Promise<number> {
    const { stored, refused } = await transport.entries(
      entries.map(({ text }) => text),
      [],
    );
    if (refused.length > 0) throw new DataError(refused.flatMap(({ problems }) => problems));
    const there = new Set(stored.map(({ id }: EntryRef) => id));
    const lost = entries.find(({ entry }) => !there.has(entry.id));
    if (lost) throw dataError("book", `the open house did not say that it kept ${lost.entry.kind}`);
    return entries.length;
  }
}
