import "fake-indexeddb/auto";
import {
  type AcceptedEntry,
  canonical,
  digestOf,
  type Entry,
  type EntryRef,
  entryHash,
  type Json,
} from "@sillwood/bench/book";
import { expect, test } from "vitest";
import { openBookDb } from "./book-db.ts";
import { bookStore } from "./book-store.ts";

const DEVICE = "019bb7c0-0000-7000-8000-00000000d001";
const all = () => "all" as const;

function entry(n: number, more: Partial<Entry> = {}): AcceptedEntry {
  const made = {
    id: `019bb7c0-0000-7000-8000-${String(n).padStart(12, "0")}`,
    device: DEVICE,
    kind: "plant.noted",
    v: 1,
    at_ms: 1_768_375_800_000 + n,
    zone: "Europe/London",
    atFrom: "clock",
    clock: "2026-01-14T07:30:00.000Z/0000",
    by: DEVICE,
    on: ["p"],
    data: { text: `note ${n}` },
    ...more,
  } as Entry;
  return { entry: made, hash: entryHash(made), text: canonical(made as unknown as Json) };
}
const refOf = ({ entry: made, hash }: AcceptedEntry): EntryRef => ({ id: made.id, hash });
const batch = (...entries: AcceptedEntry[]) => ({ entries, redacted: [] });
const open = async (name: string) => bookStore(await openBookDb(name));

test("a summary counts what the bucket holds, in whatever order and however often it came", async () => {
  const store = await open("summary");
  const entries = [entry(1), entry(2), entry(3)];
  await store.append(batch(entries[2] as AcceptedEntry, entries[0] as AcceptedEntry));
  const again = await store.append(batch(...entries, entries[1] as AcceptedEntry));
  expect(again.added_n).toBe(1);
  const [[bucket, digest] = []] = Object.entries(await store.summary(all));
  expect(digest).toEqual(digestOf(entries.map(refOf)));
  expect((await store.refs(bucket as string, all)).map(({ id }) => id).sort()).toEqual(
    entries.map(({ entry: made }) => made.id),
  );
});

test("texts come back byte for byte, in the order of ids and in batches", async () => {
  const store = await open("texts");
  const entries = Array.from({ length: 7 }, (_, n) => entry(n));
  await store.append(batch(...entries.toReversed()));
  const read: string[] = [];
  let batches_n = 0;
  await store.readAll((texts) => {
    read.push(...texts);
    batches_n++;
  }, 3);
  expect(read).toEqual(entries.map(({ text }) => text));
  expect(batches_n).toBe(3);
});

test("what is written here is away until the server names it; what is written meanwhile stays away", async () => {
  const store = await open("away");
  await store.write([entry(1), entry(2)], 1000);
  const before = await store.awayKeys();
  await store.write([entry(3)], 2000);
  await store.setAway([refOf(entry(2))], before, 3000);
  expect(await store.away()).toEqual({ n: 2, oldest_ms: 1000 });
});

test("a server that went back to an old copy finds its entries away again", async () => {
  const store = await open("restored");
  await store.append(batch(entry(1)));
  expect(await store.away()).toEqual({ n: 0 });
  await store.setAway([refOf(entry(1))], [], 5000);
  expect(await store.away()).toEqual({ n: 1, oldest_ms: 5000 });
});

test("a redaction drops the body, keeps the name and leaves the digest as it was", async () => {
  const store = await open("redacted");
  const secret = entry(1);
  const redaction = entry(2, {
    kind: "book.redacted",
    on: [],
    data: { id: secret.entry.id, hash: secret.hash },
  });
  await store.append(batch(secret));
  await store.append(batch(redaction));
  expect(await store.get([refOf(secret)])).toEqual([
    { ...refOf(secret), device: DEVICE, kind: "plant.noted", redacted: true },
  ]);
  const [digest] = Object.values(await store.summary(all));
  expect(digest).toEqual(digestOf([refOf(secret), refOf(redaction)]));
});

test("a shell is set aside until the redaction that asks for it is here, also in the same batch", async () => {
  const store = await open("shells");
  const secret = entry(1);
  const redaction = entry(2, {
    kind: "book.redacted",
    on: [],
    data: { id: secret.entry.id, hash: secret.hash },
  });
  const shell = { ...refOf(secret), device: DEVICE, kind: "plant.noted", redacted: true as const };
  expect(await store.append({ entries: [], redacted: [shell] })).toMatchObject({
    added_n: 0,
    setAside: [refOf(secret)],
  });
  expect(await store.append({ entries: [redaction], redacted: [shell] })).toMatchObject({
    added_n: 2,
    setAside: [],
  });
});

test("a body that comes after its redaction is not taken in again", async () => {
  const store = await open("late body");
  const secret = entry(1);
  const redaction = entry(2, {
    kind: "book.redacted",
    on: [],
    data: { id: secret.entry.id, hash: secret.hash },
  });
  await store.append(batch(redaction));
  await store.append(batch(secret));
  expect(await store.get([refOf(secret)])).toMatchObject([{ redacted: true }]);
});
