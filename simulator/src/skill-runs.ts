import type { Line } from "./book/line.ts";
import { type BenchAir, spotDailyLight_mol_m2_d } from "./nursery/bench-air.ts";
import { DAY_ms } from "./nursery/calendar.ts";
import { chanceOf } from "./nursery/chance.ts";
import { firstTimeAt } from "./nursery/counterfactual.ts";
import { runNursery, type Snapshot } from "./nursery/nursery.ts";
import {
  copyOf,
  fullWeight_g,
  type Happening,
  type Pot,
  potAvailable_g,
  potDepletion_g,
} from "./nursery/potted-plant.ts";
import type { Keeper, PersonKind } from "./skill/draw-people.ts";
import type { Size } from "./skill/draw-pots.ts";
import { type DrawnRun, drawRun } from "./skill/draw-run.ts";
import type { KnownLight } from "./skill/known-light.ts";
import { bookOfRun, type RunBook } from "./skill/run-book.ts";

/**
 * Seeds to tune on and to dress baselines with (A), to report on (B), and held back (C): C is for whoever judges work that
 * was tuned by others. Frozen with this simulator; a new truth needs new seeds.
 */
export const SKILL_SEEDS = { A: [31, 32, 33], B: [41, 42, 43], C: [51, 52, 53] } as const;

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
  /** Days since the last move and cut, and whether the book could tell. */
  readonly sinceMove_d?: number;
  readonly moveWritten?: boolean;
  readonly sinceTrim_d?: number;
  readonly trimWritten?: boolean;
  /** Weighings that the book held since the last watering that it held. */
  readonly inCycle_n: number;
  /** How whoever keeps the pot's bench decides. */
  readonly keeper: PersonKind;
  /** Truth at the moment asked, for those who want to know why a forecast missed. */
  readonly truth: {
    readonly depletion_g: number;
    readonly available_g: number;
    readonly saucer_g: number;
    readonly full_g: number;
    readonly leafArea_m2: number;
  };
}

export interface SkillPot {
  readonly plant: string;
  readonly number: number;
  readonly size: Size;
  /** Weighings a cycle that the grower means to make. */
  readonly weighings_n: 0 | 1 | 2 | 4;
  /** Truth at the end, for those who want to know why a forecast missed. */
  readonly available_g: number;
  readonly cases: readonly SkillCase[];
}

/** Light of a bench: what its grower could say when asked, and what was true. Only `known` may be shown to a forecaster. */
export interface SkillLight {
  readonly bench: string;
  readonly known: KnownLight;
  /** On a level meter at each spot, [day] from the run's first, mol m⁻² d⁻¹. */
  readonly truth: readonly { readonly spot: string; readonly level_mol_m2_d: readonly number[] }[];
  /** Of the days above. */
  readonly dates: readonly string[];
}

export interface SkillRun {
  readonly name: string;
  readonly zone: string;
  /** In the order in which they were typed; see `linesUntil`. */
  readonly lines: readonly Line[];
  /** Text of the series files that lines name, by hash. */
  readonly files: ReadonlyMap<string, string>;
  readonly pots: readonly SkillPot[];
  readonly light: readonly SkillLight[];
  /** Moments whose truth lies beyond the horizon; they have no case, and are counted so that nobody forgets them. */
  readonly beyond_n: number;
}

const POTS_PER_RUN_n = 10;
export const HORIZON_d = 40;
const WARM_UP_d = 21;
const ASK_EVERY_d = 2;

/** What the book held at a moment: nothing that happened later, nothing that was typed later. */
export function linesUntil(run: SkillRun, at_ms: number): Line[] {
  return run.lines.filter((line) => isHeld(line, at_ms));
}

const isHeld = (line: Line, at_ms: number) =>
  line.at_ms <= at_ms && Date.parse(line.clock.slice(0, 24)) <= at_ms;

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
  const started = drawn.tended.map(({ pot }) => copyOf(pot));
  const { notes, snapshots } = runNursery(
    drawn.benches,
    drawn.tended,
    drawn.visits,
    probes,
    drawn.chance.under("people"),
  );
  const book = bookOfRun(drawn, started, notes);
  let beyond_n = 0;
  const casesOf = (key: number) => {
    const weighings = weighingsOf(book.lines, book.plant(key));
    return snapshots
      .filter((snapshot) => snapshot.key === key)
      .flatMap((snapshot) => {
        const truth_ms = firstTimeAt(snapshot.pot, share_frac, drawn.benches, HORIZON_d);
        if (truth_ms === undefined) {
          beyond_n++;
          return [];
        }
        const keeper = drawn.crew.keepers[drawn.crew.ofBench[snapshot.pot.bench] as number] as Keeper;
        return [{ ...caseOf(snapshot, truth_ms), inCycle_n: weighings(snapshot.at_ms), keeper: keeper.kind }];
      });
  };
  const pots = drawn.pots.map(({ size, tended }) => ({
    plant: book.plant(tended.key),
    number: 101 + tended.key,
    size,
    weighings_n: tended.weighings_n,
    available_g: potAvailable_g(tended.pot),
    cases: casesOf(tended.key),
  }));
  return {
    name: drawn.name,
    zone: drawn.zone,
    lines: book.lines,
    files: book.files,
    pots,
    light: drawn.benches.map((bench, i) => lightOf(drawn, bench, i, book)),
    beyond_n,
  };
}

function lightOf(drawn: DrawnRun, air: BenchAir, bench: number, book: RunBook): SkillLight {
  return {
    bench: book.bench(bench),
    known: book.known[bench] as KnownLight,
    truth: (air.spots ?? []).map((spot, place) => ({
      spot: book.spot(bench, place),
      level_mol_m2_d: spotDailyLight_mol_m2_d(air, spot, drawn.days_n),
    })),
    dates: drawn.days.slice(0, drawn.days_n).map(({ date }) => date),
  };
}

/** Counts the weighings that a book held at a moment since the last watering that it held. */
function weighingsOf(lines: readonly Line[], plant: string): (at_ms: number) => number {
  const own = lines.filter(
    ({ kind, on }) => (kind === "watering.watered" || kind === "watering.weighed") && on.includes(plant),
  );
  return (at_ms) => {
    const held = own.filter((line) => isHeld(line, at_ms));
    const watered_ms = Math.max(
      ...held.filter(({ kind }) => kind === "watering.watered").map((line) => line.at_ms),
      Number.NEGATIVE_INFINITY,
    );
    return held.filter(({ kind, at_ms: when_ms }) => kind === "watering.weighed" && when_ms > watered_ms)
      .length;
  };
}

function caseOf({ at_ms, pot }: Snapshot, truth_ms: number) {
  const move = lastBefore(pot, "move");
  const trim = lastBefore(pot, "trim");
  return {
    at_ms,
    truth_ms,
    lead_d: (truth_ms - at_ms) / DAY_ms,
    already: truth_ms <= at_ms,
    truth: {
      depletion_g: potDepletion_g(pot),
      available_g: potAvailable_g(pot),
      saucer_g: pot.saucer_g,
      full_g: fullWeight_g(pot),
      leafArea_m2: pot.leafArea_m2,
    },
    ...(move ? { sinceMove_d: (at_ms - move.at_ms) / DAY_ms, moveWritten: move.written === true } : {}),
    ...(trim ? { sinceTrim_d: (at_ms - trim.at_ms) / DAY_ms, trimWritten: trim.written === true } : {}),
  };
}

type Written = Extract<Happening, { readonly what: "move" | "trim" }>;

function lastBefore(pot: Pot, what: Written["what"]): Written | undefined {
  for (let i = pot.next - 1; i >= 0; i--) {
    const happening = pot.happenings[i];
    if (happening?.what === what) return happening as Written;
  }
  return undefined;
}
