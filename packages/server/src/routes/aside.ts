import {
  type AcceptedEntry,
  acceptText,
  isSha256,
  isUuid7,
  refKey,
  SYNC_BATCH_n,
} from "@sillwood/bench/book";
import type { Hono } from "hono";
import * as v from "valibot";
import { closeDevices } from "../access/closings.ts";
import { grower } from "../access/who.ts";
import { bookAt, type House } from "../house.ts";
import { readJson } from "../request-body.ts";

const refs = v.pipe(
  v.array(
    v.strictObject({
      id: v.pipe(v.string(), v.check(isUuid7, "expected a UUIDv7")),
      hash: v.pipe(v.string(), v.check(isSha256, "expected a SHA-256 of 64 lower-case hexadecimal digits")),
    }),
  ),
  v.maxLength(SYNC_BATCH_n, `at most ${SYNC_BATCH_n} names in one call`),
);
export const asideRequest = v.strictObject({ take: v.optional(refs, []), drop: v.optional(refs, []) });
export const asideAnswer = v.object({ taken_n: v.number(), dropped_n: v.number() });

/** What waits for the grower: each may be taken into the book or dropped. */
export function asideRoutes(app: Hono, house: House): void {
  app.get("/books/:book/aside", async (c) => {
    grower(c);
    const store = bookAt(house, c);
    const waiting = await waitingIn(store);
    c.header("cache-control", "no-store");
    return c.json({
      entries: waiting.map(({ text, ...rest }) => ({ ...rest, entry: JSON.parse(text as string) })),
    });
  });

  app.post("/books/:book/aside", async (c) => {
    grower(c);
    const store = bookAt(house, c);
    const { take, drop } = await readJson(c, asideRequest, 256 * 1024);
    const waiting = new Map((await waitingIn(store)).map((one) => [refKey(one), one]));
    const taken: AcceptedEntry[] = [];
    for (const ref of take) {
      const result = acceptText(waiting.get(refKey(ref))?.text ?? "", house.kinds);
      if (result.ok) taken.push(result);
    }
    if (taken.length > 0) {
      await store.append({ entries: taken, redacted: [] });
      await closeDevices(store, taken, house.now_ms());
      // In the book first: a power cut in between leaves it twice, never nowhere.
      for (const { entry, hash } of taken) await store.aside.clear({ id: entry.id, hash });
      house.news.announce();
    }
    const dropped = drop.flatMap((ref) => waiting.get(refKey(ref)) ?? []);
    for (const ref of dropped) await store.aside.drop(ref);
    return c.json({ taken_n: taken.length, dropped_n: dropped.length });
  });
}

/** Those with a text that did not come into the book by another way since. */
async function waitingIn(store: House["store"]) {
  const shelf = (await store.aside.list()).filter(({ text }) => text !== undefined);
  const there = new Set((await store.get(shelf)).map(refKey));
  for (const one of shelf) if (there.has(refKey(one))) await store.aside.clear(one);
  return shelf.filter((one) => !there.has(refKey(one)));
}
