// npm run check [-- STEP ...]: everything that can be judged without running the house.
import { existsSync, mkdirSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { root, runNode } from "./run-program.mjs";

const installed = (path) => join(root, "node_modules", path);
const typescript = installed("typescript/bin/tsc");

/** The whole house at once, then each workspace that allows itself less (no DOM, no Node) under its own rules. */
async function types() {
  mkdirSync(installed(".cache/sillwood"), { recursive: true });
  const folders = readdirSync(join(root, "packages")).map((name) => `packages/${name}`);
  const workspaces = [".", ...folders, "checks", "simulator", "benchmarks", "e2e", "tools"];
  let worst = 0;
  for (const folder of workspaces.filter((each) => existsSync(join(root, each, "tsconfig.json")))) {
    const memory = installed(`.cache/sillwood/${folder.replace(/\W/g, "-")}.tsbuildinfo`);
    const code = await runNode([
      typescript,
      "-p",
      folder,
      "--noEmit",
      "--incremental",
      "--tsBuildInfoFile",
      memory,
    ]);
    if (code !== 0) console.error(`types of ${folder === "." ? "the house" : folder} do not hold`);
    worst = Math.max(worst, code);
  }
  return worst;
}

const places = ["packages", "checks", "simulator", "benchmarks", "e2e", "tools"];
const steps = {
  types,
  lint: () =>
    runNode([
      installed("@biomejs/biome/bin/biome"),
      "ci",
      "--error-on-warnings",
      ...(process.stdout.isTTY ? [] : ["--colors=off"]),
    ]),
  arrows: () =>
    runNode([
      installed("dependency-cruiser/bin/dependency-cruise.mjs"),
      "--config",
      ".dependency-cruiser.cjs",
      ...places,
    ]),
  unused: () => runNode([installed("knip/bin/knip.js"), "--treat-config-hints-as-errors"]),
  units: () => runNode([join(root, "tools/run.mjs"), join(root, "tools/unit-names.ts")]),
  size: () => runNode([join(root, "tools/file-size.mjs")]),
  links: () => runNode([join(root, "tools/doc-links.mjs")]),
};

const named = process.argv.slice(2);
const unknown = named.find((name) => !(name in steps));
if (unknown) {
  console.error(`there is no check ${unknown}; expected ${Object.keys(steps).join(", ")}`);
  process.exit(2);
}

const broken = [];
const wanted = named.length > 0 ? named : Object.keys(steps);
for (const name of wanted) {
  console.log(`\n== ${name}`);
  const start_ms = Date.now();
  const code = await steps[name]();
  console.log(
    `== ${name} ${code === 0 ? "holds" : "does not hold"} (${((Date.now() - start_ms) / 1000).toFixed(1)} s)`,
  );
  if (code !== 0) broken.push(name);
}
console.log(broken.length > 0 ? `\nDoes not hold: ${broken.join(", ")}` : "\nAll checks hold.");
console.log(`${wanted.length - broken.length} passed, ${broken.length} failed`);
process.exit(broken.length > 0 ? 1 : 0);
