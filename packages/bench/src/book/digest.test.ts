import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { someEntries, testKinds } from "../../test/entry-maker.ts";
import { readersFrom } from "./accept.ts";
import { choose } from "./choose.ts";
import {
  bucketOf,
  cellOf,
  differingBuckets,
  digestOf,
  EMPTY_DIGEST,
  entryDigest,
  joinDigests,
  lessDigest,
  parseBucket,
  summaryOf,
} from "./digest.ts";
import { hexToBytes, sha256Hex } from "./hash.ts";

const entries = [...someEntries(1, 30), ...someEntries(2, 30)];
const refs = entries.map(({ entry, hash }) => ({ id: entry.id, hash }));
const readersOf = readersFrom(testKinds);

describe("digest", () => {
  it("is the first 8 bytes of SHA-256 over id bytes and hash bytes", () => {
    const [ref] = refs as [(typeof refs)[0]];
    const bytes = hexToBytes(ref.id.replaceAll("-", "") + ref.hash);
    expect(bytes.length).toBe(48);
    expect(entryDigest(ref)).toEqual({
      n: 1,
      h: sha256Hex(bytes).slice(0, 16),
    });
  });

  it("kept up to date equals from scratch, in any order, added and taken away", () => {
    fc.assert(
      fc.property(fc.shuffledSubarray(refs), fc.nat(), (some, cut) => {
        let digest = EMPTY_DIGEST;
        for (const ref of some) digest = joinDigests(digest, entryDigest(ref));
        expect(digest).toEqual(digestOf([...some].reverse()));
        const gone = some.slice(0, cut % (some.length + 1));
        for (const ref of gone) digest = lessDigest(digest, entryDigest(ref));
        expect(digest).toEqual(digestOf(some.slice(gone.length)));
      }),
    );
  });

  it("tells any two different sets apart", () => {
    fc.assert(
      fc.property(fc.subarray(refs), fc.subarray(refs), (a, b) => {
        const same = a.length === b.length && a.every((ref, i) => ref === b[i]);
        expect(JSON.stringify(digestOf(a)) === JSON.stringify(digestOf(b))).toBe(same);
      }),
    );
  });

  it("counts per bucket of device, month and readers; an unknown kind is the grower's", () => {
    const cells = entries.map(({ entry, hash }) => ({
      cell: cellOf(entry),
      digest: entryDigest({ id: entry.id, hash }),
    }));
    const summary = summaryOf(cells, readersOf);
    expect(Object.values(summary).reduce((sum, { n }) => sum + n, 0)).toBe(60);
    for (const bucket of Object.keys(summary)) expect(parseBucket(bucket)).toBeDefined();
    const prices = entries.filter(({ entry }) => entry.kind === "test.paid").length;
    const growers = Object.entries(summary).filter(([bucket]) => bucket.endsWith("/grower"));
    expect(growers.reduce((sum, [, { n }]) => sum + n, 0)).toBe(prices);
    const first = cells[0] as (typeof cells)[0];
    expect(bucketOf({ ...first.cell, kind: "future.thing" }, readersOf)).toMatch(/\/grower$/);
    expect(differingBuckets(summary, summary)).toEqual([]);
    expect(differingBuckets(summary, {})).toEqual(Object.keys(summary).sort());
  });
});

describe("two contents under one id", () => {
  it("the smaller hash is used and both are reported, in any order", () => {
    const [a, b] = entries as [(typeof entries)[0], (typeof entries)[0]];
    const forged = { entry: { ...b.entry, id: a.entry.id }, hash: b.hash };
    fc.assert(
      fc.property(fc.shuffledSubarray([a, forged, ...entries.slice(2, 5), a], { minLength: 6 }), (heard) => {
        const { chosen, twins } = choose(heard);
        expect(chosen.get(a.entry.id)?.hash).toBe([a.hash, b.hash].sort()[0]);
        expect(twins).toEqual([{ id: a.entry.id, hashes: [a.hash, b.hash].sort() }]);
        expect(chosen.size).toBe(4);
      }),
    );
  });
});
