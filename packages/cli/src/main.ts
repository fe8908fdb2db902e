#!/usr/bin/env node
import { randomFillSync } from "node:crypto";
import { homedir } from "node:os";
import { join } from "node:path";
import { run } from "./run.ts";
import type { Surroundings } from "./surroundings.ts";

const RANDOM_RANGE = 2 ** 32;

function around(): Surroundings {
  const { stdout, stderr, stdin, env } = process;
  const word = new Uint32Array(1);
  return {
    out: (text) => void stdout.write(text),
    err: (text) => void stderr.write(text),
    now_ms: Date.now,
    random: () => (randomFillSync(word)[0] as number) / RANDOM_RANGE,
    env,
    cwd: process.cwd(),
    home: env["SILLWOOD_HOME"] ?? join(homedir(), ".sillwood"),
    zone: Intl.DateTimeFormat().resolvedOptions().timeZone,
    columns_n: stdout.columns ?? 80,
    async input() {
      const pieces: Buffer[] = [];
      for await (const piece of stdin) pieces.push(piece as Buffer);
      return Buffer.concat(pieces).toString("utf8");
    },
    stopped: () =>
      new Promise((resolve) => {
        process.once("SIGINT", () => resolve());
        process.once("SIGTERM", () => resolve());
      }),
  };
}

// A pipe that was closed early (`sillwood book log | head`) is no fault.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code !== "EPIPE") throw error;
});

// Node 20 has no Temporal; the engine asks for it when the first calendar is made.
if (!("Temporal" in globalThis)) await import("temporal-polyfill/global");
process.exitCode = await run(process.argv.slice(2), around());
