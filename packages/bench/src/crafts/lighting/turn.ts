import type { PlantId } from "../../book/entry.ts";
import type { Task } from "../../round/task.ts";
import type { Member, Outward } from "../craft.ts";
import { TURNED } from "./kinds.ts";
import { asymmetry_frac, type LightSlice } from "./slice.ts";
import { lightingWords } from "./words.ts";
import { turnWorking } from "./workings.ts";

export const CRAFT = "lighting";
const DAY_ms = 86_400_000;
const HOUR_ms = 3_600_000;
/** A quarter turn at the bench. @source our assumption, replaced by the minutes that rounds record */
const TURN_min = 0.2;
/** Light less one-sided than this bends nothing. @source our assumption */
const LEAST_SIDE_frac = 0.25;
/** A lean that the eye sees asks for the turn at once. @source our assumption */
const SEEN_LEAN_deg = 10;
/** Pots that were turned alone lately are left out until the bench is due again. */
const ALONE_frac = 0.5;
/** On a bench where nobody ever wrote a turn, the round stops asking after so many intervals: there it is not written, or not done. */
const UNWRITTEN_n = 3;
/** A turn may wait for half its interval again. @source our assumption */
const LATEST_frac = 0.5;
const QUARTER_deg = 90;

/** What the pots of a bench say together: it is turned as one. */
export interface BenchTurn {
  readonly oneSided_d: number;
  readonly side_frac: number;
  readonly plants_n: number;
  /** Whether anybody ever wrote a turn of one of them. */
  readonly isWritten: boolean;
  /** The plant of the bench at which a reading of light would be taken. */
  readonly readAt: PlantId;
}

/** What a pot tells its bench. */
export type TurnPart = Pick<LightSlice, "oneSided_d" | "side_frac" | "week_mol_m2_d" | "turns_n">;

const isOneSided = ({ side_frac }: Pick<LightSlice, "side_frac">) => side_frac >= LEAST_SIDE_frac;

export function benchTurns(members: readonly Member<TurnPart>[]): ReadonlyMap<PlantId, BenchTurn> {
  const lit = members.filter(({ slice }) => isOneSided(slice));
  const mean = (of: (slice: TurnPart) => number) =>
    lit.length > 0 ? lit.reduce((sum, { slice }) => sum + of(slice), 0) / lit.length : 0;
  const inMiddle = [...members].sort((a, b) => a.slice.week_mol_m2_d - b.slice.week_mol_m2_d)[
    Math.floor(members.length / 2)
  ];
  if (!inMiddle) return new Map();
  const bench: BenchTurn = {
    oneSided_d: mean(({ oneSided_d }) => oneSided_d),
    side_frac: mean(({ side_frac }) => side_frac),
    plants_n: lit.length,
    isWritten: lit.some(({ slice }) => slice.turns_n > 0),
    readAt: inMiddle.plant.id,
  };
  return new Map(members.map(({ plant }) => [plant.id, bench]));
}

export interface TurnDue {
  readonly due_ms: number;
  readonly oneSided_d: number;
  readonly after_d: number;
  readonly side_frac: number;
  readonly asymmetry_frac: number;
  readonly since_d: number;
  readonly together_n: number;
  readonly lean_deg: number | undefined;
  /** The page says it; the round does not. */
  readonly isQuiet: boolean;
}

/** When a pot wants its quarter turn; undefined where light comes from all sides alike. */
export function turnDue(slice: LightSlice, sight: Outward): TurnDue | undefined {
  if (!isOneSided(slice)) return undefined;
  const bench = sight.pooled as BenchTurn | undefined;
  const after_d = sight.assumed("turnAfter_d");
  const together = bench !== undefined && bench.plants_n > 1 && slice.oneSided_d >= ALONE_frac * after_d;
  const oneSided_d = together ? Math.max(slice.oneSided_d, bench.oneSided_d) : slice.oneSided_d;
  const { lean } = slice;
  const leans =
    lean !== undefined &&
    lean.towards === "window" &&
    lean.lean_deg >= SEEN_LEAN_deg &&
    lean.at_ms > slice.turnedAt_ms;
  const left_d = leans ? 0 : (after_d - oneSided_d) / slice.side_frac;
  return {
    due_ms: sight.now_ms + left_d * DAY_ms,
    oneSided_d,
    after_d,
    side_frac: slice.side_frac,
    asymmetry_frac: asymmetry_frac(slice),
    since_d: (sight.now_ms - slice.turnedAt_ms) / DAY_ms,
    together_n: together ? bench.plants_n : 1,
    lean_deg: leans ? lean.lean_deg : undefined,
    isQuiet:
      !leans && slice.turns_n === 0 && bench?.isWritten !== true && slice.oneSided_d > UNWRITTEN_n * after_d,
  };
}

/** The quarter turn as hands are to do it: never a must, together with its bench. */
export function turnTask(due: TurnDue, slice: LightSlice, sight: Outward): Task {
  const words = lightingWords(sight.say).task;
  const best_ms = Math.max(due.due_ms, sight.now_ms);
  return {
    id: `${CRAFT}:turn:${sight.plant.id}`,
    craft: CRAFT,
    work: "turn",
    plant: sight.plant.id,
    // From the early morning of its day on, so that the whole bench falls into one round.
    earliest_ms: Math.min(best_ms, due.due_ms - 12 * HOUR_ms),
    best_ms,
    latest_ms: best_ms + (LATEST_frac * due.after_d * DAY_ms) / due.side_frac,
    minutes: TURN_min,
    must: false,
    amount: { value: QUARTER_deg, unit: "°" },
    title: words.turn,
    said: words.quarter,
    ...(due.together_n > 1 ? { then: words.together(due.together_n) } : {}),
    get why() {
      return due.lean_deg === undefined ? words.why(due.since_d, due.side_frac) : words.whyLean(due.lean_deg);
    },
    act: { kind: TURNED, data: { clockwise_deg: QUARTER_deg } },
    get working() {
      return turnWorking(due, slice, sight);
    },
  };
}
