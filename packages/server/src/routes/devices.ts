import type { Hono } from "hono";
import { grower } from "../access/who.ts";
import { bookAt, type House } from "../house.ts";

/** Which devices are paired: for the grower's screen. That one was closed is an entry of the book; see access/closings.ts. */
export function deviceRoutes(app: Hono, house: House): void {
  app.get("/books/:book/devices", async (c) => {
    grower(c);
    const keys = await bookAt(house, c).keys.list();
    // The newest key of a device says how it stands.
    const latest = new Map(keys.map(({ hash: _secret, ...key }) => [key.device, key]));
    c.header("cache-control", "no-store");
    return c.json({
      devices: [...latest.values()],
      ...(house.address === undefined ? {} : { address: house.address }),
    });
  });
}
