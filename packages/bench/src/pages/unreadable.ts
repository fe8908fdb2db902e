import { type Entry, type EntryId, entryHash, REDACTED } from "../book/index.ts";
import type { Ledger } from "../house/index.ts";
import type { Draft } from "../round/pages.ts";

/**
 * What makes an entry unreadable for good, on every device: the entry itself and each correction that holds words of it. What
 * corrections said of other entries beside it goes with them.
 *
 * @returns nothing for an entry that is not here, or is a redaction itself
 */
export function unreadableDrafts(ledger: Ledger, id: EntryId): Draft[] {
  const record = ledger.record(id);
  if (!record || record.idle === "redacted" || record.first.kind === REDACTED) return [];
  const written = new Map<string, Entry>([[record.first.id, record.first]]);
  for (const { said } of record.standing.versions) written.set(said.id, said);
  return [...written.values()].map((entry) => ({
    kind: REDACTED,
    on: [],
    data: { id: entry.id, hash: entryHash(entry) },
  }));
}
