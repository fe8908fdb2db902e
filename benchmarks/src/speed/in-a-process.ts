import { spawn } from "node:child_process";
import { join } from "node:path";
import { bundle } from "../../../tools/build.mjs";
import { root } from "../../../tools/run-program.mjs";
import type { Tasks } from "./child.ts";
import type { PhoneTasks } from "./phone-child.ts";

type AllTasks = Tasks & PhoneTasks;

/** Browser and judge are heavy: only the tasks that need them load them. */
const PHONE_TASKS: readonly (keyof AllTasks)[] = ["phone", "lighthouse"] satisfies (keyof PhoneTasks)[];

/**
 * Builds what is measured as the program is built: a loader of sources wraps every function, which costs time and breaks functions
 * that are sent into a page.
 */
export async function buildChildren(): Promise<void> {
  await bundle("benchmarks", "child.js", "src/speed/child.ts");
  await bundle("benchmarks", "phone-child.js", "src/speed/phone-child.ts");
}

/** Runs a task in a process of its own, as cold as a program that was just started. */
export function inAProcess<Name extends keyof AllTasks>(
  name: Name,
  ...args: Parameters<AllTasks[Name]>
): Promise<Awaited<ReturnType<AllTasks[Name]>>> {
  const file = PHONE_TASKS.includes(name) ? "phone-child.js" : "child.js";
  const words = [join(root, "benchmarks/dist", file), name, JSON.stringify(args)];
  const child = spawn(process.execPath, words, {
    stdio: ["ignore", "pipe", "inherit"],
    env: { ...process.env, SILLWOOD_BENCH_C: join(root, "benchmarks/src/speed") },
  });
  let said = "";
  child.stdout.setEncoding("utf8").on("data", (text: string) => (said += text));
  return new Promise((resolve, reject) => {
    child.on("error", reject);
    child.on("exit", (code) => {
      if (code === 0) resolve(JSON.parse(said) as Awaited<ReturnType<AllTasks[Name]>>);
      else reject(new Error(`measuring ${name} ended with ${code}`));
    });
  });
}
