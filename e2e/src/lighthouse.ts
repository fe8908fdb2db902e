import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { existsSync, mkdtempSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import lighthouse from "lighthouse";
import { browserFlags, browserProgram } from "./browser-program.ts";
import { throwAway } from "./throw-away.ts";

type Category = "accessibility" | "best-practices" | "performance";

export interface Marks {
  /** 0 to 100 by category. */
  readonly scores: Readonly<Partial<Record<Category, number>>>;
  /** The audits that cost marks. */
  readonly failing: readonly string[];
}

async function debuggingPort(folder: string, browser: ChildProcess): Promise<number> {
  const file = join(folder, "DevToolsActivePort");
  const until_ms = Date.now() + 30_000;
  while (Date.now() < until_ms && browser.exitCode === null) {
    const port = existsSync(file) ? Number(readFileSync(file, "utf8").split("\n")[0]) : 0;
    if (port > 0) return port;
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  throw new Error("the browser opened no port for Lighthouse");
}

/** Lets Lighthouse judge one page as on a phone, in a fresh browser of the same kind as all other tests use. */
export async function judgePage(
  address: string,
  categories: readonly Category[] = ["accessibility", "best-practices"],
): Promise<Marks> {
  // Lighthouse itself waits half a minute before it says that nobody answers.
  await fetch(address).catch((cause) => {
    throw new Error(`Lighthouse could not judge: nobody answers on ${address}`, { cause });
  });
  const folder = mkdtempSync(join(tmpdir(), "sillwood-lighthouse-"));
  const program = browserProgram();
  const flags = [...browserFlags, "--headless", "--remote-debugging-port=0", `--user-data-dir=${folder}`];
  const browser = spawn(program.path, [...flags, "about:blank"], {
    env: { ...process.env, ...program.env },
    stdio: "ignore",
    // A group of its own, so that its helpers can be ended with it.
    detached: process.platform !== "win32",
  });
  try {
    const port = await debuggingPort(folder, browser);
    const run = await lighthouse(address, {
      port,
      onlyCategories: [...categories],
      logLevel: "error",
      output: "json",
    });
    if (!run || run.lhr.runtimeError)
      throw new Error(`Lighthouse could not judge: ${run?.lhr.runtimeError?.message ?? "no result"}`);
    const { lhr } = run;
    const scores = Object.fromEntries(
      categories.map((name) => [name, Math.round((lhr.categories[name]?.score ?? 0) * 100)]),
    );
    const failing = Object.values(lhr.audits)
      .filter((audit) => audit.score !== null && audit.score < 0.9)
      .map((audit) => `${audit.id}: ${audit.title}`);
    return { scores, failing };
  } finally {
    const gone = once(browser, "exit");
    if (browser.exitCode === null && browser.signalCode === null && browser.pid !== undefined) {
      process.kill(process.platform === "win32" ? browser.pid : -browser.pid, "SIGKILL");
      await gone;
    }
    await throwAway(folder);
  }
}
