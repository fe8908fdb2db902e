import {
  type Clock,
  differingBuckets,
  type Entry,
  type EntryRef,
  parseBucket,
  readersFrom,
  refKey,
  type Summary,
} from "@sillwood/bench/book";
import { crafts } from "@sillwood/bench/crafts";
import { createLedger, FOLD_VERSION, type Snapshot } from "@sillwood/bench/house";
import { assumedSite } from "@sillwood/bench/pages";
import { gate } from "./kinds.ts";
import type { Loaded, LoadOptions, LoadStore } from "./load-book.ts";

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

/** Raised when the shape of `Kept` changes. */
const KEPT_VERSION = 2;
const KEY = `fold ${FOLD_VERSION}.${KEPT_VERSION} ${crafts.map(({ name }) => name).join("+")}`;
/** Books below this are read faster than a fold is. */
const WORTH_KEEPING_n = 2_000;
/** Entries of this many newest months are named, so that new ones are told from old. */
const RECENT_months = 2;

const readersOf = readersFrom(gate);

/** The kept fold with what came since; undefined when there is none or it does not fit any more. */
export async function keptFold(store: LoadStore, options: LoadOptions): Promise<Loaded | undefined> {
  const text = await store.cache.get(KEY);
  if (text === undefined) return undefined;
  let kept: Kept;
  try {
    kept = JSON.parse(text) as Kept;
  } catch {
    return undefined;
  }
  const since = await entriesSince(store, kept);
  if (!since) return undefined;
  const ledger = createLedger({ crafts, site: assumedSite(options.zone, options), snapshot: kept.snapshot });
  if (since.length > 0 && ledger.add(since).stale) return undefined;
  return {
    ledger,
    clock: since.reduce((latest, { clock }) => (clock > latest ? clock : latest), kept.clock),
  };
}

async function entriesSince(store: LoadStore, kept: Kept): Promise<Entry[] | undefined> {
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
  const stored = await store.get(fresh);
  return stored.flatMap((entry) => ("text" in entry ? [JSON.parse(entry.text) as Entry] : []));
}

/** Keeps the fold of a whole book for the next start. Nothing is lost when that fails: it is a cache. */
export async function keepFold(
  store: LoadStore,
  { ledger, clock }: Loaded,
  keep: NonNullable<LoadOptions["keep"]>,
): Promise<void> {
  if (ledger.entries_n < WORTH_KEEPING_n) return;
  const summary = await store.summary(readersOf);
  const months = [
    ...new Set(Object.keys(summary).flatMap((bucket) => parseBucket(bucket)?.month ?? [])),
  ].sort();
  const newest = new Set(months.slice(-RECENT_months));
  const recent: Record<string, string[]> = {};
  for (const bucket of Object.keys(summary))
    if (newest.has(parseBucket(bucket)?.month ?? ""))
      recent[bucket] = (await store.refs(bucket, readersOf)).map(refKey);
  const kept: Kept = { summary, recent, snapshot: ledger.snapshot(), clock };
  await keep(KEY, JSON.stringify(kept));
}
