import {
  type AcceptedEntry,
  type AcceptedKinds,
  accept,
  differingBuckets,
  type EntryRef,
  type Refusal,
  readersFrom,
  type SyncTransport,
} from "@sillwood/bench/book";
import type { EntryStore } from "../src/entry-store.ts";

/** The three calls without a network between: what a server does, in the fewest words. */
export function directTransport(server: EntryStore, kinds: AcceptedKinds, now_ms = () => 0): SyncTransport {
  const readersOf = readersFrom(kinds);
  return {
    async summary(mine) {
      const differing: Record<string, readonly EntryRef[]> = {};
      for (const bucket of differingBuckets(mine, await server.summary(readersOf)))
        differing[bucket] = await server.refs(bucket, readersOf);
      return { now_ms: now_ms(), differing };
    },
    async entries(texts, redacted) {
      const good: AcceptedEntry[] = [];
      const refused: Refusal[] = [];
      for (const text of texts) {
        const result = accept(JSON.parse(text), kinds);
        if (result.ok) good.push(result);
        else refused.push({ id: JSON.parse(text).id, hash: "", problems: result.problems });
      }
      const { stored } = await server.append({ entries: good, redacted });
      return { stored, refused };
    },
    async fetch(refs) {
      const entries: unknown[] = [];
      const redacted = [];
      for (const entry of await server.get(refs))
        "text" in entry ? entries.push(JSON.parse(entry.text)) : redacted.push(entry);
      return { entries, redacted };
    },
  };
}
