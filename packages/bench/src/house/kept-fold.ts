import { readersFrom } from "../book/accept.ts";
import { acceptedKinds } from "../book/accepted-kinds.ts";
import { differingBuckets, parseBucket, type ReadersOf, type Summary } from "../book/digest.ts";
import type { Clock, Entry } from "../book/entry.ts";
import { kindRegistry } from "../book/kinds.ts";
import { entryReader } from "../book/read.ts";
import { type EntryRef, refKey } from "../book/redact.ts";
import type { SyncStore } from "../book/sync.ts";
import type { AnyCraft } from "../crafts/craft.ts";
import { houseKinds } from "./house.ts";
import type { Ledger } from "./ledger.ts";
import { FOLD_VERSION, type Snapshot } from "./snapshot.ts";

/** What a kept fold needs of the store beside which it lies. */
export type FoldStore = Pick<SyncStore, "summary" | "refs" | "get"> & {
  readonly cache: { get(key: string): Promise<string | undefined> };
};

/**
 * The folded book, kept beside it so that a start need not read every entry. It is good only for the digests under which it
 * was kept: buckets that grew since are read by name, a bucket that changed in any other way makes it worthless.
 */
interface Kept {
  readonly summary: Summary;
  /** Names of the entries in the newest buckets, since these are the ones that grow. */
  readonly recent: Readonly<Record<string, readonly string[]>>;
  readonly snapshot: Snapshot;
  readonly clock: Clock;
}

/** A fold that still fits the book: the state it stood at, and what was written since. */
export interface KeptFold {
  readonly snapshot: Snapshot;
  /** The latest logical clock in what was folded. */
  readonly clock: Clock;
  readonly since: readonly Entry[];
}

/** Raised when the shape of `Kept` changes. */
const KEPT_VERSION = 3;
/** Books below this are read faster than a fold is. */
const WORTH_KEEPING_n = 2_000;
/** Entries of this many newest months are named, so that new ones are told from old. */
const RECENT_months = 2;

const keyOf = (crafts: readonly AnyCraft[]) =>
  `fold ${FOLD_VERSION}.${KEPT_VERSION} ${crafts.map(({ name }) => name).join("+")}`;

const readersOfAll = (crafts: readonly AnyCraft[]): ReadersOf =>
  readersFrom(acceptedKinds(kindRegistry([...houseKinds, ...crafts.flatMap((craft) => craft.kinds)])));

/** The kept fold; undefined when there is none or it does not fit any more. */
export async function keptFold(store: FoldStore, crafts: readonly AnyCraft[]): Promise<KeptFold | undefined> {
  const text = await store.cache.get(keyOf(crafts));
  if (text === undefined) return undefined;
  let kept: Kept;
  try {
    kept = JSON.parse(text) as Kept;
  } catch {
    return undefined;
  }
  const since = await entriesSince(store, kept, readersOfAll(crafts));
  return since && { snapshot: kept.snapshot, clock: kept.clock, since };
}

async function entriesSince(
  store: FoldStore,
  kept: Kept,
  readersOf: ReadersOf,
): Promise<Entry[] | undefined> {
  const now = await store.summary(readersOf);
  const fresh: EntryRef[] = [];
  for (const bucket of differingBuckets(kept.summary, now)) {
    const before = kept.summary[bucket];
    const known = kept.recent[bucket];
    if (now[bucket] === undefined || (before && !known)) return undefined;
    const names = new Set(known ?? []);
    const refs = (await store.refs(bucket, readersOf)).filter((ref) => !names.delete(refKey(ref)));
    // What was known and is gone: damaged since, or the store is another.
    if (names.size > 0) return undefined;
    fresh.push(...refs);
  }
  const read = entryReader();
  const stored = fresh.length > 0 ? await store.get(fresh) : [];
  return stored.flatMap((entry) => ("text" in entry ? [read(entry.text)] : []));
}

/**
 * Keeps the fold of a whole book for the next start. Nothing is lost when that fails: it is a cache.
 *
 * @param isAll whether a store of so many entries holds exactly what was folded: where others write meanwhile, it may not
 */
export async function keepFold(
  store: Pick<FoldStore, "summary" | "refs">,
  { ledger, clock }: { readonly ledger: Ledger; readonly clock: Clock },
  keep: (key: string, value: string) => Promise<void>,
  isAll: (entries_n: number) => boolean = () => true,
): Promise<void> {
  if (ledger.entries_n < WORTH_KEEPING_n) return;
  const readersOf = readersOfAll(ledger.crafts);
  const buckets = Object.keys(await store.summary(readersOf));
  const months = [...new Set(buckets.flatMap((bucket) => parseBucket(bucket)?.month ?? []))].sort();
  const newest = new Set(months.slice(-RECENT_months));
  const recent: Record<string, string[]> = {};
  for (const bucket of buckets)
    if (newest.has(parseBucket(bucket)?.month ?? ""))
      recent[bucket] = (await store.refs(bucket, readersOf)).map(refKey);
  // Counted after the names: what is written between is in neither, or makes the count differ.
  const summary = await store.summary(readersOf);
  if (!isAll(Object.values(summary).reduce((sum, { n }) => sum + n, 0))) return;
  const kept: Kept = { summary, recent, snapshot: ledger.snapshot(), clock };
  await keep(keyOf(ledger.crafts), JSON.stringify(kept));
}
