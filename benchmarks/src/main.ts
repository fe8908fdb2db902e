import { loadavg } from "node:os";
import { writeReport } from "../../tools/report.ts";
import { bookRows, oneEntryRows } from "./speed/book-rows.ts";
import { buildChildren } from "./speed/in-a-process.ts";
import { lightRows } from "./speed/light-rows.ts";
import { phoneRows } from "./speed/phone-rows.ts";
import { rowsSaid } from "./speed/rows.ts";
import { appendRows, etRows } from "./speed/small-rows.ts";

const SEED = 1;
const say = (line: string) => process.stdout.write(`${line}\n`);

/** Parts of the run by the word that asks for one alone; a part alone writes no report. */
const parts = {
  et: (rows: ReturnType<typeof rowsSaid>) => etRows(rows, SEED, say),
  light: (rows: ReturnType<typeof rowsSaid>) => lightRows(rows, SEED),
  append: (rows: ReturnType<typeof rowsSaid>) => appendRows(rows, SEED),
  book: (rows: ReturnType<typeof rowsSaid>) => bookRows(rows, SEED),
  entry: (rows: ReturnType<typeof rowsSaid>) => oneEntryRows(rows, SEED),
  phone: (rows: ReturnType<typeof rowsSaid>) => phoneRows(rows, SEED, say),
};

const asked = process.argv.slice(2).filter((word): word is keyof typeof parts => word in parts);
const load = () => loadavg()[0]?.toFixed(1);
const rows = rowsSaid(say);
const before = load();
await buildChildren();
for (const name of asked.length > 0 ? asked : (Object.keys(parts) as (keyof typeof parts)[]))
  await parts[name](rows);
if (asked.length === 0)
  writeReport({
    name: "bench",
    title: "How fast it is",
    about: `Each figure beside its reference in the same run, best of several, on Node ${process.versions.node}, ${process.platform} ${process.arch}; other work kept ${before} processors busy when the run began and ${load()} when it ended, so that seconds are upper limits and ratios say more. Run again with \`npm run bench\`.`,
    seed: SEED,
    scores: [
      "packages/science/src",
      "packages/bench/src",
      "packages/store/src",
      "packages/web/src",
      "packages/cli/src/book",
      "benchmarks/src/main.ts",
      "benchmarks/src/speed",
    ],
    rows: rows.rows,
  });
