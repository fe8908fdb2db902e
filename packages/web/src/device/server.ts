import { type Fetch, httpTransport, type SyncTransport } from "@sillwood/bench/book";

/** What this device asks of the house's server. Every call may fail; nothing waits for it. */
export interface Server {
  transport(): Promise<SyncTransport>;
  getFile(sha256: string): Promise<{ readonly type: string; readonly bytes: ArrayBuffer } | undefined>;
  putFile(sha256: string, type: string, bytes: ArrayBuffer): Promise<void>;
  /** Calls back whenever the server says that something is new; returns the end of listening. */
  news(onNews: () => void): () => void;
}

/** Something answered, but not as our server does: another program, a portal page, a full disk over there. */
export class NoBook extends Error {
  override readonly name = "NoBook";
}

const PATIENCE_ms = 20_000;

export function serverAt(base: string): Server {
  let book: Promise<string> | undefined;
  const bookAddress = () => {
    book ??= bookOf(base).catch((error) => {
      book = undefined;
      throw error;
    });
    return book;
  };
  return {
    transport: async () => httpTransport(patient as unknown as Fetch, await bookAddress()),
    getFile: async (sha256) => {
      const response = await patient(`${await bookAddress()}/files/${sha256}`, {});
      if (!response.ok) return undefined;
      return {
        type: response.headers.get("content-type") ?? "application/octet-stream",
        bytes: await response.arrayBuffer(),
      };
    },
    putFile: async (sha256, type, bytes) => {
      const response = await patient(`${await bookAddress()}/files/${sha256}`, {
        method: "PUT",
        headers: { "content-type": type },
        body: bytes,
      });
      if (!response.ok) throw new NoBook(`the server did not take file ${sha256}: ${response.status}`);
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

/** A line that died half-way must not hold the next try back. */
const patient = (url: string, init: RequestInit): Promise<Response> =>
  fetch(url, { ...init, signal: AbortSignal.timeout(PATIENCE_ms) });

/** Where the server's book lies. */
async function bookOf(base: string): Promise<string> {
  const response = await patient(`${base}/books`, { headers: { accept: "application/json" } });
  const listed: unknown = response.ok ? await response.json().catch(() => undefined) : undefined;
  const books = (listed as { readonly books?: readonly { readonly id: string }[] } | undefined)?.books;
  const first = books?.[0]?.id;
  if (first === undefined) throw new NoBook("the server names no book");
  return `${base}/books/${encodeURIComponent(first)}`;
}
