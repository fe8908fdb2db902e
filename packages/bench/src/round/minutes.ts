import type { Ledger } from "../house/index.ts";
import { roundKinds, type Walked } from "./kinds.ts";

/** How fast somebody walks compared with what tasks say they take, learned from rounds that were walked. */
export interface Pace {
  /** Actual minutes for each planned minute. */
  readonly ratio: number;
  readonly rounds_n: number;
}

/** A minute a task, until rounds say more (our assumption). */
const PLANNED_min_per_task = 1;
/** Our guess weighs as much as three rounds. */
const PRIOR_rounds_n = 3;
const LAST_ROUNDS_n = 20;

export function paceOf(ledger: Ledger, person?: string): Pace {
  const ratios: number[] = [];
  const seen = new Set<string>();
  for (const plant of ledger.plants()) {
    for (const { entry } of ledger.eventsOf(plant)) {
      if (entry.kind !== roundKinds.walked.kind || seen.has(entry.id)) continue;
      seen.add(entry.id);
      const { minutes, tasks_n } = entry.data as unknown as Walked;
      if ((person === undefined || entry.by === person) && minutes && tasks_n)
        ratios.push(minutes / (tasks_n * PLANNED_min_per_task));
    }
  }
  const last = ratios.slice(-LAST_ROUNDS_n).map((ratio) => Math.log(Math.min(5, Math.max(0.2, ratio))));
  const sum = last.reduce((all, value) => all + value, 0);
  return { ratio: Math.exp(sum / (last.length + PRIOR_rounds_n)), rounds_n: last.length };
}
