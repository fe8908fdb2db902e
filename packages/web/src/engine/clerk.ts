import {
  type AcceptedEntry,
  acceptedKinds,
  type Entry,
  type EntryId,
  entryReader,
  readersFrom,
  uuidMaker,
} from "@sillwood/bench/book";
import type { Whose } from "@sillwood/bench/issued";
import type { Draft } from "@sillwood/bench/round";
import type { BookDb } from "../device/book-db.ts";
import type { BookStore } from "../device/book-store.ts";
import { fileStore } from "../device/file-store.ts";
import type { Server } from "../device/server.ts";
import type { SyncLoop } from "../device/sync-loop.ts";
import { loadLater } from "./answers.ts";
import type { Book } from "./book.ts";
import { earlyBook, foldKeeper, isAnsweredEarly } from "./early.ts";
import { issuing } from "./issuing.ts";
import type { Command, FromEngine, Identity, Mark, Opened, ReplyOf, Written } from "./messages.ts";
import type { Asking, AsOf } from "./questions.ts";

/** The first screen stands: what answers the next ones is at hand before it is asked. Where it cannot be had now, who asks gets it. */
const soonLater = () => void loadLater().catch(() => undefined);

/** After an early start: the round is asked for at once, the lines behind it are read when it is drawn. */
const READ_AFTER_ms = 500;

/** What a book of this device is called in the head of its lines. */
const BOOK_NAME = "sillwood";

/** Beyond this the person is told and the book learns of it. */
const CLOCK_OFF_ms = 2 * 60_000;
/** Two measurements of one wrong clock differ by the travel time, not by more. */
const CLOCK_SAME_ms = 30_000;
/** While it stays off, the span is carried on this often. */
const CLOCK_AGAIN_ms = 10 * 60_000;
const DAY_ms = 86_400_000;

export interface ClerkTools {
  readonly db: BookDb;
  readonly store: BookStore;
  readonly server: Server;
  readonly book: Book;
  readonly random: () => number;
  /** In whose language refusals are said before anybody asks. */
  readonly asking: Asking;
  readonly loop: SyncLoop;
  /** Other tabs of this device, where there can be any. */
  readonly channel?: BroadcastChannel;
  tell(news: FromEngine): void;
}

/** Reads the book in, writes entries to disk before they count, and keeps the server told. */
export async function clerkOf(tools: ClerkTools) {
  const { db, store, server, book, random, tell, asking, channel } = tools;
  const files = fileStore(db);
  const nextId = uuidMaker();
  const known = new Set<string>();
  let identity = ((await db.get("meta", "identity")) ?? null) as Identity | null;
  const answered_ms = (await db.get("meta", "answered")) as number | undefined;
  /** How the server stood to this device when it was last asked: one that was shut out stays so without a line. */
  const shutOut = (await db.get("meta", "shut out")) as Pick<Mark, "aside_n"> | undefined;
  let mark: Mark = {
    away_n: 0,
    server: shutOut ? "closed" : "unknown",
    ...shutOut,
    ...(answered_ms === undefined ? {} : { answered_ms }),
  };

  const tellMark = async (change: Partial<Mark> = {}) => {
    const { n, oldest_ms } = await store.away();
    const { oldest_ms: _was, ...rest } = mark;
    mark = { ...rest, ...change, away_n: n, ...(oldest_ms === undefined ? {} : { oldest_ms }) };
    tell({ news: "mark", mark });
  };
  const take = (entries: readonly Entry[]) => {
    // Another tab, or the reply to our own push, may bring what is folded already.
    const fresh = entries.filter(({ id }) => !known.has(id));
    for (const { id } of fresh) known.add(id);
    if (fresh.length === 0) return;
    book.add(fresh);
    tell({ news: "changed", revision: book.ledger.revision });
  };
  const takeFiles = async () => {
    let came = false;
    for (const { file } of book.ledger.missing()) {
      const kept = (await files.get(file)) ?? (await fetchFile(file));
      if (!kept) continue;
      book.addSeries(file, new TextDecoder().decode(kept.bytes));
      came = true;
    }
    if (came) tell({ news: "changed", revision: book.ledger.revision });
  };
  const fetchFile = async (sha256: string) => {
    const came = await server.getFile(sha256).catch(() => undefined);
    if (came) await files.put({ sha256, ...came, home: 1 });
    return came;
  };

  let early = identity ? await earlyBook(db, store, files, asking, random) : undefined;
  /** Lines that a redaction has emptied: they count on disk and are not folded. */
  let shells_n = 0;
  const keeper = foldKeeper(db, store, book, (entries_n) => entries_n === known.size + shells_n);

  async function readIn(): Promise<void> {
    const of_n = await store.count();
    const read = entryReader();
    let read_n = 0;
    const waiting: Entry[] = [];
    await store.readAll((texts) => {
      for (const text of texts) waiting.push(read(text));
      read_n += texts.length;
      if (!early) tell({ news: "reading", read_n, of_n });
    });
    shells_n = of_n - read_n;
    const since = new Set<string>(early?.kept.since.map(({ id }) => id));
    take(since.size > 0 ? waiting.filter(({ id }) => !since.has(id)) : waiting);
    await takeFiles();
    // The kept fold is of these very entries and files: their histories need not be run again.
    if (early && book.ledger.adopt(early.kept.snapshot)) keeper.has(early.kept.snapshot.entries_n);
    if (since.size > 0) take(waiting);
    early = undefined;
    await tellMark();
  }

  let reading: Promise<void> | undefined;
  const whole = () => {
    reading ??= readIn();
    return reading;
  };
  if (early) await tellMark();
  else await whole();

  const loop = tools.loop({
    store,
    server,
    kinds: acceptedKinds(book.ledger.kinds),
    files,
    onArrived: (entries: readonly AcceptedEntry[]) => take(entries.map(({ entry }) => entry)),
    onPass: async (change) => {
      await takeFiles();
      if (change.ahead_ms !== undefined) await noteClock(change.ahead_ms);
      // A line that is gone says nothing of who was shut out.
      if (change.server === "silent" && mark.server === "closed") return tellMark();
      if (change.server === "closed" || mark.server === "closed")
        await (change.server === "closed"
          ? db.put("meta", { aside_n: change.aside_n ?? mark.aside_n ?? 0 }, "shut out")
          : db.delete("meta", "shut out"));
      if (change.server !== "answers") return tellMark(change);
      const answered_ms = Date.now();
      await db.put("meta", answered_ms, "answered");
      await tellMark({ ...change, answered_ms });
    },
  });
  /** Once every line is read: nothing is sent or fetched before, so that nothing comes twice. A failure is told to who asks next. */
  const syncSoon = () =>
    void whole().then(
      () => loop.soon(),
      () => undefined,
    );
  channel?.addEventListener("message", async ({ data }) => {
    const texts = (data as { readonly texts?: readonly string[] }).texts ?? [];
    await whole();
    take(texts.map((text) => JSON.parse(text) as Entry));
    await tellMark();
  });

  /** A device clock that is off is told once for each span; the fold puts the times right, nothing is rewritten. */
  async function noteClock(ahead_ms: number): Promise<void> {
    const until_ms = Date.now();
    const seen = (await db.get("meta", "clock seen")) as { at_ms: number; ahead_ms: number } | undefined;
    const isOff = Math.abs(ahead_ms) > CLOCK_OFF_ms;
    const isTold = seen !== undefined && Math.abs(seen.ahead_ms - ahead_ms) < CLOCK_SAME_ms;
    if (isOff && (!identity || (isTold && until_ms - seen.at_ms < CLOCK_AGAIN_ms))) return;
    if (isOff && identity) {
      const from_ms = Math.min(seen?.at_ms ?? until_ms - DAY_ms, until_ms);
      const data = { device: identity.device, from_ms, until_ms, ahead_ms };
      await write([{ kind: "device.clock", on: [], data }], { ...asking, now_ms: until_ms });
    }
    await db.put("meta", { at_ms: until_ms, ahead_ms: isOff ? ahead_ms : 0 }, "clock seen");
  }

  async function write(drafts: readonly Draft[], asked: Asking): Promise<Written> {
    if (!identity) return { refused: [{ path: "by", message: "nobody has said yet who holds this device" }] };
    const written = book.write(drafts, identity, asked);
    if ("refused" in written) return written;
    const entries = written.accepted.map(({ entry }) => entry);
    try {
      await store.write(written.accepted, asked.now_ms);
    } catch (error) {
      if (!isFull(error)) throw error;
      return { lost: drafts.map((draft) => book.saidOf(draft, asked)).join("; ") };
    }
    take(entries);
    channel?.postMessage({ texts: written.accepted.map(({ text }) => text) });
    await tellMark();
    loop.soon();
    return { kept: entries.map(({ id }) => id as EntryId), said: book.said(entries, asked) };
  }

  const issued = issuing({
    book,
    files,
    summary: () => store.summary(readersFrom(acceptedKinds(book.ledger.kinds))),
    mayWrite: () => identity !== null && identity.role !== "viewer",
    write,
    fetchFile,
    changed: () => tell({ news: "changed", revision: book.ledger.revision }),
  });

  async function be(command: Extract<Command, { do: "be" }>): Promise<Identity> {
    const { role, card, asking } = command;
    const device = identity?.device ?? nextId(asking.now_ms, random);
    const person = command.person ?? nextId(asking.now_ms, random);
    const isNewBook = book.ledger.house().people.roles.size === 0;
    // Only a grower lets people in, so a helper's first day in an empty book founds the grower's place too.
    const founder = isNewBook && role === "helper" ? nextId(asking.now_ms, random) : person;
    const before = identity;
    identity = { device, person: founder, role: founder === person ? role : "grower" };
    if (command.person === undefined) {
      if (isNewBook && role === "helper") await joined(founder, "grower", asking);
      // Somebody new in a book that has people is let in by whoever held the device before.
      if (!isNewBook && before) identity = before;
      await joined(person, role, asking);
    }
    identity = { device, person, role, ...(card ? { card } : {}) };
    await db.put("meta", identity, "identity");
    return identity;
  }
  const pair = async ({ code, name, asking }: Extract<Command, { do: "pair" }>): Promise<ReplyOf["pair"]> => {
    const newDevice = () => nextId(asking.now_ms, random);
    const become = async (as: Identity) => {
      identity = as;
      await db.put("meta", identity, "identity");
      await loop.now();
      return { hasPeople: book.ledger.house().people.roles.size > 0 };
    };
    const tools = { server, newDevice, become, write: (drafts: readonly Draft[]) => write(drafts, asking) };
    const device = identity?.device ?? newDevice();
    return (await import("./pair.ts")).pairDevice(tools, { code, device, name });
  };
  const joined = (person: string, role: string, asking: Asking) =>
    write([{ kind: "person.joined", on: [person], data: { role } }], asking);

  const handlers: {
    readonly [Name in Exclude<Command["do"], "open">]: (
      command: Extract<Command, { do: Name }>,
    ) => Promise<ReplyOf[Name]> | ReplyOf[Name];
  } = {
    ask: async ({ name, args, asking }) => {
      if (name === "howGood") await issued.read(args as Whose, asking);
      const answer = await book.ask(name, args as never, asking);
      if (name === "round" && (args as AsOf).at_ms === undefined) {
        issued.soon(asking);
        keeper.soon();
        soonLater();
      }
      return answer;
    },
    write: ({ drafts, asking }) => write(drafts, asking),
    be,
    pair,
    "keep file": async ({ sha256, type, bytes }) => {
      await files.put({ sha256, type, bytes, home: 0 });
      loop.soon();
      return true;
    },
    file: async ({ sha256 }) => (await files.get(sha256)) ?? (await fetchFile(sha256)) ?? null,
    forget: async () => {
      db.close();
      await new Promise<void>((resolve, reject) => {
        const gone = indexedDB.deleteDatabase(db.name);
        gone.onsuccess = () => resolve();
        gone.onerror = () => reject(gone.error);
      });
      return true as const;
    },
    "take out": async () => (await import("./take-out.ts")).takeOut(db, BOOK_NAME),
    "bring in": async ({ text, keep, now_ms }) => {
      const { readBrought } = await import("./bring-in.ts");
      const brought = await readBrought(text, acceptedKinds(book.ledger.kinds), (id) => known.has(id));
      const { entries, redacted, ...seen } = brought;
      if (keep) {
        await store.write(entries, now_ms);
        // A redaction among the entries must be here before the shells that it leaves behind.
        if (redacted.length > 0) await store.append({ entries: [], redacted });
        take(entries.map(({ entry }) => entry));
        channel?.postMessage({ texts: entries.map(({ text: line }) => line) });
        await tellMark();
        loop.soon();
      }
      return seen;
    },
    sync: () => loop.now(),
  };

  return {
    opened: async (): Promise<Opened> => {
      // A device that meets a book for the first time waits a moment for it, so that its people can be chosen.
      if (!identity) await loop.now();
      else if (!early) loop.soon();
      else setTimeout(syncSoon, READ_AFTER_ms);
      return { identity, entries_n: (early?.book ?? book).ledger.entries_n };
    },
    async obey(command: Exclude<Command, { do: "open" }>) {
      if (early && command.do === "ask" && isAnsweredEarly(command.name, command.args))
        return early.book.ask(command.name, command.args as never, command.asking);
      await whole();
      return handlers[command.do](command as never);
    },
  };
}

const isFull = (error: unknown) =>
  error instanceof DOMException && (error.name === "QuotaExceededError" || error.name === "UnknownError");
