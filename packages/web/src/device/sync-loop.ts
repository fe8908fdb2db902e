import { type AcceptedEntry, type AcceptedKinds, SyncError, syncOnce } from "@sillwood/bench/book";
import type { Mark } from "../engine/messages.ts";
import type { BookStore } from "./book-store.ts";
import type { FileStore } from "./file-store.ts";
import { CLOSED, NoBook, type Server, UNPAIRED } from "./server.ts";

export interface SyncTools {
  readonly store: BookStore;
  readonly server: Server;
  readonly kinds: AcceptedKinds;
  readonly files: FileStore;
  onArrived(entries: readonly AcceptedEntry[]): void;
  onPass(change: Partial<Mark>): Promise<void>;
}

/** Keeps this device and the server alike without anybody asking. */
export interface Loop {
  /** A pass at once; whether the server answered. */
  now(): Promise<boolean>;
  /** A pass shortly, several wishes in one. */
  soon(): void;
}
export type SyncLoop = (tools: SyncTools) => Loop;

const SOON_ms = 400;
const FIRST_RETRY_ms = 3_000;
const LAST_RETRY_ms = 120_000;

export const syncLoop: SyncLoop = (tools) => {
  let running: Promise<boolean> | undefined;
  let again = false;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let retry_ms = FIRST_RETRY_ms;
  let isListening = false;

  const soon = (after_ms = SOON_ms) => {
    clearTimeout(timer);
    timer = setTimeout(() => void now(), after_ms);
  };
  async function pass(): Promise<boolean> {
    try {
      await oneTab(() => passOnce(tools));
      retry_ms = FIRST_RETRY_ms;
      if (!isListening) {
        isListening = true;
        tools.server.news(() => soon());
      }
      return true;
    } catch (error) {
      if (!isEveryday(error)) console.error(error);
      try {
        await tools.onPass(await afterRefusal(tools, error));
      } catch (closed) {
        // The book of this device was closed under the pass: nothing is left to keep alike, and nothing to try again.
        if (!isClosed(closed)) console.error(closed);
        return false;
      }
      // Jitter, so that a shed full of phones does not knock all at once when the line is back.
      soon(retry_ms * (0.5 + Math.random()));
      retry_ms = Math.min(retry_ms * 2, LAST_RETRY_ms);
      return false;
    }
  }
  async function now(): Promise<boolean> {
    if (running) {
      again = true;
      return running;
    }
    clearTimeout(timer);
    running = pass();
    const answered = await running;
    running = undefined;
    if (again) {
      again = false;
      if (answered) soon();
    }
    return answered;
  }
  globalThis.addEventListener?.("online", () => soon());
  return { now, soon: () => soon() };
};

/** What a refusal means for this device; one that was shut out hands in what it still has, if the server takes it. */
async function afterRefusal(tools: SyncTools, error: unknown): Promise<Partial<Mark>> {
  const status = error instanceof SyncError ? error.status : undefined;
  if (status === UNPAIRED) return { server: "unpaired" };
  if (status !== CLOSED) return { server: "silent" };
  try {
    return { server: "closed", aside_n: await (await import("./shut-out.ts")).handInAll(tools) };
  } catch (silent) {
    if (!isEveryday(silent)) console.error(silent);
    return { server: "closed" };
  }
}

async function passOnce({ store, server, kinds, files, onArrived, onPass }: SyncTools): Promise<void> {
  const transport = await server.transport();
  const before = await store.awayKeys();
  const report = await syncOnce({ store, transport, kinds, now_ms: () => Date.now(), onArrived });
  await store.setAway(report.unnamed, before, Date.now());
  // Entry first, picture later.
  for (const sha256 of await files.away()) {
    const file = await files.get(sha256);
    if (!file) continue;
    await server.putFile(sha256, file.type, file.bytes);
    await files.setHome(sha256);
  }
  await onPass({ server: "answers", ahead_ms: report.ahead_ms, aside_n: report.aside.length });
}

/** Two tabs of one device take turns; where the browser has no locks, both may sync, which costs only traffic. */
function oneTab<Result>(work: () => Promise<Result>): Promise<Result> {
  const locks = (globalThis.navigator as Navigator | undefined)?.locks;
  return locks ? (locks.request("sillwood sync", work) as Promise<Result>) : work();
}

const isClosed = (error: unknown) => error instanceof Error && error.name === "InvalidStateError";

/** No line, a server that is away or busy: an everyday state, not a fault of ours. */
const isEveryday = (error: unknown) =>
  error instanceof TypeError ||
  error instanceof DOMException ||
  error instanceof SyncError ||
  error instanceof NoBook;
