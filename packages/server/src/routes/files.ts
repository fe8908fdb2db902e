import { isSha256 } from "@sillwood/bench/book";
import { FILE_MAX_B } from "@sillwood/store/entry-store";
import type { Context, Hono } from "hono";
import { bookAt, type House } from "../house.ts";
import { HttpProblem } from "../problem.ts";
import { bodyPieces } from "../request-body.ts";

/** What may be put: pictures that a browser shows, and parts of series. Nothing that runs. */
export const FILE_TYPES = ["image/jpeg", "image/png", "image/webp", "text/csv"] as const;

/** Photos and parts of series by content hash. A file never changes, so it may be kept for ever. */
export function fileRoutes(app: Hono, house: House): void {
  app.put("/books/:book/files/:hash", async (c) => {
    const store = bookAt(house, c);
    const hash = hashAt(c);
    const type = typeAt(c);
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
    if (c.req.method === "HEAD") return c.body(null, 200, headers);
    return c.body(streamOf(file.pieces), 200, headers);
  });
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
