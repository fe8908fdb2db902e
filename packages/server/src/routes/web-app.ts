import { createHash } from "node:crypto";
import { readFile, stat } from "node:fs/promises";
import { extname, join, normalize, sep } from "node:path";
import type { Context, Hono } from "hono";
import { HttpProblem } from "../problem.ts";

const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json",
  ".webmanifest": "application/manifest+json",
  ".map": "application/json",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".ico": "image/x-icon",
  ".woff2": "font/woff2",
  ".wasm": "application/wasm",
  ".txt": "text/plain; charset=utf-8",
};

/** The built web app. Files with a hash in their name are kept for ever, all others asked for each time; a page that is no file is the app itself. */
export function webAppRoute(app: Hono, folder: string): void {
  app.get("*", async (c) => {
    const path = pathInside(folder, new URL(c.req.url).pathname);
    if (path === undefined) throw new HttpProblem(404, "there is nothing here");
    return (await fileAnswer(c, path)) ?? (await pageAnswer(c, folder));
  });
}

async function pageAnswer(c: Context, folder: string): Promise<Response> {
  // A missing script must be missing, not a page that parses as neither.
  const wantsPage =
    extname(new URL(c.req.url).pathname) === "" &&
    (c.req.header("accept") ?? "*/*").match(/text\/html|\*\/\*/);
  const page = wantsPage ? await fileAnswer(c, join(folder, "index.html")) : undefined;
  if (!page) throw new HttpProblem(404, "there is nothing here");
  return page;
}

async function fileAnswer(c: Context, path: string): Promise<Response | undefined> {
  const found = await stat(path).catch(() => undefined);
  if (!found?.isFile()) return undefined;
  const packed = takesBrotli(c) ? await readFile(`${path}.br`).catch(() => undefined) : undefined;
  const bytes = packed ?? (await readFile(path));
  const etag = `"${createHash("sha256").update(bytes).digest("base64url").slice(0, 22)}"`;
  const headers = {
    "content-type": TYPES[extname(path).toLowerCase()] ?? "application/octet-stream",
    "cache-control": isHashed(path) ? "public, max-age=31536000, immutable" : "no-cache",
    etag,
    vary: "accept-encoding",
    ...(packed ? { "content-encoding": "br" } : {}),
  };
  if (c.req.header("if-none-match") === etag) return c.body(null, 304, headers);
  return c.body(bytes, 200, headers);
}

/** Whether the visitor takes files as `tools/pack-assets.mjs` packs them (RFC 9110, 12.5.3). */
const takesBrotli = (c: Context) =>
  (c.req.header("accept-encoding") ?? "")
    .split(",")
    .some((coding) => /^\s*br\s*(;\s*q\s*=\s*(1|0?\.0*[1-9])|$)/i.test(coding));

/** Vite writes `assets/name-hash.js`. */
const isHashed = (path: string) => /[\\/]assets[\\/].*-[\w-]{8}\.\w+$/.test(path);

/** A file below the folder, whatever the address tries; undefined for anything else. */
function pathInside(folder: string, pathname: string): string | undefined {
  let decoded: string;
  try {
    decoded = decodeURIComponent(pathname);
  } catch {
    return undefined;
  }
  // Nothing hidden is ever served: what begins with a dot is somebody's tools, not the app.
  if (decoded.includes("\0") || /[\\/]\./.test(decoded)) return undefined;
  const path = normalize(join(folder, decoded));
  const root = normalize(folder);
  return path === root || path.startsWith(root.endsWith(sep) ? root : root + sep) ? path : undefined;
}
