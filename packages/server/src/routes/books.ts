import type { Hono } from "hono";
import { tokenCookie, tokenOf } from "../access/token.ts";
import { reader } from "../access/who.ts";
import type { House } from "../house.ts";

/** Which books are here, and whether the server is well. */
export function bookRoutes(app: Hono, house: House): void {
  app.get("/books", async (c) => {
    const entries_n = await house.store.count_n();
    const who = reader(c);
    // Each visit carries the key's cookie on: a browser drops what it was last told to keep so long.
    const token = who.at === "device" ? tokenOf({ get: (name) => c.req.header(name) }) : undefined;
    if (token !== undefined && c.req.header("cookie")) c.header("set-cookie", tokenCookie(token));
    const you =
      who.at === "device" ? { role: who.role, device: who.device, person: who.person } : { role: who.role };
    return c.json({ books: [{ id: house.store.book, entries_n }], you, now_ms: house.now_ms() });
  });
  app.get("/health", async (c) => {
    await house.store.count_n();
    return c.json({ well: true, now_ms: house.now_ms() });
  });
}
