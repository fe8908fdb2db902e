import type { Entry, EntryId, Sha256 } from "./entry.ts";

/** An entry with its content hash. */
export interface HashedEntry {
  readonly entry: Entry;
  readonly hash: Sha256;
}

/** Two or more contents under one id: a fault of some writer, kept and shown. */
export interface Twins {
  readonly id: EntryId;
  /** All hashes, smallest first; the fold uses the first. */
  readonly hashes: readonly Sha256[];
}

/**
 * One entry per id: where two contents came under one id both are kept in the book and the fold uses the one with the smaller
 * hash, on every replica alike.
 */
export function choose(entries: Iterable<HashedEntry>): {
  readonly chosen: ReadonlyMap<EntryId, HashedEntry>;
  readonly twins: readonly Twins[];
} {
  const chosen = new Map<EntryId, HashedEntry>();
  const hashes = new Map<EntryId, Set<Sha256>>();
  for (const candidate of entries) {
    const { id } = candidate.entry;
    const before = chosen.get(id);
    if (!before || candidate.hash < before.hash) chosen.set(id, candidate);
    if (before && before.hash !== candidate.hash) {
      const all = hashes.get(id) ?? new Set([before.hash]);
      hashes.set(id, all.add(candidate.hash).add(before.hash));
    }
  }
  const twins = [...hashes].map(([id, all]) => ({ id, hashes: [...all].sort() }));
  return { chosen, twins: twins.sort((a, b) => (a.id < b.id ? -1 : 1)) };
}
