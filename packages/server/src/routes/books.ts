import type { Hono } from "hono";
import type { House } from "../house.ts";

/** Which books are here, and whether the server is well. */
export function bookRoutes(app: Hono, house: House): void {
  app.get("/books", async (c) => {
    const entries_n = await house.store.count_n();
    return c.json({ books: [{ id: house.store.book, entries_n }], now_ms: house.now_ms() });
  });
  app.get("/health", async (c) => {
    await house.store.count_n();
    return c.json({ well: true, now_ms: house.now_ms() });
  });
}
