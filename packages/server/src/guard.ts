import type { MiddlewareHandler } from "hono";
import { HttpProblem } from "./problem.ts";

/** Names under which this machine reaches itself. */
const LOOPBACK = new Set(["127.0.0.1", "localhost", "[::1]"]);

/** Whether an address to listen on stays inside this machine. */
export const isLoopback = (host: string): boolean => LOOPBACK.has(host) || host === "::1";

/**
 * Lets in only what was sent to this machine by its own name, and writes only from pages of this very server.
 * The first stops a stranger's name that has been pointed at 127.0.0.1 (DNS rebinding), the second a stranger's page in the
 * same browser (request forgery). Neither knows who sits at the keyboard: whoever can use this machine can use the book.
 *
 * @param origins further origins whose pages may write, as that of a development server
 */
export function guard(origins: readonly string[]): MiddlewareHandler {
  return async (c, next) => {
    const url = new URL(c.req.url);
    const host = c.req.header("host") ?? url.host;
    if (host !== url.host || !LOOPBACK.has(url.hostname))
      throw new HttpProblem(421, "this server answers only to its own name on this machine", [
        {
          path: "host",
          message: "is another name",
          value: host.slice(0, 200),
          limit: [...LOOPBACK].join(", "),
        },
      ]);
    const origin = c.req.header("origin");
    if (origin !== undefined && origin !== url.origin && !origins.includes(origin))
      throw new HttpProblem(403, "pages of other origins may not use this server", [
        { path: "origin", message: "is another origin", value: origin.slice(0, 200), limit: url.origin },
      ]);
    const site = c.req.header("sec-fetch-site");
    const reads = c.req.method === "GET" || c.req.method === "HEAD";
    if (!reads && origin === undefined && site !== undefined && site !== "same-origin" && site !== "none")
      throw new HttpProblem(403, "pages of other origins may not use this server", [
        {
          path: "sec-fetch-site",
          message: "is another site",
          value: site.slice(0, 200),
          limit: "same-origin",
        },
      ]);
    await next();
  };
}
