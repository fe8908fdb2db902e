// npm test [-- arguments of vitest]: every test of the house, from a fresh clone.
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build, plainly, running } from "./build.mjs";
import { installWhenNeeded } from "./install.mjs";
import { browserTrouble, postgresTrouble, refuse, requirePrograms } from "./requirements.mjs";
import { root, runNode } from "./run-program.mjs";
import { tally } from "./tally.mjs";

const start_ms = Date.now();
const took = () => `${((Date.now() - start_ms) / 60_000).toFixed(1)} min`;

requirePrograms();
await installWhenNeeded();
const words = process.argv.slice(2);
const withoutBrowser = /--project[= ]unit\b/.test(words.join(" "));
const trouble = (withoutBrowser ? undefined : browserTrouble()) ?? postgresTrouble();
if (trouble) refuse(trouble);
if (!withoutBrowser) {
  try {
    await build(running, { ifStale: true });
  } catch (error) {
    refuse(`Building what the browser tests need failed: ${plainly(error)}`);
  }
}

const folder = mkdtempSync(join(tmpdir(), "sillwood-test-"));
const file = join(folder, "results.json");
const vitest = join(root, "node_modules/vitest/vitest.mjs");
const reporters = ["--reporter=default", "--reporter=json", `--outputFile.json=${file}`];
const code = await runNode([vitest, "run", ...reporters, ...words]);

let results;
try {
  results = JSON.parse(readFileSync(file, "utf8"));
} catch {
  results = undefined;
}
rmSync(folder, { recursive: true, force: true });

const { passed, failed, skipped, slowest } = tally(results, code);
console.log(`\nSlowest files: ${slowest.join(", ")}`);
console.log(`Took ${took()} with Node ${process.versions.node} on ${process.platform} ${process.arch}.`);
console.log(`${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ""}`);
process.exit(failed > 0 ? 1 : 0);
