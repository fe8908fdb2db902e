import type { Ledger } from "../house/index.ts";
import { PACE_WALKS_n, type Walked } from "./kinds.ts";

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

export function paceOf(ledger: Ledger, person?: string): Pace {
  const own = ledger.walks().filter(({ by }) => person === undefined || by === person);
  const last = own.slice(-PACE_WALKS_n).map(({ data }) => {
    const { minutes = 0, tasks_n = 1 } = data as unknown as Walked;
    return Math.log(Math.min(5, Math.max(0.2, minutes / (tasks_n * PLANNED_min_per_task))));
  });
  const sum = last.reduce((all, value) => all + value, 0);
  return { ratio: Math.exp(sum / (last.length + PRIOR_rounds_n)), rounds_n: last.length };
}
