import { CAPACITY, DEPLETION, meanOf, sdOfSum } from "@sillwood/science/water";
import type { Came, Sight } from "../craft.ts";
import { type Cycles, lastFew, type PastCycle, type PastPoint, type WaterSlice } from "./slice.ts";
import { thresholdOf } from "./threshold.ts";

const DAY_ms = 86_400_000;
const CLOSED_n = 24;
/** Pours within so short a time are one watering. @source our assumption */
const SAME_WATERING_ms = 0.3 * DAY_ms;
/** Use is carried on as it was over so many whole days. @source our assumption */
const RECENT_d = 3;
/** A pot that would have lasted longer than this was not drying: nobody knows when it would have come due. */
const LONGEST_ms = 60 * DAY_ms;

/**
 * The dry-down that a pour ends, settled by the state just before it: when the pot reached its watering threshold; where it
 * was watered before that, when it would have, used up as it was in the days before. It counts only when somebody weighed
 * the pot or looked at it in the second half of the way: else its date is no better known than a forecast was.
 */
export function cyclesAfterPour(slice: WaterSlice, at_ms: number, sight: Sight): Cycles {
  const { cycles, ledger } = slice;
  const { open, closed, unseen_n } = cycles;
  const begun = { from_ms: at_ms, used_g: ledger.used_g };
  if (!open) return { open: begun, closed, unseen_n };
  const lasted_ms = at_ms - open.from_ms;
  if (lasted_ms < SAME_WATERING_ms) return { open: { ...open, ...begun }, closed, unseen_n };
  // Field by field: every watering of every pot makes them.
  const next = { from_ms: begun.from_ms, used_g: begun.used_g, lasted_ms };
  const due = dueOf(slice, open, at_ms, sight);
  const how = due && toldHow(slice, open.from_ms + (Math.min(due.due_ms, at_ms) - open.from_ms) / 2);
  if (!due || !how) return { open: next, closed, unseen_n: unseen_n + 1 };
  const { from_ms } = open;
  const { due_ms, sd_ms } = due;
  const cycle: PastCycle =
    open.lasted_ms === undefined
      ? { from_ms, done_ms: at_ms, due_ms, sd_ms, how }
      : { from_ms, done_ms: at_ms, due_ms, sd_ms, how, lasted_ms: open.lasted_ms };
  return { open: next, closed: lastFew(closed, cycle, CLOSED_n), unseen_n };
}

/** What told how dry the pot was after an instant. Noon droop tells of the noon, so drooping does not count here. */
function toldHow(slice: WaterSlice, after_ms: number): PastCycle["how"] | undefined {
  if (slice.weights.some(({ at_ms, used, state }) => at_ms > after_ms && used && state !== "just drained"))
    return "weighed";
  return slice.looks.some(({ at_ms, look }) => at_ms > after_ms && look !== "drooping")
    ? "looked"
    : undefined;
}

type Open = NonNullable<Cycles["open"]>;

function dueOf(
  slice: WaterSlice,
  open: Open,
  at_ms: number,
  sight: Sight,
): Pick<PastCycle, "due_ms" | "sd_ms"> | undefined {
  const { threshold_frac } = thresholdOf(sight);
  const { state, ledger } = slice;
  const left_g = threshold_frac * meanOf(state, CAPACITY) - meanOf(state, DEPLETION);
  const use_g_ms = recentUse_g_ms(slice, open, at_ms);
  if (!(use_g_ms > 0)) return undefined;
  const due_ms =
    left_g >= 0 ? at_ms + left_g / use_g_ms : usedAt_ms(slice, open, at_ms, ledger.used_g + left_g);
  const doubt_g = sdOfSum(state, [1, 0, 0, 0, 0, -threshold_frac]);
  const early_g = sight.assumed("demandNoise_frac") * Math.max(0, left_g);
  const sd_ms = Math.hypot(doubt_g, early_g) / use_g_ms;
  if (!(Math.abs(due_ms - at_ms) < LONGEST_ms) || !(sd_ms < LONGEST_ms)) return undefined;
  return { due_ms: Math.round(due_ms), sd_ms: Math.round(sd_ms) };
}

/** First midnight of `past` after the pour that opened the dry-down, and one past the last before now; every pour of every pot asks. */
function midnightsSince(
  { past }: WaterSlice,
  open: Open,
  at_ms: number,
): readonly [from: number, to: number] {
  let to = past.length;
  while (to > 0 && (past[to - 1] as PastPoint).at_ms >= at_ms) to--;
  let from = to;
  while (from > 0 && (past[from - 1] as PastPoint).at_ms > open.from_ms) from--;
  return [from, to];
}

/** Over the last whole days, since a morning uses less than its share of the day; else since the pour. */
function recentUse_g_ms(slice: WaterSlice, open: Open, at_ms: number): number {
  const [from, to] = midnightsSince(slice, open, at_ms);
  if (to > from) {
    const last = slice.past[to - 1] as PastPoint;
    let at = to - 1;
    while (at > from && (slice.past[at - 1] as PastPoint).at_ms >= last.at_ms - (RECENT_d + 0.1) * DAY_ms)
      at--;
    const first = slice.past[at] as PastPoint;
    if (last.at_ms > first.at_ms) return (last.used_g - first.used_g) / (last.at_ms - first.at_ms);
  }
  return (slice.ledger.used_g - open.used_g) / (at_ms - open.from_ms);
}

/** When the cumulative use passed an amount, between the pour, the midnights since and now; the pour itself when it had then. */
function usedAt_ms(slice: WaterSlice, open: Open, at_ms: number, wanted_g: number): number {
  const [from, to] = midnightsSince(slice, open, at_ms);
  let after: { readonly at_ms: number; readonly used_g: number } = { at_ms, used_g: slice.ledger.used_g };
  for (let i = to - 1; i >= from - 1; i--) {
    const before = i >= from ? (slice.past[i] as PastPoint) : { at_ms: open.from_ms, used_g: open.used_g };
    if (before.used_g <= wanted_g) {
      const used_g = after.used_g - before.used_g;
      const share = used_g > 0 ? Math.min(1, (wanted_g - before.used_g) / used_g) : 1;
      return before.at_ms + share * (after.at_ms - before.at_ms);
    }
    after = before;
  }
  return open.from_ms;
}

/** When water came due in past dry-downs, as now believed. */
export const waterCame = ({ cycles }: WaterSlice): Came => ({
  work: "water",
  cycles: cycles.closed.map(({ due_ms, ...cycle }) => ({ ...cycle, at_ms: due_ms })),
  unseen_n: cycles.unseen_n,
});
