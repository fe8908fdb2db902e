import {
  type AcceptedEntry,
  accept,
  type Clock,
  type Entry,
  type Pen,
  type PersonId,
  penOf,
  uuidMaker,
} from "@sillwood/bench/book";
import type { Ledger } from "@sillwood/bench/house";
import { type Desk, deskAt } from "@sillwood/bench/pages";
import { type Calendar, calendarOf } from "@sillwood/bench/places";
import type { Draft } from "@sillwood/bench/round";
import type { ReadStore } from "@sillwood/store/read-only";
import type { Call } from "../command.ts";
import { DataError, type Trouble } from "../errors.ts";
import { instantOption, knownUntil, typingCalendar, zoneOption } from "./asked.ts";
import { deviceId } from "./device.ts";
import { houseStore, type WriteStore } from "./house-store.ts";
import { addIssuedFiles } from "./issued-files.ts";
import { gate, kinds } from "./kinds.ts";
import { addSeriesFiles, emptyLedger, type LoadOptions, loadPresent, readEntries } from "./load-book.ts";
import { houseAddress, mustExist, openForReading, openForWriting } from "./open-book.ts";
import { type BookPlace, placeOf } from "./place.ts";
import { founding, writerOf } from "./writer.ts";

/** The book as a reading verb sees it: at one moment, as known at one moment. */
export interface Reading {
  readonly place: BookPlace;
  readonly ledger: Ledger;
  readonly desk: Desk;
  readonly now_ms: number;
  readonly known_ms?: number;
  readonly calendar: Calendar;
  /** The latest logical clock in the book, where it was asked as it is now. */
  readonly clock?: Clock;
}

/** What a page needs beyond the state that the entries lead to. */
export interface Wants {
  /** Entries that a kept fold leaves in the store. */
  readonly whole?: boolean;
  /** Kept forecasts of this plant, named as it was typed, and how they turned out. */
  readonly issuedOf?: string;
}

const loadOptions = (call: Call, whole: boolean): Omit<LoadOptions, "keep"> => ({
  zone: zoneOption(call) ?? call.around.zone,
  language: call.language,
  units: call.units,
  whole,
});

/** Opens the book for reading, folds it as it is asked for and closes it again. */
export async function readBook(call: Call, { whole = false, issuedOf }: Wants = {}): Promise<Reading> {
  const place = placeOf(call);
  const store = await openForReading(place);
  try {
    const past = call.options["at"] !== undefined || call.options["known"] !== undefined;
    const read = past ? await readPast(call, store) : await readPresent(call, store, place, whole);
    const desk = deskOf(call, read.ledger, read.now_ms);
    if (issuedOf !== undefined) await addIssuedFiles(desk, issuedOf, store.files);
    return { ...read, place, desk, calendar: calendarOf(desk.say.zone) };
  } finally {
    await store.close();
  }
}

async function readPresent(call: Call, store: ReadStore, place: BookPlace, whole: boolean) {
  const keep = async (key: string, value: string) => {
    // The fold is kept where nobody else writes just now; the next start tries again.
    const writer = await openForWriting(place, "sillwood").catch(() => undefined);
    await writer?.cache.put(key, value).catch(() => undefined);
    await writer?.close();
  };
  const { ledger, clock } = await loadPresent(store, { ...loadOptions(call, whole), keep });
  return { ledger, clock, now_ms: call.around.now_ms() };
}

/** A past moment is folded from its entries alone, so that nothing later can leak into it. */
async function readPast(call: Call, store: ReadStore) {
  const entries = await readEntries(store);
  const calendar = typingCalendar(call, entries);
  const at_ms = instantOption(call, "at", calendar);
  const known_ms = instantOption(call, "known", calendar);
  const until = known_ms === undefined ? undefined : knownUntil(known_ms);
  const ledger = emptyLedger(loadOptions(call, true), at_ms);
  ledger.add(until === undefined ? entries : entries.filter(({ clock }) => clock <= until));
  await addSeriesFiles(ledger, store.files);
  const now_ms = at_ms ?? call.around.now_ms();
  return { ledger, now_ms, ...(known_ms === undefined ? {} : { known_ms }) };
}

const deskOf = (call: Call, ledger: Ledger, now_ms: number): Desk => {
  const zone = zoneOption(call);
  return deskAt(ledger, { now_ms, language: call.language, units: call.units, ...(zone ? { zone } : {}) });
};

/** A file that a draft names, to be put into the book before the entry. */
export interface NewFile {
  readonly hash: string;
  readonly type: string;
  readonly bytes: Uint8Array;
}

/** The book as a writing verb sees it. */
export interface Writing {
  readonly ledger: Ledger;
  readonly desk: Desk;
  readonly calendar: Calendar;
  readonly now_ms: number;
  /** When things happened that carry no time of their own, if `--at` says so. */
  readonly at_ms?: number;
  readonly by: PersonId;
  newId(): string;
  /** Gives drafts their envelopes and writes them: all or, with a DataError, none. */
  keep(drafts: readonly Draft[], files?: readonly NewFile[]): Promise<readonly Entry[]>;
  /** Folds drafts in without writing them: what would be, for as long as the command runs. */
  judge(drafts: readonly Draft[]): readonly Entry[];
  /** The desk after what was kept. */
  deskNow(): Desk;
}

/** Opens the book for writing, or writes through the house that has it open, and closes it whatever happens. */
export async function withBook<Result>(
  call: Call,
  act: (writing: Writing) => Promise<Result>,
  whole = false,
): Promise<Result> {
  const place = placeOf(call);
  // What puts an entry right needs a book that has it.
  if (whole) mustExist(place);
  const { reading, writer, close } = await openBoth(place, call.around.err);
  try {
    const { ledger, clock } = await loadPresent(reading, loadOptions(call, whole));
    const now_ms = call.around.now_ms();
    const desk = deskOf(call, ledger, now_ms);
    const calendar = calendarOf(desk.say.zone);
    const newUuid = uuidMaker();
    const newId = () => newUuid(call.around.now_ms(), call.around.random);
    const by = writerOf(call, ledger, newId);
    const pen = penOf({
      device: deviceId(call.around),
      by,
      zone: calendar.zone,
      kinds,
      now_ms: () => call.around.now_ms(),
      random: call.around.random,
      clock,
    });
    const at_ms = instantOption(call, "at", calendar);
    return await act({
      ledger,
      desk,
      calendar,
      now_ms,
      ...(at_ms === undefined ? {} : { at_ms }),
      by,
      newId,
      keep: async (drafts, files = []) => {
        const accepted = judge(pen, [...founding(ledger, by), ...drafts]);
        for (const { hash, type, bytes } of files) await writer.putFile(hash, type, bytes);
        await writer.append({ entries: accepted, redacted: [] });
        const entries = accepted.map(({ entry }) => entry);
        ledger.add(entries);
        for (const { hash, bytes } of files)
          if (ledger.missing().some(({ file }) => file === hash))
            ledger.addSeries(hash, Buffer.from(bytes).toString("utf8"));
        return entries.slice(entries.length - drafts.length);
      },
      judge: (drafts) => {
        const entries = judge(pen, [...founding(ledger, by), ...drafts]).map(({ entry }) => entry);
        ledger.add(entries);
        return entries.slice(entries.length - drafts.length);
      },
      deskNow: () => deskOf(call, ledger, call.around.now_ms()),
    });
  } finally {
    await close();
  }
}

/** @param tell how it is said that the book is written through the house that has it open */
export async function openBoth(
  place: BookPlace,
  tell: (text: string) => void,
): Promise<{ reading: ReadStore; writer: WriteStore; close(): Promise<void> }> {
  try {
    const store = await openForWriting(place, "sillwood");
    const writer: WriteStore = {
      append: (batch) => store.append(batch),
      putFile: async (hash, type, bytes) => {
        await store.files.put(hash, type, pieces(bytes));
      },
      close: () => store.close(),
    };
    return { reading: store, writer, close: () => store.close() };
  } catch (error) {
    const address = houseAddress(error);
    if (address === undefined) throw error;
    const reading = await openForReading(place);
    tell(`The house at ${address} has the book open; writing through it.\n`);
    return { reading, writer: houseStore(address, reading.book), close: () => reading.close() };
  }
}

async function* pieces(bytes: Uint8Array): AsyncGenerator<Uint8Array> {
  yield bytes;
}

/** Gives drafts their envelopes: all or, with a DataError, none. */
export function judge(pen: Pen, drafts: readonly Draft[]): AcceptedEntry[] {
  const results = drafts.map((draft) => accept(pen.write(draft), gate));
  const troubles = results.flatMap((result): readonly Trouble[] => (result.ok ? [] : result.problems));
  if (troubles.length > 0) throw new DataError(troubles);
  return results.flatMap((result) => (result.ok ? [result] : []));
}
