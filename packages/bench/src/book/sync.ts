import { type AcceptedEntry, type AcceptedKinds, accept, readersFrom } from "./accept.ts";
import type { ReadersOf, Summary } from "./digest.ts";
import type { Clock, Problem } from "./entry.ts";
import { sha256Hex } from "./hash.ts";
import { type EntryRef, type RedactedEntry, refKey } from "./redact.ts";

/**
 * Sync of the book: set union in three calls. No cursor, no version vector, nothing remembered between passes, so that a
 * restored server, a cloned phone and a reply lost after commit need no special case. Pure: time is an argument,
 * store and transport are interfaces. The page docs/sync.md tells the protocol.
 */

/** An entry as a store holds it. */
export type StoredEntry = (EntryRef & { readonly text: string }) | RedactedEntry;

export interface AppendBatch {
  readonly entries: readonly AcceptedEntry[];
  /** Bodies that others dropped. Taken only when the redaction that asks for it is in the store or in this batch. */
  readonly redacted: readonly RedactedEntry[];
}

export interface AppendResult {
  /** Now in the store, whether they came just now or were there before. */
  readonly stored: readonly EntryRef[];
  /** Of these the ones that are new. */
  readonly added_n: number;
  /** Redacted entries whose redaction is not known here yet. */
  readonly setAside: readonly EntryRef[];
}

/** What sync asks of a store; every store of the house has it. */
export interface SyncStore {
  summary(readersOf: ReadersOf): Promise<Summary>;
  refs(bucket: string, readersOf: ReadersOf): Promise<readonly EntryRef[]>;
  /** Entries by name, in any order; names that are not there are left out. */
  get(refs: readonly EntryRef[]): Promise<readonly StoredEntry[]>;
  /** All or nothing, and durable when the promise resolves. Repeat safely. */
  append(batch: AppendBatch): Promise<AppendResult>;
}

export interface Refusal extends EntryRef {
  readonly problems: readonly Problem[];
}

/** The three calls. Each may fail and be repeated at will. */
export interface SyncTransport {
  summary(mine: Summary): Promise<{
    /** Server time, epoch milliseconds. */
    readonly now_ms: number;
    /** bucket -> the server's entries in it, for each bucket that differs. */
    readonly differing: Readonly<Record<string, readonly EntryRef[]>>;
  }>;
  /** At most SYNC_BATCH_n entries. `texts` are canonical. */
  entries(
    texts: readonly string[],
    redacted: readonly RedactedEntry[],
  ): Promise<{
    readonly stored: readonly EntryRef[];
    readonly refused: readonly Refusal[];
    /** What waits for the grower's word: not in the book, and not lost. */
    readonly aside?: readonly EntryRef[];
  }>;
  /** May answer with fewer than asked for; the rest is asked for again. */
  fetch(
    refs: readonly EntryRef[],
  ): Promise<{ readonly entries: readonly unknown[]; readonly redacted: readonly RedactedEntry[] }>;
}

/** Most entries in one call. */
export const SYNC_BATCH_n = 500;
/** Most text in one call [B], one entry at least. */
export const SYNC_BATCH_B = 4 * 1024 * 1024;

export interface SyncReport {
  readonly sent_n: number;
  readonly fetched_n: number;
  /** Entries here that the server has not named: what the top line of the screen counts. */
  readonly unnamed: readonly EntryRef[];
  /** Of these the ones that wait there for the grower's word. */
  readonly aside: readonly EntryRef[];
  /** Entries that the server would not take, and why. */
  readonly refused: readonly Refusal[];
  /** Entries that the server named and that did not arrive whole. */
  readonly missing: readonly EntryRef[];
  /** Problems of entries that arrived and were not taken. */
  readonly problems: readonly Problem[];
  /** The latest clock among the entries that arrived, for `seeClock`. */
  readonly latestClock: Clock | undefined;
  /** How far this device's clock is ahead of the server's [ms], half the travel time assumed each way. */
  readonly ahead_ms: number;
}

export interface SyncOptions {
  readonly store: SyncStore;
  readonly transport: SyncTransport;
  readonly kinds: AcceptedKinds;
  /** Reads this device's time, epoch milliseconds. */
  readonly now_ms: () => number;
  /** Called with each batch that arrived, once it is durable. */
  readonly onArrived?: (entries: readonly AcceptedEntry[]) => void;
}

/**
 * One pass: compare digests, push what the server lacks, fetch what this device lacks.
 * Throws what the transport throws; whatever was stored by then stays stored and the next pass goes on from there.
 */
export async function syncOnce(options: SyncOptions): Promise<SyncReport> {
  const { store, transport, kinds, now_ms } = options;
  const readersOf = readersFrom(kinds);
  const before_ms = now_ms();
  const answer = await transport.summary(await store.summary(readersOf));
  const ahead_ms = Math.round((before_ms + now_ms()) / 2 - answer.now_ms);

  const push: EntryRef[] = [];
  const want: EntryRef[] = [];
  for (const [bucket, theirs] of Object.entries(answer.differing)) {
    const mine = await store.refs(bucket, readersOf);
    push.push(...without(mine, theirs));
    want.push(...without(theirs, mine));
  }
  const pushed = await pushAll(store, transport, push);
  const fetched = await fetchAll(options, want);
  return { ...pushed, ...fetched, ahead_ms };
}

/**
 * What a device does that was shut out: hands in what the server has not named, and asks for nothing.
 * Throws what the transport throws.
 */
export const handIn = (
  { store, transport }: Pick<SyncOptions, "store" | "transport">,
  refs: readonly EntryRef[],
): Promise<Pick<SyncReport, "sent_n" | "unnamed" | "aside" | "refused">> => pushAll(store, transport, refs);

async function pushAll(store: SyncStore, transport: SyncTransport, refs: readonly EntryRef[]) {
  const named = new Set<string>();
  const refused: Refusal[] = [];
  const redacted: RedactedEntry[] = [];
  const aside: EntryRef[] = [];
  const send = async (texts: readonly string[], shells: readonly RedactedEntry[]) => {
    const answer = await transport.entries(texts, shells);
    for (const ref of answer.stored) named.add(refKey(ref));
    refused.push(...answer.refused);
    aside.push(...(answer.aside ?? []));
  };
  for (const names of chunks(refs, SYNC_BATCH_n)) {
    const texts: string[] = [];
    for (const entry of await store.get(names)) {
      if (!("text" in entry)) redacted.push(entry);
      // A body that the disk has changed would arrive as other content under the same id; it waits for verification instead.
      else if (sha256Hex(entry.text) === entry.hash) texts.push(entry.text);
    }
    for (const batch of bySize(texts)) await send(batch, []);
  }
  // Last, so that the redaction that names them is there.
  for (const shells of chunks(redacted, SYNC_BATCH_n)) await send([], shells);
  const unnamed = refs.filter((ref) => !named.has(refKey(ref)));
  return { sent_n: refs.length - unnamed.length, unnamed, aside, refused };
}

async function fetchAll({ store, transport, kinds, onArrived }: SyncOptions, refs: readonly EntryRef[]) {
  let wanted = new Map(refs.map((ref) => [refKey(ref), ref]));
  const problems: Problem[] = [];
  const shells: RedactedEntry[] = [];
  let fetched_n = 0;
  let latestClock: Clock | undefined;
  let progress = true;
  while (wanted.size > 0 && progress) {
    const before_n = wanted.size;
    for (const names of chunks([...wanted.values()], SYNC_BATCH_n)) {
      const answer = await transport.fetch(names);
      const entries = judge(answer.entries, kinds, wanted, problems);
      for (const shell of answer.redacted) if (wanted.delete(refKey(shell))) shells.push(shell);
      const { added_n } = await store.append({ entries, redacted: [] });
      fetched_n += added_n;
      for (const { entry } of entries)
        if (latestClock === undefined || entry.clock > latestClock) latestClock = entry.clock;
      if (entries.length > 0) onArrived?.(entries);
    }
    progress = wanted.size < before_n;
  }
  for (const batch of chunks(shells, SYNC_BATCH_n)) {
    const { added_n, setAside } = await store.append({ entries: [], redacted: batch });
    fetched_n += added_n;
    wanted = new Map([...wanted, ...setAside.map((ref) => [refKey(ref), ref] as const)]);
  }
  return { fetched_n, missing: [...wanted.values()], problems, latestClock };
}

/** Takes of what arrived only what was asked for and passes the gate. */
function judge(
  arrived: readonly unknown[],
  kinds: AcceptedKinds,
  wanted: Map<string, EntryRef>,
  problems: Problem[],
): AcceptedEntry[] {
  const entries: AcceptedEntry[] = [];
  for (const json of arrived) {
    const result = accept(json, kinds);
    if (!result.ok) problems.push(...result.problems);
    else if (wanted.delete(refKey({ id: result.entry.id, hash: result.hash })))
      entries.push({ entry: result.entry, hash: result.hash, text: result.text });
    else problems.push({ path: "", message: `entry ${result.entry.id} arrived without being asked for` });
  }
  return entries;
}

/** Members of `all` that are not in `others`, by id and hash. */
export function without(all: readonly EntryRef[], others: readonly EntryRef[]): EntryRef[] {
  const known = new Set(others.map(refKey));
  return all.filter((ref) => !known.has(refKey(ref)));
}

function* chunks<Item>(items: readonly Item[], size_n: number): Generator<Item[]> {
  for (let i = 0; i < items.length; i += size_n) yield items.slice(i, i + size_n);
}

function* bySize(texts: readonly string[]): Generator<string[]> {
  let batch: string[] = [];
  let size_B = 0;
  for (const text of texts) {
    // A UTF-16 unit takes at most three bytes.
    const most_B = text.length * 3;
    if (batch.length > 0 && size_B + most_B > SYNC_BATCH_B) {
      yield batch;
      batch = [];
      size_B = 0;
    }
    batch.push(text);
    size_B += most_B;
  }
  if (batch.length > 0) yield batch;
}
