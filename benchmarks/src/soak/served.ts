import type { ChildProcess } from "node:child_process";
import { linesOf, startChild } from "../../../packages/store/test/child.ts";

/** A server in a process of its own. */
export interface Served {
  readonly child: ChildProcess;
  readonly own: string;
  readonly outer: string;
  /** Resolves when it has ended. */
  readonly ended: Promise<{ readonly errors: string }>;
  kill(): void;
}

/** Starts a server on a book: a file, or `postgres://…`. */
export async function serve(
  place: string,
  { planted, crowd_n }: { readonly planted?: "forgets" | undefined; readonly crowd_n?: number } = {},
): Promise<Served> {
  if (planted) process.env["PLANTED"] = planted;
  if (crowd_n) process.env["CROWD"] = String(crowd_n);
  const child = startChild("../../../benchmarks/src/soak/serve-child.ts", [place]);
  delete process.env["PLANTED"];
  delete process.env["CROWD"];
  const lines: string[] = [];
  let ready: () => void = () => undefined;
  const listening = new Promise<void>((resolve) => {
    ready = resolve;
  });
  const ended = linesOf(child, (line) => {
    lines.push(line);
    if (lines.length === 2) ready();
  });
  const early = ended.then(({ errors }) => {
    if (lines.length < 2) throw new Error(`the server did not start: ${errors.slice(0, 2000)}`);
  });
  await Promise.race([listening, early]);
  early.catch(() => undefined);
  return {
    child,
    own: lines[0] as string,
    outer: lines[1] as string,
    ended,
    kill: () => void child.kill("SIGKILL"),
  };
}
