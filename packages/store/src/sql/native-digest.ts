import { createHash } from "node:crypto";
import type { Digest, EntryRef } from "@sillwood/bench/book";

/** `entryDigest` by Node's own SHA-256: several times as fast, and an append must not wait for anything but the disk. */
export function nativeDigest({ id, hash }: EntryRef): Digest {
  const bytes = Buffer.from(id.replaceAll("-", "") + hash, "hex");
  return { n: 1, h: createHash("sha256").update(bytes).digest("hex").slice(0, 16) };
}
