import { type AnyCraft, crafts } from "@sillwood/bench/crafts";
import type { SkillRun } from "@sillwood/simulator/skill-runs";
import type { ReportRow } from "../../../tools/report.ts";
import { forecastRun, type Scored } from "./forecasts.ts";
import { scoreOf } from "./score.ts";

/** A part of the engine left out, or of what the book holds, to see what it is worth. */
interface Ablation {
  readonly name: string;
  readonly crafts?: readonly AnyCraft[];
  /** Lines of the book that are hidden. */
  hides?(kind: string): boolean;
}

const all: readonly AnyCraft[] = crafts;

const assuming = (key: string, value: number): readonly AnyCraft[] =>
  all.map((craft) => ({
    ...craft,
    assumptions: craft.assumptions.map((each) => (each.key === key ? { ...each, value } : each)),
  }));

const withoutPool = (): readonly AnyCraft[] =>
  all.map((craft) => {
    const { pool: _pool, ...rest } = craft;
    return rest as AnyCraft;
  });

const ABLATIONS: readonly Ablation[] = [
  { name: "leaf area as counted, never growing", crafts: all.filter(({ name }) => name !== "growth") },
  { name: "benches that tell one another nothing", crafts: withoutPool() },
  { name: "every pour taken as written", crafts: assuming("unwrittenPour_frac", 0) },
  {
    name: "no word of windows, lamps or readings of light",
    hides: (kind) => /^(light|spot)\.|^bench\.(window|lamp|timer|lit)$/.test(kind),
  },
  { name: "no looks, no walks", hides: (kind) => kind === "watering.looked" || kind === "round.walked" },
  { name: "no weights", hides: (kind) => kind === "watering.weighed" },
];

/** What each part is worth: the score without it beside the score with all. */
export function ablationRows(runs: readonly SkillRun[]): ReportRow[] {
  const whole = scoreOf(runs.flatMap((run) => forecastRun(run)));
  return ABLATIONS.map(({ name, crafts: left, hides }) => {
    const cases: Scored[] = runs.flatMap((run) =>
      forecastRun(hides ? { ...run, lines: run.lines.filter(({ kind }) => !hides(kind)) } : run, left),
    );
    const score = scoreOf(cases);
    return {
      figure: `without a part: ${name}`,
      value: score.crps_d,
      unit: "d CRPS",
      reference: `with all ${whole.crps_d.toFixed(2)}; range holds ${score.coverage_frac.toFixed(2)} (with all ${whole.coverage_frac.toFixed(2)}), ${score.n} forecasts`,
      goal: "printed",
      holds: true,
    };
  });
}
