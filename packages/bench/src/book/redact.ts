import * as v from "valibot";
import type { Entry, EntryId, Sha256 } from "./entry.ts";
import { isSha256 } from "./hash.ts";
import { isUuid7 } from "./uuid.ts";

/**
 * Redaction: the one way in which something written leaves the book. A `book.redacted` entry names an entry by id and
 * content hash; every replica then drops that body and keeps id and hash, so that digests stay as they were.
 */
export const REDACTED = "book.redacted";

/** Data of a `book.redacted` entry. */
export const redactionSchema = v.strictObject({
  id: v.pipe(v.string("id is not an id"), v.check(isUuid7, "id is not a UUIDv7")),
  hash: v.pipe(
    v.string("hash is not a hash"),
    v.check(isSha256, "hash is not a SHA-256 of 64 hexadecimal digits"),
  ),
});

/** An entry by name: the pair that the book is a set of. */
export interface EntryRef {
  readonly id: EntryId;
  readonly hash: Sha256;
}

/** What is left of a redacted entry, and how it travels. Device and kind stay so that every replica files it in the same bucket. */
export interface RedactedEntry extends EntryRef {
  readonly device: string;
  readonly kind: string;
  readonly redacted: true;
}

/** What a redaction names; undefined for any other entry, and for one whose data is broken. A redaction can't be redacted. */
export function redactionOf(entry: Entry<unknown>): EntryRef | undefined {
  if (entry.kind !== REDACTED) return undefined;
  const data = v.safeParse(redactionSchema, entry.data);
  return data.success ? { id: data.output.id as EntryId, hash: data.output.hash } : undefined;
}

/** The name of an entry as one text, for sets and maps. */
export const refKey = ({ id, hash }: { readonly id: string; readonly hash: string }): string =>
  `${id}/${hash}`;
