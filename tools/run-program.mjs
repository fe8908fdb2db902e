import { spawn, spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";

/** The folder of the whole house, wherever the command was called from. */
export const root = fileURLToPath(new URL("..", import.meta.url));

/** Runs a program with its output on the terminal; resolves to its exit code (a signal counts as failure). */
export function runProgram(command, args, { env = {}, cwd = root } = {}) {
  return new Promise((resolve) => {
    const child = spawn(command, args, {
      cwd,
      stdio: ["ignore", "inherit", "inherit"],
      env: { ...process.env, ...env },
      // npm is a .cmd file on Windows and can only be started through the shell there.
      shell: process.platform === "win32" && command === "npm",
    });
    child.on("error", (error) => {
      console.error(`${command} could not be started: ${error.message}`);
      resolve(127);
    });
    child.on("exit", (code) => resolve(code ?? 1));
  });
}

/** Runs a script of an installed package or of the house with this very Node. */
export const runNode = (args, options) => runProgram(process.execPath, args, options);

/** Asks a program for one line, such as its version; undefined when it is missing or fails. */
export function askProgram(command, args) {
  const answer = spawnSync(command, args, { encoding: "utf8", shell: process.platform === "win32" });
  if (answer.error || answer.status !== 0) return undefined;
  return `${answer.stdout}${answer.stderr}`.trim().split("\n")[0];
}
