import "temporal-polyfill/global";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { type ReportRow, writeReport } from "../../tools/report.ts";
import { freshRows } from "./soak/fresh.ts";
import { crowdRows, hostileRows, killRows, type Sizes, stormRows } from "./soak/rows.ts";

/**
 * What a season does to a book, at full size: servers killed, devices in a storm, strangers, a crowd, and fresh seeds for every property
 * test. A seed that fails is printed with the command that shows it again, and becomes a test.
 */
const FULL: Sizes = { acknowledged_n: 2000, storms_n: 1000, asks_n: 20_000, devices_n: 200, crowd_s: 600 };
const parts = ["kill", "storm", "hostile", "crowd", "fresh"] as const;

const { values } = parseArgs({
  options: {
    minutes: { type: "string", default: "3" },
    seed: { type: "string" },
    /** Shares of the full size, for a quick look: its table is not one to commit. */
    share: { type: "string", default: "1" },
    only: { type: "string" },
  },
});
const minutes = Number(values.minutes);
const share = Number(values.share);
if (!(minutes >= 0 && minutes <= 600)) stop(`minutes is ${values.minutes}; expected 0 to 600 min`);
if (!(share > 0 && share <= 10)) stop(`share is ${values.share}; expected more than 0 to 10`);
const wanted = (values.only ?? parts.join(",")).split(",");
const unknown = wanted.find((part) => !(parts as readonly string[]).includes(part));
if (unknown !== undefined) stop(`there is no part ${unknown}; expected ${parts.join(", ")}`);
// Seeds follow one another from a first that is printed, so that a whole soak can be run again.
const seed = values.seed === undefined ? Math.floor(Math.random() * 1_000_000_000) : Number(values.seed);
const sizes = Object.fromEntries(
  Object.entries(FULL).map(([key, n]) => [key, key === "devices_n" ? n : Math.max(1, Math.round(n * share))]),
) as unknown as Sizes;

const folder = mkdtempSync(join(tmpdir(), "sillwood-soak-"));
const rows: ReportRow[] = [];
const run = async (part: (typeof parts)[number], rowsOf: () => Promise<readonly ReportRow[]>) => {
  if (!wanted.includes(part)) return;
  const began_ms = Date.now();
  const found = await rowsOf();
  rows.push(...found);
  console.log(`${part}: ${((Date.now() - began_ms) / 1000).toFixed(0)} s`);
  for (const { figure, value, unit, holds } of found)
    console.log(`  ${holds ? "holds" : "MISSED"}  ${figure}: ${value} ${unit}`);
};
try {
  await run("kill", () => killRows(folder, seed, sizes));
  await run("storm", () => stormRows(seed, sizes));
  await run("hostile", () => hostileRows(seed, sizes));
  await run("crowd", () => crowdRows(folder, seed, sizes));
  await run("fresh", async () => freshRows(seed, minutes));
} finally {
  rmSync(folder, { recursive: true, force: true });
}
// A part of it alone is a look, not a table.
if (wanted.length === parts.length)
  writeReport({
    name: "soak",
    title: "What it withstands",
    about:
      "Servers killed by SIGKILL while phones push, histories of five devices in a storm, spoilt requests and files, two hundred phones at once, and fresh seeds for every property test. " +
      `Run again with \`npm run soak -- --seed ${seed}\`${share === 1 ? "" : `; this was a share of ${share} of the full size`}.`,
    seed,
    scores: [
      "packages/bench/src",
      "packages/science/src",
      "packages/store/src",
      "packages/server/src",
      "packages/cli/src",
      "benchmarks/src/soak.ts",
      "benchmarks/src/soak",
    ],
    rows,
  });
process.exit(rows.every(({ holds }) => holds) ? 0 : 1);

function stop(why: string): never {
  console.error(why);
  process.exit(2);
}
