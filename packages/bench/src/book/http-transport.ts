import type { SyncTransport } from "./sync.ts";

/** The part of `fetch` that sync needs; browser and Node bring it. */
export type Fetch = (
  url: string,
  init: { readonly method: "POST"; readonly headers: Record<string, string>; readonly body: string },
) => Promise<{ readonly ok: boolean; readonly status: number; text(): Promise<string> }>;

/** The server answered, but not with what was asked for. `retry` tells whether asking again later may help. */
export class SyncError extends Error {
  override readonly name = "SyncError";
  readonly status: number;
  readonly retry: boolean;
  constructor(status: number, message: string) {
    super(message);
    this.status = status;
    this.retry = status >= 500 || status === 408 || status === 429;
  }
}

/**
 * The three calls over HTTP.
 *
 * @param base where the book lies, as `http://127.0.0.1:7373/books/main`
 * @throws SyncError (from the calls) on any answer but 2xx with JSON; network errors pass through
 */
export function httpTransport(fetch: Fetch, base: string): SyncTransport {
  const post = async (path: string, body: string) => {
    const headers = { "content-type": "application/json", accept: "application/json" };
    const response = await fetch(`${base}/sync/${path}`, { method: "POST", headers, body });
    const text = await response.text();
    if (!response.ok)
      throw new SyncError(response.status, `${path}: ${response.status} ${text.slice(0, 500)}`);
    try {
      return JSON.parse(text);
    } catch {
      // A captive portal or a proxy answers 200 with a page.
      throw new SyncError(502, `${path}: the answer is no JSON: ${text.slice(0, 100)}`);
    }
  };
  return {
    summary: (mine) => post("summary", JSON.stringify({ summary: mine })),
    // The texts are JSON already; parsing them only to print them again would cost a phone its battery.
    entries: (texts, redacted) =>
      post("entries", `{"entries":[${texts.join(",")}],"redacted":${JSON.stringify(redacted)}}`),
    fetch: (refs) => post("fetch", JSON.stringify({ refs })),
  };
}
