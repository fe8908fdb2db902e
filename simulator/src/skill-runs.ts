import type { Line } from "./book/line.ts";
import { DAY_ms } from "./nursery/calendar.ts";
import { chanceOf } from "./nursery/chance.ts";
import { firstTimeAt } from "./nursery/counterfactual.ts";
import { runNursery, type Snapshot } from "./nursery/nursery.ts";
import { type Pot, potAvailable_g } from "./nursery/potted-plant.ts";
import { type DrawnRun, drawRun } from "./skill/draw-run.ts";
import { bookOfRun } from "./skill/run-book.ts";

/** Seeds to tune on (A) and to report on once (B). Frozen: a new truth needs new seeds. */
export const SKILL_SEEDS = { A: [11, 12, 13], B: [21, 22, 23] } as const;

export interface SkillAsk {
  readonly seed: number;
  /** Pots altogether; ten to a run, each run with people, rooms, weather and plants of its own. */
  readonly pots: number;
  readonly days: number;
  /** Depletion asked for, share of the water between just drained and lasting wilt. */
  readonly share_frac?: number;
}

/** One forecast to be made and what then was true. Only `at_ms` may be shown to a forecaster. */
export interface SkillCase {
  readonly at_ms: number;
  /** First instant from `at_ms` on at which depletion reaches the share, had nobody watered again. */
  readonly truth_ms: number;
  readonly lead_d: number;
  /** Depletion had already passed the share when asked; then `truth_ms` is `at_ms`. */
  readonly already: boolean;
  readonly sinceMove_d?: number;
  readonly sinceTrim_d?: number;
}

export interface SkillPot {
  readonly plant: string;
  readonly number: number;
  readonly size: "small" | "middle" | "large";
  readonly weighings_n: 0 | 1 | 2 | 4;
  /** Watered by the calendar. */
  readonly habitual: boolean;
  readonly light: "window" | "lamp";
  /** Truth at the end, for those who want to know why a forecast missed. */
  readonly available_g: number;
  readonly cases: readonly SkillCase[];
}

export interface SkillRun {
  readonly name: string;
  readonly zone: string;
  /** In the order in which they were typed; see `linesUntil`. */
  readonly lines: readonly Line[];
  readonly pots: readonly SkillPot[];
  /** Moments whose truth lies beyond the horizon; they have no case, and are counted so that nobody forgets them. */
  readonly beyond_n: number;
}

const POTS_PER_RUN_n = 10;
export const HORIZON_d = 40;
const WARM_UP_d = 21;
const ASK_EVERY_d = 2;

/** What the book held at a moment: nothing that happened later, nothing that was typed later. */
export function linesUntil(run: SkillRun, at_ms: number): Line[] {
  return run.lines.filter((line) => line.at_ms <= at_ms && Date.parse(line.clock.slice(0, 24)) <= at_ms);
}

/** Simulated growers with their books, and the dates that a forecaster of their pots should have given. */
export function skillRuns({ seed, pots, days, share_frac = 0.55 }: SkillAsk): SkillRun[] {
  const runs_n = Math.ceil(pots / POTS_PER_RUN_n);
  return Array.from({ length: runs_n }, (_, i) => {
    const pots_n = Math.min(POTS_PER_RUN_n, pots - i * POTS_PER_RUN_n);
    const drawn = drawRun(i, pots_n, days, HORIZON_d, chanceOf(`skill ${seed}`).under(i));
    return runOf(drawn, days, share_frac);
  });
}

function runOf(drawn: DrawnRun, days: number, share_frac: number): SkillRun {
  const from_ms = drawn.from_ms;
  const probes = drawn.tended.flatMap(({ key }) => {
    const first_d = WARM_UP_d + (key % ASK_EVERY_d) + 0.5;
    return Array.from({ length: Math.floor((days - first_d) / ASK_EVERY_d) }, (_, i) => ({
      key,
      at_ms: from_ms + (first_d + i * ASK_EVERY_d) * DAY_ms,
    }));
  });
  const started = drawn.tended.map(({ pot }) => ({ ...pot }));
  const { notes, snapshots } = runNursery(
    drawn.benches,
    drawn.tended,
    drawn.visits,
    probes,
    drawn.chance.under("people"),
  );
  const book = bookOfRun(drawn, started, notes);
  let beyond_n = 0;
  const casesOf = (key: number) =>
    snapshots
      .filter((snapshot) => snapshot.key === key)
      .flatMap((snapshot) => {
        const truth_ms = firstTimeAt(snapshot.pot, share_frac, drawn.benches, HORIZON_d);
        if (truth_ms === undefined) {
          beyond_n++;
          return [];
        }
        return [caseOf(snapshot, truth_ms)];
      });
  const skillPots = drawn.tended.map((each) => ({
    plant: book.plant(each.key),
    number: 101 + each.key,
    size: drawn.sizes[each.key] as SkillPot["size"],
    weighings_n: each.weighings_n,
    habitual: drawn.person.habit_d !== undefined,
    light: each.pot.bench === 0 ? ("window" as const) : ("lamp" as const),
    available_g: potAvailable_g(each.pot),
    cases: casesOf(each.key),
  }));
  return { name: drawn.name, zone: drawn.zone, lines: book.lines, pots: skillPots, beyond_n };
}

function caseOf({ at_ms, pot }: Snapshot, truth_ms: number): SkillCase {
  const since = (what: "move" | "trim") => {
    const last = lastBefore(pot, what);
    return last === undefined ? undefined : (at_ms - last) / DAY_ms;
  };
  const sinceMove_d = since("move");
  const sinceTrim_d = since("trim");
  return {
    at_ms,
    truth_ms,
    lead_d: (truth_ms - at_ms) / DAY_ms,
    already: truth_ms <= at_ms,
    ...(sinceMove_d === undefined ? {} : { sinceMove_d }),
    ...(sinceTrim_d === undefined ? {} : { sinceTrim_d }),
  };
}

function lastBefore(pot: Pot, what: "move" | "trim"): number | undefined {
  for (let i = pot.next - 1; i >= 0; i--) {
    const happening = pot.happenings[i];
    if (happening?.what === what) return happening.at_ms;
  }
  return undefined;
}
