// node tools/run.mjs FILE.ts ...: runs a TypeScript file of the house; own packages are read from source.
import { spawn } from "node:child_process";
import { existsSync } from "node:fs";
import { constants } from "node:os";

const [file, ...args] = process.argv.slice(2);
if (!file) {
  console.error("usage: node tools/run.mjs FILE.ts [arguments]");
  process.exit(2);
}
if (!existsSync(file)) {
  console.error(`there is no file ${file}`);
  process.exit(2);
}
const child = spawn(
  process.execPath,
  ["--conditions=source", "--expose-gc", "--import", import.meta.resolve("tsx"), file, ...args],
  {
    stdio: "inherit",
  },
);
child.on("exit", (code, signal) => process.exit(code ?? 128 + (constants.signals[signal] ?? 0)));
