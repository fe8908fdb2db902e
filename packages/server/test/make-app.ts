import type { KindRegistry } from "@sillwood/bench/book";
import { memoryStore } from "@sillwood/store/memory";
import { testRegistry } from "../../bench/test/entry-maker.ts";
import { type AppOptions, createApp } from "../src/app.ts";

export const BASE = "http://127.0.0.1:7373";

/** A server without a port, and what it would have logged. */
export function makeApp(more: Partial<AppOptions> = {}) {
  const store = more.store ?? memoryStore("main");
  const logged: string[] = [];
  const kinds: KindRegistry = more.kinds ?? testRegistry;
  const app = createApp({
    now_ms: () => 1_790_000_000_000,
    log: (line) => void logged.push(line),
    ...more,
    store,
    kinds,
  });
  const ask = (path: string, init: RequestInit = {}) => app.request(`${BASE}${path}`, init);
  const post = (path: string, body: unknown) =>
    ask(path, {
      method: "POST",
      headers: { "content-type": "application/json" },
      body: JSON.stringify(body),
    });
  return { app, store, logged, ask, post };
}
