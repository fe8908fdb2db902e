import "temporal-polyfill/global";
import { SKILL_SEEDS, type SkillRun, skillRuns } from "@sillwood/simulator/skill-runs";
import { type ReportRow, writeReport } from "../../tools/report.ts";
import { ablationRows } from "./skill/ablations.ts";
import { baselines, dress } from "./skill/baselines.ts";
import { forecastRun, type Scored } from "./skill/forecasts.ts";
import { fruitRows } from "./skill/fruit-score.ts";
import { lightOfRun, lightRows } from "./skill/light-score.ts";
import { pestRows } from "./skill/pest-rows.ts";
import { plantDays } from "./skill/pest-score.ts";
import { crpsDifference, type Score, scoreOf } from "./skill/score.ts";

/** Pots and days of the table; seeds A dress the baselines, all is scored on B (on C with `--held-back`). */
const FULL = { pots: 200, days: 120 } as const;

/** Ablations are read off the first of the scored runs: one grower in three. */
const ABLATION_RUNS_n = 7;

/** Runs, plants and days on which clearance is scored. */
const PESTS = { seeds_n: 30, plants_n: 80, days_n: 70 } as const;

/** Plants in flower a seed, each lived twice: thinned to the number advised, and left alone. */
const FRUITING = { plants_n: 40 } as const;

const say = (line: string) => process.stdout.write(`${line}\n`);

function runsOf(seeds: readonly number[], pots: number, days: number): SkillRun[] {
  const each = Math.ceil(pots / seeds.length);
  return seeds.flatMap((seed) => skillRuns({ seed, pots: each, days }));
}

/** A quarter of the cases in rank of what is asked; those of one rank are told apart by the last of their twenty dates. */
function quarter(cases: readonly Scored[], part: number, of: (one: Scored) => number): readonly Scored[] {
  const ranked = [...cases].sort(
    (a, b) => of(a) - of(b) || (a.dates_d.at(-1) as number) - (b.dates_d.at(-1) as number),
  );
  return ranked.slice(Math.floor((part / 4) * ranked.length), Math.floor(((part + 1) / 4) * ranked.length));
}
const saidLead_d = ({ dates_d }: Scored) => ((dates_d[9] as number) + (dates_d[10] as number)) / 2;
const trueLead_d = ({ lead_d }: Scored) => lead_d;

export function skillTable(pots: number, days: number, seeds: readonly number[] = SKILL_SEEDS.B) {
  const train = runsOf(SKILL_SEEDS.A, pots, days).flatMap((run) => forecastRun(run));
  const runs = runsOf(seeds, pots, days);
  const test = runs.flatMap((run) => forecastRun(run));
  const once = (cases: readonly Scored[]) => cases.filter(({ weighings_n }) => weighings_n === 1);
  const never = (cases: readonly Scored[]) => cases.filter(({ weighings_n }) => weighings_n === 0);
  const dressed = baselines.map((baseline) => ({ name: baseline.name, dates: dress(baseline, train) }));
  const rows: ReportRow[] = [];
  const add = (
    figure: string,
    value: number,
    unit: string,
    reference: string,
    goal: string,
    holds: boolean,
  ) => rows.push({ figure, value, unit, reference, goal, holds });

  const describe = (name: string, cases: readonly Scored[], biasGoal_d: number) => {
    const ours = scoreOf(cases);
    const theirs = dressed.map(({ name: theirName, dates }) => ({
      name: theirName,
      score: scoreOf(cases, dates),
      dates,
    }));
    const best = theirs.reduce((a, b) => (b.score.crps_d < a.score.crps_d ? b : a));
    const same = theirs.find(
      ({ name: theirName }) => theirName === "same interval",
    ) as (typeof theirs)[number];
    const reference = theirs
      .map(({ name: theirName, score }) => `${theirName} ${score.crps_d.toFixed(2)}`)
      .join(", ");
    add(
      `CRPS, ${name}`,
      ours.crps_d,
      "d",
      reference,
      "at least 10 % under the best dressed baseline",
      ours.crps_d <= 0.9 * best.score.crps_d,
    );
    add(
      `mean absolute error of the median date, ${name}`,
      ours.mae_d,
      "d",
      `same interval ${same.score.mae_d.toFixed(2)}`,
      "at least 25 % under same interval",
      ours.mae_d <= 0.75 * same.score.mae_d,
    );
    add(
      `bias of the mean date (negative is early), ${name}`,
      ours.bias_d,
      "d",
      `same interval ${same.score.bias_d.toFixed(2)}; of the median date ours ${ours.medianBias_d.toFixed(2)}, theirs ${same.score.medianBias_d.toFixed(2)}`,
      `within ${biasGoal_d} d`,
      Math.abs(ours.bias_d) < biasGoal_d,
    );
    add(
      `80 % range holds the truth, ${name}`,
      ours.coverage_frac,
      "share",
      `${ours.n} forecasts`,
      "0.70 to 0.90",
      inside(ours, 0.7, 0.9),
    );
    add(
      `mean width of the 80 % range, ${name}`,
      ours.width_d,
      "d",
      `best baseline (${best.name}) ${best.score.width_d.toFixed(2)}`,
      "printed",
      true,
    );
    const difference = crpsDifference(cases, same.dates, 1);
    add(
      `CRPS less that of same interval, upper 95 % limit, ${name}`,
      difference.high,
      "d",
      `mean ${difference.mean.toFixed(2)}`,
      "at most 5 % of theirs",
      difference.high <= 0.05 * same.score.crps_d,
    );
  };
  describe("one weighing a cycle", once(test), 0.3);
  describe("no weighing", never(test), 1);
  const group = (name: string, cases: readonly Scored[], least = 0.7, most = 0.9) => {
    if (cases.length === 0) return;
    const score = scoreOf(cases);
    add(
      `80 % range holds the truth, ${name}`,
      score.coverage_frac,
      "share",
      `${score.n} forecasts, CRPS ${score.crps_d.toFixed(2)} d, bias ${score.bias_d.toFixed(2)} d`,
      `${least.toFixed(2)} to ${most.toFixed(2)}`,
      inside(score, least, most),
    );
  };
  group("all pots", test, 0.75, 0.85);
  // A lead time is what a forecast says when it is issued. Sorted by what came instead, the longest waits are by choice those that
  // came later than said: no forecast holds 80 % of them, and the rows are there to show how far it is.
  for (const part of [0, 1, 2, 3]) group(`lead-time quarter ${part + 1}`, quarter(test, part, saidLead_d));
  for (const part of [0, 1, 2, 3])
    group(`quarter ${part + 1} by the wait that came`, quarter(test, part, trueLead_d));
  for (const size of ["small", "middle", "large"] as const)
    group(
      `${size} pots`,
      test.filter((one) => one.size === size),
    );
  for (const weighings_n of [0, 1, 2, 4] as const)
    group(
      `${weighings_n} weighings a cycle`,
      test.filter((one) => one.weighings_n === weighings_n),
    );
  for (const inCycle_n of [0, 1, 2] as const)
    group(
      `${inCycle_n === 2 ? "2 or more" : inCycle_n} weighings since the last watering`,
      test.filter((one) => Math.min(2, one.inCycle_n) === inCycle_n),
    );
  for (const kind of ["written", "unwritten"] as const)
    group(
      `ten days after a move or trim, ${kind}`,
      test.filter(({ afterMoveOrTrim }) => afterMoveOrTrim === kind),
    );
  for (const keeper of ["by feel", "every few days", "by weekday"] as const)
    group(
      `people who water ${keeper}`,
      test.filter((one) => one.keeper === keeper),
    );
  const pestSeeds = Array.from({ length: PESTS.seeds_n }, (_, i) => (seeds[0] ?? 0) * 1000 + i);
  rows.push(...pestRows(plantDays(pestSeeds, PESTS.plants_n, PESTS.days_n)));
  rows.push(...fruitRows(seeds, FRUITING.plants_n));
  rows.push(...lightRows(runs.flatMap(lightOfRun)), ...ablationRows(runs.slice(0, ABLATION_RUNS_n)));
  return { rows, cases_n: test.length, test };
}

const inside = ({ coverage_frac }: Score, low: number, high: number) =>
  coverage_frac >= low && coverage_frac <= high;

if (process.argv[1]?.endsWith("skill.ts")) {
  const quick = process.argv.includes("--quick");
  const { pots, days } = quick ? { pots: 120, days: 50 } : FULL;
  // Judges of tuned work ask for the seeds that nobody has tuned on; no report is written of them.
  const heldBack = process.argv.includes("--held-back");
  const { rows, cases_n } = skillTable(pots, days, heldBack ? SKILL_SEEDS.C : SKILL_SEEDS.B);
  for (const row of rows)
    say(
      `${row.holds ? "  " : "! "}${row.figure}: ${row.value.toFixed(3)} ${row.unit}  (${row.reference}; goal ${row.goal})`,
    );
  if (!quick && !heldBack) {
    writeReport({
      name: "skill",
      title: "How good the forecasts are",
      about: `The engine asked for the date of the next watering of ${pots} simulated pots over ${days} days (${cases_n} forecasts), each from what the book held at that moment. The simulator shares no code with the engine and knows more physics. Baselines are dressed with their own errors on other seeds. Run again with \`npm run skill\`.`,
      seed: SKILL_SEEDS.B[0],
      scores: [
        "simulator/src",
        "packages/science/src",
        "packages/bench/src",
        "benchmarks/src/skill.ts",
        "benchmarks/src/skill",
      ],
      rows,
    });
  }
}
