import { once } from "node:events";
import { type AddressInfo, connect, createServer, type Socket } from "node:net";

/** One phone's line to the house, which can be cut for this phone alone. It carries bytes and knows nothing of them. */
export interface Line {
  readonly port: number;
  cut(): void;
  mend(): void;
  close(): Promise<void>;
}

/** Lays a line to a port of loopback. */
export async function layLine(to: number): Promise<Line> {
  let isWhole = true;
  const sockets = new Set<Socket>();
  const server = createServer((near) => {
    if (!isWhole) return void near.destroy();
    const far = connect(to, "127.0.0.1");
    for (const [one, other] of [
      [near, far],
      [far, near],
    ] as const) {
      sockets.add(one);
      one.pipe(other);
      one.on("error", () => other.destroy());
      one.on("close", () => {
        sockets.delete(one);
        other.destroy();
      });
    }
  }).listen(0, "127.0.0.1");
  await once(server, "listening");
  const destroyAll = () => {
    for (const socket of sockets) socket.destroy();
  };
  return {
    port: (server.address() as AddressInfo).port,
    cut() {
      isWhole = false;
      destroyAll();
    },
    mend() {
      isWhole = true;
    },
    async close() {
      destroyAll();
      server.close();
    },
  };
}
