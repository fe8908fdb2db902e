import type { ReportRow } from "../../../tools/report.ts";
import { casesWritten, tableCases, topThree } from "./diagnosis-score.ts";
import { logScores, type PlantDay, reliability, rulesOf } from "./pest-score.ts";

/** How well clearance holds on individual-based pests, what each rule lets go, and how the ranking of causes does. */
export function pestRows(days: readonly PlantDay[]): readonly ReportRow[] {
  const rows: ReportRow[] = [];
  for (const bin of reliability(days))
    rows.push({
      figure: `clean as stated ${bin.from.toFixed(2)} to ${bin.to.toFixed(2)}, ${bin.origin === "all" ? "all plants" : `${bin.origin} plants`}`,
      value: bin.said_frac,
      unit: "share",
      reference: `truly clean ${bin.found_frac.toFixed(3)} of ${bin.cases_n} plant-days, ${bin.plants_n} plants, 95 % ${bin.low_frac.toFixed(3)} to ${bin.high_frac.toFixed(3)}`,
      goal: "inside that interval",
      holds: bin.holds,
    });
  const { ours, base, habit } = logScores(days);
  rows.push({
    figure: "log score of clearance",
    value: ours,
    unit: "nats",
    reference: `base rate ${base.toFixed(3)}, two clean weeks ${habit.toFixed(3)}`,
    goal: "under both",
    holds: ours < base && ours < habit,
  });
  for (const rule of rulesOf(days))
    rows.push({
      figure: `days held, median, ${rule.rule}`,
      value: rule.held_d,
      unit: "d",
      reference: `${rule.released_n} let go, infested among them ${(100 * rule.infestedSold_frac).toFixed(1)} %, clean ones never let go ${(100 * rule.falseHolds_frac).toFixed(1)} %`,
      goal: "printed",
      holds: true,
    });
  for (const [name, cases] of [
    ["cases from the table, levels moved, a fifth with two causes", tableCases(2000, 1)],
    ["30 cases written from descriptions", casesWritten],
  ] as const) {
    const { ours_frac, priors_frac, first_frac } = topThree(cases);
    rows.push({
      figure: `a true cause among the first three, ${name}`,
      value: ours_frac,
      unit: "share",
      reference: `by how common causes are alone ${priors_frac.toFixed(2)}; in the first place ${first_frac.toFixed(2)}`,
      goal: "over that",
      holds: ours_frac > priors_frac,
    });
  }
  return rows;
}
