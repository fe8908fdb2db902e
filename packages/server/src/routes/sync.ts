import {
  type AcceptedEntry,
  accept,
  canonical,
  differingBuckets,
  type EntryId,
  type EntryRef,
  type Json,
  type RedactedEntry,
  type Refusal,
  readersFrom,
  SYNC_BATCH_B,
  sha256Hex,
} from "@sillwood/bench/book";
import type { Hono } from "hono";
import { bookAt, type House } from "../house.ts";
import { readJson } from "../request-body.ts";
import { entriesRequest, fetchRequest, summaryRequest } from "./sync-schemas.ts";

/** 500 entries of the largest size, with their wrapping. */
const ENTRIES_MAX_B = 36 * 1024 * 1024;
const NAMES_MAX_B = 4 * 1024 * 1024;

/** The three calls of sync; docs/sync.md tells why there are no more. */
export function syncRoutes(app: Hono, house: House): void {
  const readersOf = readersFrom(house.kinds);

  app.post("/books/:book/sync/summary", async (c) => {
    const store = bookAt(house, c);
    const { summary } = await readJson(c, summaryRequest, NAMES_MAX_B);
    const differing: Record<string, readonly EntryRef[]> = {};
    for (const bucket of differingBuckets(summary, await store.summary(readersOf)))
      differing[bucket] = await store.refs(bucket, readersOf);
    return c.json({ now_ms: house.now_ms(), differing });
  });

  app.post("/books/:book/sync/entries", async (c) => {
    const store = bookAt(house, c);
    const { entries, redacted } = await readJson(c, entriesRequest, ENTRIES_MAX_B);
    const good: AcceptedEntry[] = [];
    const refused: Refusal[] = [];
    for (const json of entries) {
      const result = accept(json, house.kinds);
      if (result.ok) good.push(result);
      else refused.push({ ...nameOf(json), problems: result.problems });
    }
    const { stored, added_n } = await store.append({ entries: good, redacted: redacted as RedactedEntry[] });
    if (added_n > 0) house.news.announce();
    return c.json({ stored, refused });
  });

  app.post("/books/:book/sync/fetch", async (c) => {
    const store = bookAt(house, c);
    const { refs } = await readJson(c, fetchRequest, NAMES_MAX_B);
    const texts: string[] = [];
    const redacted: RedactedEntry[] = [];
    let size_B = 0;
    for (const entry of await store.get(refs as EntryRef[])) {
      if (!("text" in entry)) redacted.push(entry);
      // The rest is asked for again.
      else if (size_B < SYNC_BATCH_B) {
        size_B += entry.text.length;
        texts.push(entry.text);
      }
    }
    // The texts are JSON already; parsing them only to print them again would double the work of a first sync.
    const body = `{"entries":[${texts.join(",")}],"redacted":${JSON.stringify(redacted)}}`;
    return c.body(body, 200, { "content-type": "application/json" });
  });
}

/** By what name the sender knows an entry that was refused; empty where it has none. */
function nameOf(json: unknown): EntryRef {
  const id = (json as { readonly id?: unknown } | null)?.id;
  const name = (typeof id === "string" ? id.slice(0, 64) : "") as EntryId;
  try {
    return { id: name, hash: sha256Hex(canonical(json as Json)) };
  } catch {
    return { id: name, hash: "" };
  }
}
