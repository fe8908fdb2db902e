import { first8Bytes, hexToBytes } from "./hash.ts";
import type { EntryRef } from "./redact.ts";
import { uuidMonth } from "./uuid.ts";

/**
 * Digests of buckets. A bucket is named `device/year-month/readers`; its digest counts its entries and XORs, over them, the
 * first 8 bytes of SHA-256 (16 id bytes + 32 hash bytes). XOR neither minds the order nor needs the others to add one.
 * Replicas count per cell (`device/year-month/kind`), because who reads a kind may be known to one app and not yet to an older one.
 */

export interface Digest {
  /** Number of entries. */
  readonly n: number;
  /** 16 hexadecimal digits. */
  readonly h: string;
}

export type Readers = "all" | "grower";

/** bucket -> digest. */
export type Summary = Readonly<Record<string, Digest>>;

export const EMPTY_DIGEST: Digest = { n: 0, h: "0000000000000000" };

/** What one entry adds to the digest of its bucket. */
export function entryDigest({ id, hash }: EntryRef): Digest {
  const bytes = new Uint8Array(48);
  bytes.set(hexToBytes(id.replaceAll("-", "")), 0);
  bytes.set(hexToBytes(hash), 16);
  const [high, low] = first8Bytes(bytes);
  return { n: 1, h: digits(high) + digits(low) };
}

/** Digest of the union of two sets that share no entry. */
export const joinDigests = (a: Digest, b: Digest): Digest => ({ n: a.n + b.n, h: xor(a.h, b.h) });

/** Digest of a set without a part of it. */
export const lessDigest = (whole: Digest, part: Digest): Digest => ({
  n: whole.n - part.n,
  h: xor(whole.h, part.h),
});

/** From scratch. The entries must differ. */
export function digestOf(refs: Iterable<EntryRef>): Digest {
  let digest = EMPTY_DIGEST;
  for (const ref of refs) digest = joinDigests(digest, entryDigest(ref));
  return digest;
}

/** A cell: the finest set that is counted. */
export interface Cell {
  readonly device: string;
  /** `2026-11`: the UTC month of the entry's id. */
  readonly month: string;
  readonly kind: string;
}

export const cellOf = (entry: {
  readonly id: string;
  readonly device: string;
  readonly kind: string;
}): Cell => ({
  device: entry.device,
  month: uuidMonth(entry.id),
  kind: entry.kind,
});

/** Who may read a kind. A kind that this app doesn't know is the grower's alone until it does. */
export type ReadersOf = (kind: string) => Readers;

export const bucketOf = (cell: Cell, readersOf: ReadersOf): string =>
  `${cell.device}/${cell.month}/${readersOf(cell.kind)}`;

/** The parts of a bucket's name; undefined when it is no such name. */
export function parseBucket(
  bucket: string,
): { readonly device: string; readonly month: string; readonly readers: Readers } | undefined {
  const match = /^([0-9a-f-]{36})\/(\d{4}-\d\d|\+\d{6})\/(all|grower)$/.exec(bucket);
  return match
    ? { device: match[1] as string, month: match[2] as string, readers: match[3] as Readers }
    : undefined;
}

/** Sums cells into buckets. Empty cells leave no bucket. */
export function summaryOf(
  cells: Iterable<{ readonly cell: Cell; readonly digest: Digest }>,
  readersOf: ReadersOf,
): Summary {
  const summary: Record<string, Digest> = {};
  for (const { cell, digest } of cells) {
    if (digest.n === 0) continue;
    const bucket = bucketOf(cell, readersOf);
    summary[bucket] = joinDigests(summary[bucket] ?? EMPTY_DIGEST, digest);
  }
  return summary;
}

/** Buckets in which two summaries differ, sorted. */
export function differingBuckets(a: Summary, b: Summary): string[] {
  const names = new Set([...Object.keys(a), ...Object.keys(b)]);
  return [...names].filter((name) => a[name]?.n !== b[name]?.n || a[name]?.h !== b[name]?.h).sort();
}

const digits = (word: number) => word.toString(16).padStart(8, "0");

const xor = (a: string, b: string) =>
  digits((Number.parseInt(a.slice(0, 8), 16) ^ Number.parseInt(b.slice(0, 8), 16)) >>> 0) +
  digits((Number.parseInt(a.slice(8), 16) ^ Number.parseInt(b.slice(8), 16)) >>> 0);
