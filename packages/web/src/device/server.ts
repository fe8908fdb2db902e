import { type Fetch, httpTransport, SyncError, type SyncTransport } from "@sillwood/bench/book";

/** What this device asks of the house's server. Every call may fail; nothing waits for it. */
export interface Server {
  transport(): Promise<SyncTransport>;
  getFile(sha256: string): Promise<{ readonly type: string; readonly bytes: ArrayBuffer } | undefined>;
  putFile(sha256: string, type: string, bytes: ArrayBuffer): Promise<void>;
  /** Lets this device in by a code; the browser keeps the key where no script sees it. */
  pair(wish: PairWish): Promise<Paired | { readonly refused: number }>;
  /** Calls back whenever the server says that something is new; returns the end of listening. */
  news(onNews: () => void): () => void;
}

export interface PairWish {
  readonly code: string;
  readonly device: string;
  readonly name: string;
}
export interface Paired {
  readonly person: string;
  readonly role: "grower" | "helper" | "viewer";
}

/** Refusals that mean something to a device: it must be paired, or the grower has closed it. */
export const UNPAIRED = 401;
export const CLOSED = 423;

/** Something answered, but not as our server does: another program, a portal page, a full disk over there. */
export class NoBook extends Error {
  override readonly name = "NoBook";
}

const PATIENCE_ms = 20_000;

/** What is remembered of a server between two starts. */
export interface Memory {
  readonly book: string | undefined;
  learned(book: string): void;
}

export function serverAt(base: string, memory: Memory): Server {
  let book: Promise<string> | undefined;
  const bookAddress = () => {
    book ??= bookOf(base, memory).catch((error) => {
      book = undefined;
      throw error;
    });
    return book;
  };
  return {
    transport: async () => httpTransport(patient as unknown as Fetch, await bookAddress()),
    getFile: async (sha256) =>
      (await pieces()).getInPieces(patient, `${await bookAddress()}/files/${sha256}`),
    putFile: async (sha256, type, bytes) => {
      const status = await (await pieces()).putInPieces(
        patient,
        `${await bookAddress()}/files/${sha256}`,
        type,
        bytes,
      );
      if (status !== 201) throw new NoBook(`the server did not take file ${sha256}: ${status}`);
    },
    pair: async (wish) => {
      const response = await patient(`${base}/pair`, {
        method: "POST",
        headers: { "content-type": "application/json" },
        body: JSON.stringify(wish),
      });
      if (!response.ok) return { refused: response.status };
      book = undefined;
      return (await response.json()) as Paired;
    },
    news: (onNews) => {
      let source: EventSource | undefined;
      let over = false;
      void bookAddress().then(
        (address) => {
          if (over) return;
          source = new EventSource(`${address}/news`);
          source.onmessage = onNews;
          source.onopen = onNews;
        },
        () => undefined,
      );
      return () => {
        over = true;
        source?.close();
      };
    },
  };
}

/** Fetched with the first file. */
const pieces = () => import("./pieces.ts");

/** A line that died half-way must not hold the next try back. */
const patient = (url: string, init: RequestInit): Promise<Response> =>
  fetch(url, { ...init, signal: AbortSignal.timeout(PATIENCE_ms) });

/** Where the server's book lies. */
async function bookOf(base: string, memory: Memory): Promise<string> {
  const response = await patient(`${base}/books`, { headers: { accept: "application/json" } });
  const addressOf = (book: string) => `${base}/books/${encodeURIComponent(book)}`;
  // A device that was shut out is told no names; it hands in what it has where it always did.
  if (response.status === CLOSED && memory.book !== undefined) return addressOf(memory.book);
  if (response.status === UNPAIRED || response.status === CLOSED)
    throw new SyncError(response.status, "the server keeps this device out");
  const listed: unknown = response.ok ? await response.json().catch(() => undefined) : undefined;
  const books = (listed as { readonly books?: readonly { readonly id: string }[] } | undefined)?.books;
  const first = books?.[0]?.id;
  if (first === undefined) throw new NoBook("the server names no book");
  memory.learned(first);
  return addressOf(first);
}
