import { createServer, type Server } from "node:http";
import { createServer as createSecureServer } from "node:https";
import type { AddressInfo } from "node:net";
import { createAdaptorServer } from "@hono/node-server";
import type { Hono } from "hono";
import { isLoopback } from "./guard.ts";

/** The server can't listen where it was asked to. */
export class ListenError extends Error {
  override readonly name = "ListenError";
}

export interface Listening {
  /** As `http://127.0.0.1:7373`. */
  readonly url: string;
  close(): Promise<void>;
}

/** 16 KiB of headers and half a minute for them: a slow stranger can't hold lines open for ever. */
const LIMITS = { headersTimeout: 30_000, requestTimeout: 300_000, maxHeaderSize: 16_384 } as const;

/**
 * Listens on this machine only.
 *
 * @param port 0 for any free one
 * @throws ListenError for any address that others could reach, and when the port is taken
 */
export async function listen(
  app: Hono,
  { port, host = "127.0.0.1" }: { readonly port: number; readonly host?: string },
): Promise<Listening> {
  if (!isLoopback(host))
    throw new ListenError(
      `refusing to listen on ${host}: nobody is asked for a key here, so anybody on the network could read and write the book. Only 127.0.0.1, localhost and ::1 are served`,
    );
  refuseOddPort(port);
  const server = createAdaptorServer({ fetch: app.fetch, createServer, serverOptions: LIMITS }) as Server;
  return started(server, port, host, "http");
}

/**
 * Listens to other machines, by HTTPS alone. Only for an app whose door asks for keys: the caller sees to that.
 *
 * @param port 0 for any free one
 * @throws ListenError when the port is taken
 */
export async function listenAtHome(
  app: Hono,
  {
    port,
    host = "::",
    cert,
    key,
  }: { readonly port: number; readonly host?: string; readonly cert: string; readonly key: string },
): Promise<Listening> {
  refuseOddPort(port);
  const server = createAdaptorServer({
    fetch: app.fetch,
    createServer: createSecureServer,
    serverOptions: { ...LIMITS, cert, key, minVersion: "TLSv1.2" },
  }) as Server;
  return started(server, port, host, "https");
}

function refuseOddPort(port: number): void {
  if (!Number.isInteger(port) || port < 0 || port > 65_535)
    throw new ListenError(`port is ${port}; expected 0 to 65535`);
}

async function started(
  server: Server,
  port: number,
  host: string,
  scheme: "http" | "https",
): Promise<Listening> {
  await new Promise<void>((resolve, reject) => {
    server.once("error", (error: NodeJS.ErrnoException) =>
      reject(
        new ListenError(
          error.code === "EADDRINUSE" ? `port ${port} is taken by another program` : error.message,
        ),
      ),
    );
    server.listen(port, host, resolve);
  });
  const address = server.address() as AddressInfo;
  const name = address.family === "IPv6" ? `[${address.address}]` : address.address;
  return {
    url: `${scheme}://${name}:${address.port}`,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        // Listening pages would keep it open for ever.
        server.closeAllConnections();
      }),
  };
}
