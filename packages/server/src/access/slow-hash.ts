import { Worker } from "node:worker_threads";

/** Argon2id of a short secret, in a thread of its own so that nobody else waits for it. */
export interface SlowHash {
  hash(secret: string, salt: Uint8Array): Promise<string>;
  close(): Promise<void>;
}

// Not written as one text, which a bundler would take for a file of the web.
const WORKER = ["slow-hash-worker", "mjs"].join(".");

/** Starts its thread with the first secret; the thread keeps no process alive. */
export function slowHash(): SlowHash {
  let worker: Worker | undefined;
  let next_n = 0;
  const waiting = new Map<number, { resolve(hash: string): void; reject(error: Error): void }>();
  const start = () => {
    const started = new Worker(new URL(WORKER, import.meta.url), { execArgv: [] });
    started.unref();
    started.on("message", ({ id, hash, failed }: { id: number; hash?: string; failed?: string }) => {
      const asked = waiting.get(id);
      waiting.delete(id);
      if (hash === undefined) asked?.reject(new Error(`the hash failed: ${failed}`));
      else asked?.resolve(hash);
    });
    const gone = (error: Error) => {
      worker = undefined;
      for (const { reject } of waiting.values()) reject(error);
      waiting.clear();
    };
    started.on("error", gone);
    started.on("exit", () => gone(new Error("the hashing thread ended")));
    return started;
  };
  return {
    hash: (secret, salt) =>
      new Promise((resolve, reject) => {
        worker ??= start();
        const id = next_n++;
        waiting.set(id, { resolve, reject });
        worker.postMessage({ id, secret, salt });
      }),
    async close() {
      await worker?.terminate();
    },
  };
}
