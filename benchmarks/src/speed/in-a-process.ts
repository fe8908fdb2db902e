import { spawn } from "node:child_process";
import { join } from "node:path";
import { bundle } from "../../../tools/build.mjs";
import { root } from "../../../tools/run-program.mjs";
import type { Tasks } from "./child.ts";

const BUILT = "child.js";

/** Builds what is measured as the program is built: a loader of sources wraps every function, and the wrapping would be measured. */
export const buildChild = (): Promise<void> => bundle("benchmarks", BUILT, "src/speed/child.ts");

/** Runs a task in a process of its own, as cold as a program that was just started. */
export function inAProcess<Name extends keyof Tasks>(
  name: Name,
  ...args: Parameters<Tasks[Name]>
): Promise<Awaited<ReturnType<Tasks[Name]>>> {
  const child = spawn(process.execPath, [join(root, "benchmarks/dist", BUILT), name, JSON.stringify(args)], {
    stdio: ["ignore", "pipe", "inherit"],
    env: { ...process.env, SILLWOOD_BENCH_C: join(root, "benchmarks/src/speed/reference-et.c") },
  });
  let said = "";
  child.stdout.setEncoding("utf8").on("data", (text: string) => (said += text));
  return new Promise((resolve, reject) => {
    child.on("error", reject);
    child.on("exit", (code) => {
      if (code === 0) resolve(JSON.parse(said) as Awaited<ReturnType<Tasks[Name]>>);
      else reject(new Error(`measuring ${name} ended with ${code}`));
    });
  });
}
