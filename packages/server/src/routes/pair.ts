import { isUuid7 } from "@sillwood/bench/book";
import { roles } from "@sillwood/bench/people";
import type { Hono } from "hono";
import * as v from "valibot";
import { addressOf, tooOften } from "../access/door.ts";
import { isCode } from "../access/pairing.ts";
import { rateLimit } from "../access/rate-limit.ts";
import { hashToken, newToken, noCookie, tokenCookie, tokenOf } from "../access/token.ts";
import { grower } from "../access/who.ts";
import { bookAt, type House } from "../house.ts";
import { HttpProblem } from "../problem.ts";
import { readJson } from "../request-body.ts";

const uuid = (what: string) =>
  v.pipe(v.string(`${what} is not text`), v.check(isUuid7, `${what} is no UUIDv7 in lower case`));

export const codeRequest = v.strictObject({
  person: uuid("person"),
  role: v.picklist(roles, `role is none of ${roles.join(", ")}`),
});
export const pairRequest = v.strictObject({
  code: v.pipe(v.string("code is not text"), v.check(isCode, "code is not 8 digits")),
  device: uuid("device"),
  name: v.pipe(
    v.string("name is not text"),
    v.trim(),
    v.minLength(1, "name is empty"),
    v.maxLength(60, "name is longer than 60 characters"),
  ),
  /** A program that keeps no cookies asks for the key itself. */
  bearer: v.optional(v.boolean("bearer is neither true nor false"), false),
});
export const codeAnswer = v.object({
  code: v.string(),
  until_ms: v.number(),
  address: v.optional(v.string()),
});
export const pairAnswer = v.object({
  book: v.string(),
  person: v.string(),
  role: v.string(),
  key: v.optional(v.string()),
});

/** Wrong codes: one line of the network may try five, all together thirty in ten minutes; of 100 million codes. @source our assumption */
const PER_LINE = { burst_n: 5, perSecond_n: 5 / 600 };
const ALTOGETHER = { burst_n: 30, perSecond_n: 30 / 600 };
const SMALL_B = 4096;

/** Lets a phone in by a code on the grower's screen, and out again. */
export function pairRoutes(app: Hono, house: House): void {
  const line = rateLimit(PER_LINE);
  const altogether = rateLimit(ALTOGETHER);

  app.post("/books/:book/pairing", async (c) => {
    grower(c);
    bookAt(house, c);
    const wanted = await readJson(c, codeRequest, SMALL_B);
    c.header("cache-control", "no-store");
    const made = await house.codes.make(wanted, house.now_ms());
    return c.json({ ...made, ...(house.address === undefined ? {} : { address: house.address }) });
  });

  app.post("/pair", async (c) => {
    const now_ms = house.now_ms();
    // Before the body is read: a try costs its maker something whatever it holds.
    const wait_s = line.wait_s(addressOf(c), now_ms) ?? altogether.wait_s("all", now_ms);
    if (wait_s !== undefined) throw tooOften(wait_s);
    const { code, device, name, bearer } = await readJson(c, pairRequest, SMALL_B);
    const keys = await house.store.keys.list();
    const found = await house.codes.redeem(code, now_ms);
    if (!found)
      throw new HttpProblem(403, "this code is not known or has run out", [
        { path: "code", message: "ask the grower for a new one" },
      ]);
    // Nobody takes over another's device by its name.
    if (keys.some((key) => key.device === device && key.person !== found.person)) {
      const { code: _again, ...kept } = await house.codes.make(found, now_ms, code);
      throw new HttpProblem(409, "this device was another person's; it needs a new name of its own", [
        {
          path: "device",
          message: "belongs to somebody else",
          value: device,
          limit: `until ${kept.until_ms}`,
        },
      ]);
    }
    const token = newToken();
    const key = { hash: hashToken(token), device, ...found, name, made_ms: now_ms, seen_ms: now_ms };
    // A device has one key: the one that it had before is over.
    await house.store.keys.close(device, now_ms);
    await house.store.keys.add(key);
    if (!bearer) c.header("set-cookie", tokenCookie(token));
    c.header("cache-control", "no-store");
    return c.json({ book: house.store.book, ...found, ...(bearer ? { key: token } : {}) });
  });

  app.post("/leave", async (c) => {
    const token = tokenOf({ get: (name) => c.req.header(name) });
    const key = token === undefined ? undefined : await house.store.keys.find(hashToken(token));
    if (key) await house.store.keys.close(key.device, house.now_ms());
    c.header("set-cookie", noCookie);
    return c.body(null, 204);
  });
}
