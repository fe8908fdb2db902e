import { mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import {
  type AcceptedEntry,
  type AppendBatch,
  type BookLine,
  bucketOf,
  cellOf,
  differingBuckets,
  digestOf,
  type EntryRef,
  importBook,
  REDACTED,
  type RedactedEntry,
  readersFrom,
  refKey,
  type StoredEntry,
  sha256Hex,
} from "@sillwood/bench/book";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { accepted, someEntries, testKinds, writer } from "../../bench/test/entry-maker.ts";
import type { AsideEntry, EntryStore } from "./entry-store.ts";

/** A store under test. */
export interface Subject {
  readonly name: string;
  /** Opens an empty book. */
  open(): Promise<EntryStore>;
  /** Changes one stored body behind the store's back, so that it no longer matches its hash. */
  damage(store: EntryStore, ref: EntryRef): Promise<void>;
}

const readersOf = readersFrom(testKinds);
const refOf = ({ entry, hash }: AcceptedEntry): EntryRef => ({ id: entry.id, hash });
const batchOf = (
  entries: readonly AcceptedEntry[],
  redacted: readonly RedactedEntry[] = [],
): AppendBatch => ({ entries, redacted });
const sorted = (refs: readonly EntryRef[]) => refs.map(refKey).sort();

async function gathered<Item>(chunks: AsyncIterable<readonly Item[]>): Promise<Item[]> {
  const all: Item[] = [];
  for await (const chunk of chunks) all.push(...chunk);
  return all;
}
async function* pieces(text: string) {
  for (let i = 0; i < text.length; i += 7) yield Buffer.from(text.slice(i, i + 7));
}

/** The rules that every store of the house keeps. Numbers never change; a dropped rule leaves a gap. */
export function storeContract(subject: Subject): void {
  describe(`store contract: ${subject.name}`, () => {
    let store: EntryStore;
    beforeEach(async () => {
      store = await subject.open();
    });
    afterEach(() => store.close());

    const bodies = async () => (await gathered(store.texts())).sort();
    /** Rule behind all others: digests kept up to date equal digests from scratch. */
    const digestsHold = async (refs: readonly EntryRef[]) => {
      const summary = await store.summary(readersOf);
      const named: EntryRef[] = [];
      for (const [bucket, digest] of Object.entries(summary)) {
        const inBucket = await store.refs(bucket, readersOf);
        expect(digestOf(inBucket)).toEqual(digest);
        named.push(...inBucket);
      }
      expect(sorted(named)).toEqual(sorted(refs));
      expect(await store.count_n()).toBe(refs.length);
    };

    it("01 an empty book has no buckets, entries, files", async () => {
      expect(await store.summary(readersOf)).toEqual({});
      expect(await bodies()).toEqual([]);
      expect(await store.count_n()).toBe(0);
      expect(await store.verify("all")).toMatchObject({ checked_n: 0, damaged: [] });
    });

    it("02 what was appended is there byte for byte, and is named in the answer", async () => {
      const entries = someEntries(2, 60);
      const result = await store.append(batchOf(entries));
      expect(result).toMatchObject({ added_n: 60, setAside: [] });
      expect(sorted(result.stored)).toEqual(sorted(entries.map(refOf)));
      expect(await bodies()).toEqual(entries.map(({ text }) => text).sort());
      const all = await gathered<StoredEntry>(store.all());
      expect(sorted(all)).toEqual(sorted(entries.map(refOf)));
      await digestsHold(entries.map(refOf));
    });

    it("03 appending again changes nothing and names the entries all the same", async () => {
      const entries = someEntries(3, 20);
      await store.append(batchOf(entries));
      const summary = await store.summary(readersOf);
      const again = await store.append(batchOf([...entries].reverse()));
      expect(again.added_n).toBe(0);
      expect(again.stored).toHaveLength(20);
      expect(await store.summary(readersOf)).toEqual(summary);
      const both = await store.append(batchOf([...entries, ...someEntries(33, 2), ...entries.slice(0, 1)]));
      expect(both.added_n).toBe(2);
      expect(await store.count_n()).toBe(22);
    });

    it("04 any order of arrival and any cut into batches give the same summary", async () => {
      const entries = [...someEntries(4, 30), ...someEntries(5, 30)];
      await store.append(batchOf(entries));
      const whole = await store.summary(readersOf);
      const other = await subject.open();
      for (let i = entries.length; i > 0; i -= 7)
        await other.append(batchOf(entries.slice(Math.max(0, i - 7), i)));
      expect(differingBuckets(whole, await other.summary(readersOf))).toEqual([]);
      await other.close();
    });

    it("05 a bucket holds the entries of its device, month and readers and no others", async () => {
      const entries = [...someEntries(6, 40), ...someEntries(7, 40)];
      await store.append(batchOf(entries));
      for (const bucket of Object.keys(await store.summary(readersOf))) {
        const expected = entries
          .filter(({ entry }) => bucketOf(cellOf(entry), readersOf) === bucket)
          .map(refOf);
        expect(sorted(await store.refs(bucket, readersOf))).toEqual(sorted(expected));
      }
      expect(await store.refs("nonsense", readersOf)).toEqual([]);
    });

    it("06 entries are given by id and hash; unknown names are left out", async () => {
      const entries = someEntries(8, 10);
      await store.append(batchOf(entries.slice(0, 5)));
      const got = await store.get([
        ...entries.map(refOf),
        { ...refOf(entries[0] as AcceptedEntry), hash: "0".repeat(64) },
      ]);
      expect(sorted(got)).toEqual(sorted(entries.slice(0, 5).map(refOf)));
      expect(await store.get([])).toEqual([]);
    });

    it("07 two contents under one id are both kept and told apart", async () => {
      const one = someEntries(9, 1)[0] as AcceptedEntry;
      const other = accepted({ ...one.entry, at_ms: one.entry.at_ms + 1 });
      await store.append(batchOf([one]));
      expect((await store.append(batchOf([other]))).added_n).toBe(1);
      expect((await store.get([refOf(other)])).map((entry) => "text" in entry && entry.text)).toEqual([
        other.text,
      ]);
      await digestsHold([refOf(one), refOf(other)]);
    });

    it("08 an entry of a kind that nobody here knows is kept, as the grower's", async () => {
      const unknown = accepted({
        ...(someEntries(10, 1)[0] as AcceptedEntry).entry,
        kind: "future.thing",
        data: { deep: [1] },
      });
      await store.append(batchOf([unknown]));
      expect(Object.keys(await store.summary(readersOf))[0]).toMatch(/\/grower$/);
      await digestsHold([refOf(unknown)]);
    });

    it("09 a redaction drops the body, keeps id and hash and leaves the digest as it was", async () => {
      const { write } = writer(11);
      const victim = write("test.noted", { text: "a name that should not be here" });
      await store.append(batchOf([victim]));
      const before = await store.refs(bucketOf(cellOf(victim.entry), readersOf), readersOf);
      const redaction = write(REDACTED, refOf(victim) as never);
      await store.append(batchOf([redaction]));
      expect(await bodies()).toEqual([redaction.text]);
      expect(await store.get([refOf(victim)])).toEqual([
        { ...refOf(victim), device: victim.entry.device, kind: "test.noted", redacted: true },
      ]);
      expect(await store.refs(bucketOf(cellOf(victim.entry), readersOf), readersOf)).toEqual(before);
      await digestsHold([refOf(victim), refOf(redaction)]);
      expect((await store.verify("all")).damaged).toEqual([]);
    });

    it("10 a body that comes after its redaction is dropped on arrival, in one batch or in two", async () => {
      const { write } = writer(12);
      const [a, b] = [write("test.noted", { text: "first" }), write("test.noted", { text: "second" })];
      const [noA, noB] = [write(REDACTED, refOf(a) as never), write(REDACTED, refOf(b) as never)];
      await store.append(batchOf([noA]));
      await store.append(batchOf([a, noB, b]));
      expect(await bodies()).toEqual([noA.text, noB.text].sort());
      await digestsHold([a, b, noA, noB].map(refOf));
    });

    it("11 a bodiless entry is set aside until its redaction is known", async () => {
      const { write } = writer(13);
      const victim = write("test.noted", { text: "gone" });
      const shell: RedactedEntry = {
        ...refOf(victim),
        device: victim.entry.device,
        kind: "test.noted",
        redacted: true,
      };
      expect(await store.append(batchOf([], [shell]))).toEqual({
        stored: [],
        added_n: 0,
        setAside: [refOf(victim)],
      });
      expect(await store.count_n()).toBe(0);
      const redaction = write(REDACTED, refOf(victim) as never);
      expect((await store.append(batchOf([redaction], [shell]))).added_n).toBe(2);
      await digestsHold([victim, redaction].map(refOf));
    });

    it("12 verification finds a changed body, takes it out of the digest, and a good copy heals it", async () => {
      const entries = someEntries(14, 12);
      await store.append(batchOf(entries));
      const [victim, ...rest] = entries as [AcceptedEntry, ...AcceptedEntry[]];
      await subject.damage(store, refOf(victim));
      expect((await store.verify("all")).damaged).toEqual([refOf(victim)]);
      await digestsHold(rest.map(refOf));
      expect(await store.get([refOf(victim)])).toEqual([]);
      expect(await bodies()).toEqual(rest.map(({ text }) => text).sort());
      expect((await gathered<StoredEntry>(store.all())).length).toBe(11);
      // Known damage is told again, never counted twice.
      expect((await store.verify("all")).damaged).toEqual([refOf(victim)]);
      await digestsHold(rest.map(refOf));
      await store.append(batchOf([victim]));
      await digestsHold(entries.map(refOf));
      expect((await store.verify("all")).damaged).toEqual([]);
    });

    it("13 verification in turn comes by every month of every device", async () => {
      const entries = [
        ...someEntries(15, 3),
        ...someEntries(16, 3),
        ...someEntries(17, 3, 1_760_000_000_000),
      ];
      await store.append(batchOf(entries));
      const victim = entries.at(-1) as AcceptedEntry;
      await subject.damage(store, refOf(victim));
      const found: string[] = [];
      for (let i = 0; i < 3; i++)
        found.push(...(await store.verify("next")).damaged.map(({ id }) => id as string));
      expect(new Set(found)).toEqual(new Set([victim.entry.id]));
    });

    it("14 a redaction of a damaged entry settles it", async () => {
      const { write } = writer(18);
      const victim = write("test.noted", { text: "damaged, then redacted" });
      await store.append(batchOf([victim]));
      await subject.damage(store, refOf(victim));
      await store.verify("all");
      const redaction = write(REDACTED, refOf(victim) as never);
      await store.append(batchOf([redaction]));
      await digestsHold([victim, redaction].map(refOf));
      expect((await store.verify("all")).damaged).toEqual([]);
    });

    it("20 a file comes back byte for byte, once put, once or twice", async () => {
      const text = "instant,air_C\n2026-11-25T13:00:00.000Z,21.4\n".repeat(20_000);
      const hash = sha256Hex(text);
      const line = { file: hash, size_B: text.length, type: "text/csv" };
      expect(await store.files.has(hash)).toBeUndefined();
      async function* large() {
        for (let i = 0; i < text.length; i += 100_000) yield Buffer.from(text.slice(i, i + 100_000));
      }
      expect(await store.files.put(hash, "text/csv", large())).toEqual(line);
      expect(await store.files.put(hash, "image/png", pieces("other bytes, never read"))).toEqual(line);
      const found = await store.files.get(hash);
      const parts: Uint8Array[] = [];
      for await (const piece of found?.pieces ?? []) parts.push(piece);
      expect(Buffer.concat(parts).toString() === text).toBe(true);
      const listed = [];
      for await (const file of store.files.list()) listed.push(file);
      expect(listed).toEqual([line]);
      expect((await store.verify("all")).damagedFiles).toEqual([]);
    });

    it("21 a file with other bytes or too many is refused and leaves nothing behind", async () => {
      const hash = sha256Hex("right");
      await expect(store.files.put(hash, "text/csv", pieces("wrong"))).rejects.toMatchObject({
        fault: "other content",
      });
      await expect(store.files.put(hash, "text/csv", pieces("right"), 4)).rejects.toMatchObject({
        fault: "too large",
      });
      async function* broken() {
        yield Buffer.from("ri");
        throw new Error("connection lost");
      }
      await expect(store.files.put(hash, "text/csv", broken())).rejects.toMatchObject({ fault: "failed" });
      expect(await store.files.has(hash)).toBeUndefined();
      expect(await store.files.get(hash)).toBeUndefined();
      expect(await store.files.put(hash, "text/csv", pieces("right"), 5)).toMatchObject({ size_B: 5 });
      expect(await store.files.put(sha256Hex(""), "text/csv", pieces(""))).toMatchObject({ size_B: 0 });
      expect(await store.files.has(sha256Hex(""))).toBeDefined();
      await store.files.drop(hash);
      expect(await store.files.has(hash)).toBeUndefined();
    });

    it("30 the cache gives back what was put, and drops by prefix", async () => {
      await store.cache.put("fold 1/a", "one");
      await store.cache.put("fold 1/a", "two");
      await store.cache.put("fold_1/b", "x".repeat(1_000_000));
      expect(await store.cache.get("fold 1/a")).toBe("two");
      expect((await store.cache.get("fold_1/b"))?.length).toBe(1_000_000);
      await store.cache.drop("fold_");
      expect(await store.cache.get("fold_1/b")).toBeUndefined();
      expect(await store.cache.get("fold 1/a")).toBe("two");
      await store.cache.drop("");
      expect(await store.cache.get("fold 1/a")).toBeUndefined();
    });

    it("31 a person card can be written, changed and erased", async () => {
      await store.people.put("person-1", { name: "A" });
      await store.people.put("person-1", { name: "B" });
      await store.people.put("person-2", { name: "C" });
      expect(await store.people.get("person-1")).toEqual({ name: "B" });
      expect(await store.people.ids()).toEqual(["person-1", "person-2"]);
      await store.people.erase("person-1");
      expect(await store.people.get("person-1")).toBeUndefined();
      expect(await store.people.ids()).toEqual(["person-2"]);
    });

    it("32 a device's key is found by its hash, closed with its device and not with a later pairing", async () => {
      const key = (hash: string, device: string, made_ms: number) =>
        ({ hash, device, person: "p", role: "helper", name: "a phone", made_ms, seen_ms: made_ms }) as const;
      const [first, second, again] = [key("h1", "d1", 1000), key("h2", "d2", 1000), key("h3", "d1", 9000)];
      for (const each of [second, first]) await store.keys.add(each);
      expect(await store.keys.find("h1")).toEqual(first);
      expect(await store.keys.find("h9")).toBeUndefined();
      expect(await store.keys.close("d1", 5000)).toBe(1);
      expect(await store.keys.close("d1", 6000)).toBe(0);
      await store.keys.add(again);
      // The book is read again at each start: an old closing must not close what was paired after it.
      expect(await store.keys.close("d1", 5000)).toBe(0);
      await store.keys.seen("h2", 7000);
      expect(await store.keys.list()).toEqual([
        { ...first, closed_ms: 5000 },
        again,
        { ...second, seen_ms: 7000 },
      ]);
    });

    it("33 what is set aside is in no digest, stays as it came, and may be dropped by text or wholly", async () => {
      const [one, two] = someEntries(3, 2).map((entry, i) => ({
        ...refOf(entry),
        device: "d1",
        why: "closed" as const,
        came_ms: 1000 + i,
        text: entry.text,
      })) as [AsideEntry, AsideEntry];
      await store.aside.put([one, two]);
      await store.aside.put([{ ...one, came_ms: 9000 }]);
      expect(await store.aside.list()).toEqual([one, two]);
      expect(await store.summary(readersOf)).toEqual({});
      await store.aside.drop(one);
      await store.aside.put([one]);
      const { text: _gone, ...name } = one;
      expect(await store.aside.list()).toEqual([name, two]);
      await store.aside.clear(two);
      expect(await store.aside.list()).toEqual([name]);
    });

    it("40 a backup holds every entry and file, and a second one takes its place", async () => {
      const folder = await mkdtemp(join(tmpdir(), "sillwood-backup-"));
      const entries = someEntries(19, 30);
      await store.append(batchOf(entries));
      await store.files.put(sha256Hex("leaf"), "image/png", pieces("leaf"));
      await store.backup(folder);
      const report = await store.backup(folder);
      expect(report).toMatchObject({ entries_n: 30, files_n: 1 });
      const hash = sha256Hex("leaf");
      expect(await readFile(join(folder, "files", hash.slice(0, 2), hash), "utf8")).toBe("leaf");
      const back: BookLine[] = [];
      const text = await readFile(report.paths[0] as string, "utf8");
      for await (const line of importBook(text.split("\n"), testKinds)) back.push(line);
      expect(back.filter(({ what }) => what === "damaged")).toEqual([]);
      const texts = back.flatMap((line) => (line.what === "entry" ? [line.entry.text] : []));
      expect(texts.sort()).toEqual(entries.map(({ text: own }) => own).sort());
      await rm(folder, { recursive: true });
    });

    it("50 a closed book answers with an error and closes twice", async () => {
      await store.close();
      await expect(store.append(batchOf([]))).rejects.toMatchObject({ fault: "closed" });
      await expect(store.summary(readersOf)).rejects.toMatchObject({ fault: "closed" });
      await store.close();
    });
  });
}
