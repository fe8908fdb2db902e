import {
  type AcceptedEntry,
  accept,
  canonical,
  differingBuckets,
  type Entry,
  type EntryId,
  type EntryRef,
  type Json,
  parseBucket,
  type RedactedEntry,
  type Refusal,
  readersFrom,
  refKey,
  SYNC_BATCH_B,
  sha256Hex,
} from "@sillwood/bench/book";
import type { AsideEntry, EntryStore } from "@sillwood/store/entry-store";
import type { Hono } from "hono";
import { closeDevices } from "../access/closings.ts";
import { asideWhy } from "../access/may-write.ts";
import { reader, type Who, whoOf } from "../access/who.ts";
import { bookAt, type House } from "../house.ts";
import { HttpProblem } from "../problem.ts";
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
    const isGrower = reader(c).role === "grower";
    const differing: Record<string, readonly EntryRef[]> = {};
    for (const bucket of differingBuckets(summary, await store.summary(readersOf)))
      if (isGrower || parseBucket(bucket)?.readers === "all")
        differing[bucket] = await store.refs(bucket, readersOf);
      // Whoever may not read it hears no name out of it; what he wrote himself he sends all.
      else if (bucket in summary) differing[bucket] = [];
    return c.json({ now_ms: house.now_ms(), differing });
  });

  app.post("/books/:book/sync/entries", async (c) => {
    const store = bookAt(house, c);
    const who = whoOf(c) as Who;
    const { entries, redacted } = await readJson(c, entriesRequest, ENTRIES_MAX_B);
    const good: AcceptedEntry[] = [];
    const refused: Refusal[] = [];
    const waiting: AsideEntry[] = [];
    for (const json of entries) {
      const result = accept(json, house.kinds);
      if (!result.ok) {
        refused.push({ ...nameOf(json), problems: result.problems });
        continue;
      }
      const { entry, hash, text } = result;
      const why = asideWhy(who, entry);
      if (why === undefined || who.at === "this machine") good.push(result);
      else waiting.push({ id: entry.id, hash, device: who.device, why, came_ms: house.now_ms(), text });
    }
    const shells = mayBringShells(who) ? (redacted as RedactedEntry[]) : [];
    const { stored, added_n } = await store.append({ entries: good, redacted: shells });
    await closeDevices(store, good, house.now_ms());
    const { aside, known } = await setAside(store, waiting);
    if (added_n > 0) house.news.announce();
    return c.json({ stored: [...stored, ...known], refused, aside });
  });

  app.post("/books/:book/sync/fetch", async (c) => {
    const store = bookAt(house, c);
    const { refs } = await readJson(c, fetchRequest, NAMES_MAX_B);
    const isGrower = reader(c).role === "grower";
    const mayRead = (kind: string) => isGrower || readersOf(kind) === "all";
    const texts: string[] = [];
    const redacted: RedactedEntry[] = [];
    let size_B = 0;
    for (const entry of await store.get(refs as EntryRef[])) {
      if (!("text" in entry)) {
        if (mayRead(entry.kind)) redacted.push(entry);
      }
      // Told from the text itself: what a person may not read is as if it were not here.
      else if (!isGrower && !mayRead((JSON.parse(entry.text) as Entry).kind)) continue;
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

const mayBringShells = (who: Who) => who.at === "this machine" || (!who.closed && who.role !== "viewer");

/** Most entries that wait from one device: a lost phone in strange hands must not fill the disk. @source our assumption */
const ASIDE_MAX_n = 5000;

/** Puts on the shelf what is not in the book already. */
async function setAside(store: EntryStore, waiting: readonly AsideEntry[]) {
  if (waiting.length === 0) return { aside: [], known: [] };
  const there = new Set((await store.get(waiting)).map(refKey));
  const known = waiting.filter((one) => there.has(refKey(one))).map(({ id, hash }) => ({ id, hash }));
  const fresh = waiting.filter((one) => !there.has(refKey(one)));
  const shelf = await store.aside.list();
  const before_n = shelf.filter(({ device }) => device === waiting[0]?.device).length;
  const lying = new Set(shelf.map(refKey));
  const added = fresh.filter((one) => !lying.has(refKey(one)));
  if (before_n + added.length > ASIDE_MAX_n)
    throw new HttpProblem(507, "too many entries of this device wait for the grower", [
      { path: "entries", message: "are too many", value: before_n + added.length, limit: `<=${ASIDE_MAX_n}` },
    ]);
  await store.aside.put(added);
  return { aside: fresh.map(({ id, hash }) => ({ id, hash })), known };
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
