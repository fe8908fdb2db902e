import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import type { ReportRow } from "../../../tools/report.ts";

const ROOT = fileURLToPath(new URL("../../../", import.meta.url));
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

/** Every property test with seeds that nobody chose, until the minutes are over or one fails. */
export function freshRows(first: number, minutes: number): ReportRow[] {
  const until_ms = Date.now() + minutes * 60_000;
  let rounds_n = 0;
  let failed: number | undefined;
  while (Date.now() < until_ms && failed === undefined) {
    const seed = first + rounds_n;
    const run = spawnSync(
      process.execPath,
      ["node_modules/vitest/vitest.mjs", "run", "--project", "unit", "--reporter", "dot", ...PROPERTIES],
      { cwd: ROOT, env: { ...process.env, SILLWOOD_SEED: String(seed) }, encoding: "utf8" },
    );
    rounds_n++;
    if (run.status === 0) continue;
    failed = seed;
    console.error(
      `${run.stdout.slice(-4000)}\nseed ${seed} FAILS. Again: SILLWOOD_SEED=${seed} npx vitest run --project unit ${PROPERTIES.join(" ")}`,
    );
  }
  return [
    {
      figure: "fresh seeds: rounds of all property tests until one failed",
      value: rounds_n,
      unit: "rounds",
      reference: failed === undefined ? `${minutes} minutes, none failed` : `seed ${failed} failed`,
      goal: "none fails",
      holds: failed === undefined && rounds_n > 0,
    },
  ];
}
