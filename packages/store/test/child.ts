import { type ChildProcess, spawn } from "node:child_process";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("../../..", import.meta.url));

/** Starts a TypeScript program of this repository as a process of its own. */
export function startChild(
  program: string,
  args: readonly string[],
  as?: { uid: number; gid: number },
): ChildProcess {
  const flags = ["--conditions=source", "--import", "tsx", fileURLToPath(new URL(program, import.meta.url))];
  return spawn(process.execPath, [...flags, ...args], {
    cwd: root,
    stdio: ["ignore", "pipe", "pipe"],
    ...as,
  });
}

/** Lines that a process prints, until it ends; `seen` is called with each. */
export function linesOf(
  child: ChildProcess,
  seen: (line: string) => void,
): Promise<{ code: number | null; errors: string }> {
  let rest = "";
  let errors = "";
  child.stdout?.on("data", (piece) => {
    const lines = (rest + piece).split("\n");
    rest = lines.pop() ?? "";
    for (const line of lines) seen(line);
  });
  child.stderr?.on("data", (piece) => {
    errors += piece;
  });
  return new Promise((resolve) => child.on("close", (code) => resolve({ code, errors })));
}
