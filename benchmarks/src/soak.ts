import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { writeReport } from "../../tools/report.ts";

/**
 * Fresh random cases for every property of the house, until the minutes are over: arrival orders, late entries, snapshots,
 * histories of devices that sync, nonsense typed into entries, files, requests and formulas. A seed that fails is printed with the
 * command that shows it again, and becomes a test.
 */
const ROOT = fileURLToPath(new URL("../../", import.meta.url));
const PROPERTIES = [
  "packages/bench/src/book",
  "packages/bench/src/house",
  "packages/bench/src/plants",
  "packages/bench/src/pages",
  "packages/bench/src/crafts/watering/fold.property.test.ts",
  "benchmarks/src/speed/arrival-order.test.ts",
  "packages/store/test/history.sim.test.ts",
  "packages/cli/test/fuzz.test.ts",
  "packages/server/test/openapi.test.ts",
];

const { values } = parseArgs({
  options: { minutes: { type: "string", default: "10" }, seed: { type: "string" } },
});
const minutes = Number(values.minutes);
if (!(minutes > 0 && minutes <= 600)) {
  console.error(`minutes is ${values.minutes}; expected more than 0 to 600 min`);
  process.exit(2);
}
// Seeds follow one another from a first that is printed, so that a whole soak can be run again.
const first = values.seed === undefined ? Math.floor(Math.random() * 1_000_000_000) : Number(values.seed);
const until_ms = Date.now() + minutes * 60_000;
let rounds_n = 0;
let failed: number | undefined;
while (Date.now() < until_ms && failed === undefined) {
  const seed = first + rounds_n;
  const run = spawnSync(
    process.execPath,
    ["node_modules/vitest/vitest.mjs", "run", "--project", "unit", "--reporter", "dot", ...PROPERTIES],
    {
      cwd: ROOT,
      env: { ...process.env, SILLWOOD_SEED: String(seed) },
      encoding: "utf8",
    },
  );
  rounds_n++;
  if (run.status === 0) {
    console.log(`seed ${seed}: holds`);
    continue;
  }
  failed = seed;
  console.log(
    `${run.stdout.slice(-4000)}\nseed ${seed} FAILS. Again: SILLWOOD_SEED=${seed} npx vitest run --project unit ${PROPERTIES.join(" ")}`,
  );
}
writeReport({
  name: "soak",
  title: "Fresh seeds",
  about: `Every property test of book, house, lists, watering, sync histories, command line and server with seeds that nobody chose, for ${minutes} minutes. Run again with \`npm run soak -- --minutes ${minutes} --seed ${first}\`.`,
  seed: first,
  scores: [
    "packages/bench/src",
    "packages/science/src",
    "packages/store/src",
    "packages/server/src",
    "packages/cli/src",
    "benchmarks/src/soak.ts",
  ],
  rows: [
    {
      figure: "rounds of all properties with a seed of their own",
      value: rounds_n,
      unit: "rounds",
      reference: "one fixed seed in `npm test`",
      goal: "none fails",
      holds: failed === undefined,
    },
    {
      figure: "seeds that failed",
      value: failed === undefined ? 0 : 1,
      unit: "seeds",
      reference: "",
      goal: "0",
      holds: failed === undefined,
    },
  ],
});
process.exitCode = failed === undefined ? 0 : 1;
