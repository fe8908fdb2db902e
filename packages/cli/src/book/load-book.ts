import { type Clock, type Entry, entryReader, FIRST_CLOCK } from "@sillwood/bench/book";
import { crafts } from "@sillwood/bench/crafts";
import { createLedger, keepFold, keptFold, type Ledger } from "@sillwood/bench/house";
import { assumedSite } from "@sillwood/bench/pages";
import { placeKinds } from "@sillwood/bench/places";
import type { ReadStore } from "@sillwood/store/read-only";

/** What loading needs of a store. */
export type LoadStore = Pick<ReadStore, "texts" | "summary" | "refs" | "get" | "files" | "cache">;

export interface LoadOptions {
  /** Zone and language of whoever asks: the place is guessed from them until the book tells it. */
  readonly zone: string;
  readonly language: "en" | "de";
  readonly units: "metric" | "us";
  /** Where a fold may be kept for the next start; left out, it is not kept. */
  readonly keep?: (key: string, value: string) => Promise<void>;
  /** Whether every entry is needed (the log, corrections), not only the state that they lead to. */
  readonly whole: boolean;
}

/** The folded book, and the latest logical clock in it. */
export interface Loaded {
  readonly ledger: Ledger;
  readonly clock: Clock;
}

/** Entries as they stand in the store, before anything is folded. */
export async function readEntries(store: Pick<ReadStore, "texts">): Promise<Entry[]> {
  const entries: Entry[] = [];
  for await (const portion of entryPortions(store)) entries.push(...portion);
  return entries;
}

async function* entryPortions(store: Pick<ReadStore, "texts">): AsyncGenerator<readonly Entry[]> {
  const read = entryReader();
  for await (const texts of store.texts()) yield texts.map(read);
}

/** The zone in which the book's benches stand; undefined while it is not written. */
export function siteZone(entries: readonly Entry[]): string | undefined {
  let last: Entry | undefined;
  for (const entry of entries)
    if (entry.kind === placeKinds.site.kind && (last === undefined || entry.clock > last.clock)) last = entry;
  return (last?.data as { zone?: string } | undefined)?.zone;
}

const latestClock = (entries: readonly Entry[], before: Clock): Clock =>
  entries.reduce((latest, { clock }) => (clock > latest ? clock : latest), before);

export const emptyLedger = (
  options: Pick<LoadOptions, "zone" | "language" | "units">,
  at_ms?: number,
): Ledger =>
  createLedger({
    crafts,
    site: assumedSite(options.zone, options),
    ...(at_ms === undefined ? {} : { at_ms }),
  });

/** Hands the ledger the files of series that its entries name and that the store has. */
export async function addSeriesFiles(ledger: Ledger, files: ReadStore["files"]): Promise<void> {
  for (const { file } of ledger.missing()) {
    const text = await textOf(files, file);
    if (text !== undefined) ledger.addSeries(file, text);
  }
}

/** The text of a file of the store; undefined while it is not here. */
export async function textOf(files: ReadStore["files"], hash: string): Promise<string | undefined> {
  const found = await files.get(hash);
  if (!found) return undefined;
  const pieces: Uint8Array[] = [];
  for await (const piece of found.pieces) pieces.push(piece);
  return Buffer.concat(pieces).toString("utf8");
}

/** The present book: from the fold kept at an earlier start and what came since, else from every entry. */
export async function loadPresent(store: LoadStore, options: LoadOptions): Promise<Loaded> {
  const kept = options.whole ? undefined : await fromKeptFold(store, options);
  if (kept) {
    await addSeriesFiles(kept.ledger, store.files);
    return kept;
  }
  const ledger = emptyLedger(options);
  let clock = FIRST_CLOCK;
  // Each portion is laid into the book while it is at hand: going through all of them again would wait for memory.
  for await (const entries of entryPortions(store)) {
    ledger.add(entries);
    clock = latestClock(entries, clock);
  }
  await addSeriesFiles(ledger, store.files);
  const loaded = { ledger, clock };
  if (options.keep) await keepFold(store, loaded, options.keep);
  return loaded;
}

async function fromKeptFold(store: LoadStore, options: LoadOptions): Promise<Loaded | undefined> {
  const kept = await keptFold(store, crafts);
  if (!kept) return undefined;
  const { snapshot, since } = kept;
  const ledger = createLedger({ crafts, site: assumedSite(options.zone, options), snapshot });
  if (since.length > 0 && ledger.add(since).stale) return undefined;
  return { ledger, clock: latestClock(since, kept.clock) };
}
