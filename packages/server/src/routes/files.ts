import { isSha256 } from "@sillwood/bench/book";
import { type EntryStore, FILE_MAX_B } from "@sillwood/store/entry-store";
import type { Context, Hono } from "hono";
import { reader, whoOf } from "../access/who.ts";
import { bookAt, type House } from "../house.ts";
import { HttpProblem } from "../problem.ts";
import { bodyPieces } from "../request-body.ts";
import { type Halves, halves } from "./halves.ts";

/** What may be put: pictures that a browser shows, and parts of series. Nothing that runs. */
export const FILE_TYPES = ["image/jpeg", "image/png", "image/webp", "text/csv"] as const;

/** Photos and parts of series by content hash. A file never changes, so it may be kept for ever. */
export function fileRoutes(app: Hono, house: House): void {
  const begun = halves(house.now_ms);
  app.put("/books/:book/files/:hash", async (c) => {
    const store = bookAt(house, c);
    const hash = hashAt(c);
    await mayPut(store, c, hash);
    const type = typeAt(c);
    const range = c.req.header("content-range");
    if (range !== undefined) return putPiece(c, store, begun, { hash, type, range });
    const file = await store.files.put(hash, type, bodyPieces(c, FILE_MAX_B));
    return c.json(file, 201);
  });

  app.get("/books/:book/files/:hash", async (c) => {
    const store = bookAt(house, c);
    const hash = hashAt(c);
    const file = await store.files.get(hash);
    if (!file)
      throw new HttpProblem(404, "this file is not here yet", [
        { path: "hash", message: "is not known", value: hash },
      ]);
    const headers = {
      "content-type": file.type,
      "content-length": String(file.size_B),
      "cache-control": "private, max-age=31536000, immutable",
      etag: `"${hash}"`,
      // Even a picture that is something else in disguise can do nothing.
      "content-security-policy": "default-src 'none'; sandbox; frame-ancestors 'none'",
    };
    if (c.req.header("if-none-match") === headers.etag) return c.body(null, 304, { etag: headers.etag });
    const part = partOf(c.req.header("range"), file.size_B);
    if (c.req.method === "HEAD") return c.body(null, 200, { ...headers, "accept-ranges": "bytes" });
    if (part === undefined)
      return c.body(streamOf(file.pieces), 200, { ...headers, "accept-ranges": "bytes" });
    return c.body(streamOf(slice(file.pieces, part)), 206, {
      ...headers,
      "content-length": String(part.until_B - part.from_B),
      "content-range": `bytes ${part.from_B}-${part.until_B - 1}/${file.size_B}`,
    });
  });
}

interface Part {
  readonly from_B: number;
  readonly until_B: number;
}

/** One range of bytes (RFC 9110), so that a photo goes on where its line broke; anything else is answered whole. */
function partOf(header: string | undefined, size_B: number): Part | undefined {
  const [, from = "", to = ""] = /^bytes=(\d{1,12})-(\d{0,12})$/.exec(header ?? "") ?? [];
  if (from === "") return undefined;
  const from_B = Number(from);
  const until_B = to === "" ? size_B : Math.min(size_B, Number(to) + 1);
  if (from_B >= until_B)
    throw new HttpProblem(
      416,
      "there are no such bytes in this file",
      [{ path: "range", message: "is outside", value: from_B, limit: `<${size_B}`, unit: "B" }],
      { "content-range": `bytes */${size_B}` },
    );
  return { from_B, until_B };
}

async function* slice(
  pieces: AsyncIterable<Uint8Array>,
  { from_B, until_B }: Part,
): AsyncGenerator<Uint8Array> {
  let at_B = 0;
  for await (const piece of pieces) {
    const cut = piece.subarray(Math.max(0, from_B - at_B), Math.max(0, until_B - at_B));
    at_B += piece.length;
    if (cut.length > 0) yield cut;
    if (at_B >= until_B) return;
  }
}

/** One piece of a file that comes in several. The answer says how much is here, so that a phone goes on from there. */
async function putPiece(
  c: Context,
  store: EntryStore,
  begun: Halves,
  { hash, type, range }: { readonly hash: string; readonly type: string; readonly range: string },
): Promise<Response> {
  const there = await store.files.has(hash);
  if (there) return c.json(there, 201);
  const [, from = "", to = "", size = ""] = /^bytes (\d{1,9})-(\d{1,9})\/(\d{1,9})$/.exec(range) ?? [];
  const [from_B, until_B, size_B] = [Number(from), Number(to) + 1, Number(size)];
  if (from === "" || from_B >= until_B || until_B > size_B || size_B > FILE_MAX_B)
    throw new HttpProblem(422, "this is no piece of a file that is kept here", [
      {
        path: "content-range",
        message: "is no range within it",
        value: range.slice(0, 100),
        limit: `bytes A-B/SIZE, SIZE <= ${FILE_MAX_B}`,
        unit: "B",
      },
    ]);
  const have_B = await begun.add(hash, { from_B, until_B, size_B }, bodyPieces(c, until_B - from_B));
  if (have_B < size_B) return c.json({ have_B }, have_B >= until_B ? 202 : 409);
  const file = await store.files.put(hash, type, begun.take(hash));
  return c.json(file, 201);
}

/** A viewer adds nothing; a closed device only what an entry that it handed in names. */
async function mayPut(store: EntryStore, c: Context, hash: string): Promise<void> {
  const who = whoOf(c);
  if (who?.at !== "device") return;
  if (who.closed) {
    const waits = (await store.aside.list()).some(
      ({ device, text }) => device === who.device && text?.includes(hash),
    );
    if (!waits) reader(c);
  } else if (who.role === "viewer")
    throw new HttpProblem(403, "a viewer adds nothing to the book", [
      { path: "role", message: "is not enough", value: who.role, limit: "grower or helper" },
    ]);
}

function hashAt(c: Context): string {
  const hash = c.req.param("hash") ?? "";
  if (!isSha256(hash))
    throw new HttpProblem(422, "a file is named by its SHA-256", [
      {
        path: "hash",
        message: "is no SHA-256",
        value: hash.slice(0, 100),
        limit: "64 lower-case hexadecimal digits",
      },
    ]);
  return hash;
}

function typeAt(c: Context): string {
  const type = c.req.header("content-type")?.split(";")[0]?.trim().toLowerCase() ?? "";
  if (!(FILE_TYPES as readonly string[]).includes(type))
    throw new HttpProblem(415, "only pictures and parts of series are kept", [
      {
        path: "content-type",
        message: "is another type",
        value: type.slice(0, 100),
        limit: FILE_TYPES.join(", "),
      },
    ]);
  return type;
}

function streamOf(pieces: AsyncIterable<Uint8Array>): ReadableStream<Uint8Array> {
  const iterator = pieces[Symbol.asyncIterator]();
  return new ReadableStream({
    async pull(controller) {
      const { done, value } = await iterator.next();
      if (done) controller.close();
      else controller.enqueue(value);
    },
    async cancel() {
      await iterator.return?.();
    },
  });
}
