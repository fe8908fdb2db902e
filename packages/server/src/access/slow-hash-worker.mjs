// Hashes short secrets slowly, beside the thread that answers: a plain module, so that it starts the same from source and when built.
import { parentPort } from "node:worker_threads";
import { argon2id } from "hash-wasm";

// 19 MiB, 2 passes, 1 lane: the least that the OWASP Password Storage Cheat Sheet asks of Argon2id.
const COST = { memorySize: 19_456, iterations: 2, parallelism: 1, hashLength: 32, outputType: "hex" };

parentPort.on("message", async ({ id, secret, salt }) => {
  try {
    parentPort.postMessage({ id, hash: await argon2id({ password: secret, salt, ...COST }) });
  } catch (error) {
    parentPort.postMessage({ id, failed: String(error?.message ?? error) });
  }
});
