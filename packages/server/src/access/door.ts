import type { EntryStore } from "@sillwood/store/entry-store";
import type { Context, MiddlewareHandler } from "hono";
import { HttpProblem } from "../problem.ts";
import { rateLimit } from "./rate-limit.ts";
import { hashToken, KEPT_d, tokenOf } from "./token.ts";
import { reader, setWho, type Who } from "./who.ts";

/** Which way in this is: this machine's own, where nothing is asked, or one where every device needs a key. */
export type Door = "this machine" | "paired devices";

const SEEN_EVERY_ms = 3_600_000;
/** A device that syncs a whole book asks often; a program gone mad asks more. @source our assumption */
const PER_DEVICE = { burst_n: 400, perSecond_n: 50 };
/** Strangers: enough to load the app and be told to pair. @source our assumption */
const PER_STRANGER = { burst_n: 120, perSecond_n: 2 };

/** Addresses below these hold the book. */
const NEEDS_KEY = /^\/(books|openapi)(\/|\.json$|$)/;

/** Finds out who asks, and lets nobody read the book without a key. */
export function doorKeeper(
  store: EntryStore,
  { door, now_ms }: { readonly door: Door; readonly now_ms: () => number },
): MiddlewareHandler {
  if (door === "this machine")
    return async (c, next) => {
      setWho(c, { at: "this machine", role: "grower" });
      await next();
    };
  const devices = rateLimit(PER_DEVICE);
  const strangers = rateLimit(PER_STRANGER);
  return async (c, next) => {
    const who = await whoComes(c, store, now_ms());
    if (who) setWho(c, who);
    const inside = NEEDS_KEY.test(new URL(c.req.url).pathname);
    if (inside || who === undefined) {
      const wait_s = who
        ? devices.wait_s(who.device, now_ms())
        : inside
          ? strangers.wait_s(addressOf(c), now_ms())
          : undefined;
      if (wait_s !== undefined) throw tooOften(wait_s);
    }
    // What a closed device may still do, its routes decide; everything else below needs an open key.
    if (inside && !(who?.closed && mayHandIn(c))) reader(c);
    await next();
  };
}

/** The two addresses at which a closed device hands in what it has. */
const mayHandIn = (c: Context) =>
  (c.req.method === "POST" && /\/sync\/entries$/.test(c.req.path)) ||
  (c.req.method === "PUT" && /\/files\/[^/]+$/.test(c.req.path));

async function whoComes(
  c: Context,
  store: EntryStore,
  now_ms: number,
): Promise<Extract<Who, { at: "device" }> | undefined> {
  const token = tokenOf({ get: (name) => c.req.header(name) });
  if (token === undefined) return undefined;
  const hash = hashToken(token);
  const key = await store.keys.find(hash);
  if (!key || now_ms - key.seen_ms > KEPT_d * 86_400_000) return undefined;
  if (now_ms - key.seen_ms > SEEN_EVERY_ms) await store.keys.seen(hash, now_ms);
  const { device, person, role } = key;
  return { at: "device", device, person, role, closed: key.closed_ms !== undefined };
}

export const tooOften = (wait_s: number): HttpProblem =>
  new HttpProblem(
    429,
    "too often; wait a little",
    [{ path: "", message: `try again in ${wait_s} s`, value: wait_s, unit: "s" }],
    { "retry-after": String(wait_s) },
  );

/** Whose line a request came over; behind a proxy the one that the proxy names last. */
export function addressOf(c: Context): string {
  const socket = (c.env as { incoming?: { socket?: { remoteAddress?: string } } } | undefined)?.incoming
    ?.socket;
  const direct = socket?.remoteAddress ?? "nowhere";
  const named = c.get("behindProxy" as never)
    ? c.req.header("x-forwarded-for")?.split(",").at(-1)?.trim()
    : "";
  return named || direct;
}
