import "fake-indexeddb/auto";
import type { SyncTransport } from "@sillwood/bench/book";
import { openBookDb } from "../device/book-db.ts";
import { bookStore } from "../device/book-store.ts";
import type { Server } from "../device/server.ts";
import { syncLoop } from "../device/sync-loop.ts";
import { newBook } from "./book.ts";
import { clerkOf } from "./clerk.ts";
import type { FromEngine, Mark } from "./messages.ts";
import type { Asking } from "./questions.ts";

export const MORNING_ms = Date.UTC(2026, 0, 14, 7, 30);
export const asking = (now_ms = MORNING_ms): Asking => ({
  now_ms,
  language: "en",
  units: "metric",
  zone: "Europe/London",
});

/** Numbers that look drawn and are the same every time. */
function drawer(seed = 1): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}

/** A server over another device's store; `isUp` is its plug. */
export function trialServer(transport: () => SyncTransport, plug: { isUp: boolean }): Server {
  const up = () => {
    if (!plug.isUp) throw new TypeError("failed to fetch");
  };
  return {
    transport: async () => {
      up();
      return transport();
    },
    getFile: async () => undefined,
    putFile: async () => up(),
    pair: async () => {
      up();
      return { refused: 404 };
    },
    news: () => () => undefined,
  };
}

/** A device with its clerk, on a database of the given name. */
export async function trialClerk(name: string, server: Server, seed = 1) {
  const db = await openBookDb(name);
  const news: FromEngine[] = [];
  const random = drawer(seed);
  const store = bookStore(db);
  const book = newBook(asking(), random);
  const clerk = await clerkOf({
    db,
    store,
    server,
    book,
    random,
    asking: asking(),
    loop: syncLoop,
    tell: (one) => news.push(one),
  });
  const mark = (): Mark | undefined =>
    news.flatMap((one) => ("news" in one && one.news === "mark" ? [one.mark] : [])).at(-1);
  return { db, store, book, clerk, mark };
}
