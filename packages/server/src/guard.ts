import type { MiddlewareHandler } from "hono";
import { HttpProblem } from "./problem.ts";

/** Names under which this machine reaches itself. */
const LOOPBACK = new Set(["127.0.0.1", "localhost", "[::1]"]);

/** Whether an address to listen on stays inside this machine. */
export const isLoopback = (host: string): boolean => LOOPBACK.has(host) || host === "::1";

/** How this server may be called, and from where pages may write. */
export interface Names {
  /** Host names, without a port; this machine's own when left out. */
  readonly hosts?: readonly string[];
  /** Further origins whose pages may write, as that of a development server or the one that a proxy answers to. */
  readonly origins?: readonly string[];
}

/**
 * Lets in only what was sent to this server by a name of its own, and writes only from its own pages.
 * The first stops a stranger's name that has been pointed at this machine (DNS rebinding), the second a stranger's page in the
 * same browser (request forgery). Who sits at the keyboard is the door keeper's question.
 */
export function guard({ hosts = [...LOOPBACK], origins = [] }: Names): MiddlewareHandler {
  const own = new Set(hosts.map((host) => (/^[^[].*:/.test(host) ? `[${host}]` : host)));
  return async (c, next) => {
    const url = new URL(c.req.url);
    const host = c.req.header("host") ?? url.host;
    if (host !== url.host || !own.has(url.hostname))
      throw new HttpProblem(421, "this server answers only to its own names", [
        {
          path: "host",
          message: "is another name",
          value: host.slice(0, 200),
          limit: [...own].join(", "),
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
