import { normalProbability, normalQuantile } from "@sillwood/science/chance";
import type { Outward } from "../craft.ts";
import { between, dayGrowth } from "./day-growth.ts";
import { growthSettings, waitFor } from "./settings.ts";
import type { Growing } from "./slice.ts";
import { clockworkOf, reached_frac } from "./stage-now.ts";
import { LAST_CLOCKED } from "./stages.ts";

const DAY_ms = 86_400_000;
const DATES_n = 20;
/** Stages whose coming is worth a date: up, first open flower, first ripe colour. */
const MILESTONES = [9, 61, 81] as const;
export type Milestone = (typeof MILESTONES)[number] | "new leaves";
/** A stage this likely reached is no date ahead but a look to take. */
const MOST_LIKELY_PAST_frac = 0.9;
/** Less warmth a day than this, and nothing comes. */
const STANDS_STILL_Cd_d = 0.2;
/** Days at the end of what is known of the air, by whose mean it goes on. */
const LAST_DAYS_n = 7;

export interface Coming {
  readonly milestone: Milestone;
  /** Twenty equally likely instants, ascending. */
  readonly dates_ms: readonly number[];
  /** Warmth that has passed of the wait, and its median. */
  readonly passed_Cd: number;
  readonly wait_Cd: number;
}

/** When the next stage comes, walking forward through the air expected; undefined where none comes within it. */
export function comingStage(growing: Growing, sight: Outward): Coming | undefined {
  const wait = nextWait(growing, sight);
  if (!wait) return undefined;
  const { milestone, passed_Cd, median_Cd, sd_ln } = wait;
  const spread_ln = Math.max(0.02, sd_ln);
  const before = passed_Cd > 0.001 ? normalProbability(Math.log(passed_Cd / median_Cd) / spread_ln) : 0;
  if (before >= MOST_LIKELY_PAST_frac) return undefined;
  const course = warmthAhead(growing, sight);
  if (!course) return undefined;
  const dates_ms: number[] = [];
  for (let i = 0; i < DATES_n; i++) {
    // Of the waits that were possible only those longer than what has passed are left.
    const probability = Math.min(0.9995, Math.max(0.0005, before + ((1 - before) * (i + 0.5)) / DATES_n));
    const total_Cd = median_Cd * Math.exp(normalQuantile(probability) * spread_ln);
    dates_ms.push(course.reaches_ms(Math.max(0, total_Cd - passed_Cd)));
  }
  const middle_ms = ((dates_ms[9] as number) + (dates_ms[10] as number)) / 2;
  return middle_ms <= course.end_ms ? { milestone, dates_ms, passed_Cd, wait_Cd: median_Cd } : undefined;
}

interface Waiting {
  readonly milestone: Milestone;
  readonly passed_Cd: number;
  readonly median_Cd: number;
  readonly sd_ln: number;
}

function nextWait(growing: Growing, sight: Outward): Waiting | undefined {
  const { clock, rest_Cd, sum_Cd } = growing;
  if (clock.how === "guess") return undefined;
  const clockwork = clockworkOf(growing, sight);
  if (rest_Cd > 0) {
    const spread = growthSettings(sight).budbreakSpread_frac;
    return {
      milestone: "new leaves",
      passed_Cd: clockwork.budbreak_Cd - rest_Cd,
      median_Cd: clockwork.budbreak_Cd,
      sd_ln: Math.sqrt(Math.log(1 + spread * spread)),
    };
  }
  if (clock.bbch > LAST_CLOCKED) return undefined;
  for (const milestone of MILESTONES) {
    if (milestone <= clock.bbchHigh || reached_frac(growing, milestone, sight) >= MOST_LIKELY_PAST_frac)
      continue;
    const { median_Cd, sd_ln } = waitFor(clockwork, clock.bbch, milestone);
    if (!(median_Cd > 0)) continue;
    // Where the plant stood between two codes, and doubt of the sum itself, widen the wait.
    const early_Cd = waitFor(clockwork, clock.bbchHigh, milestone).median_Cd;
    const late_Cd = waitFor(clockwork, clock.bbchLow, milestone).median_Cd;
    const start = (late_Cd - early_Cd) / Math.sqrt(12) / median_Cd;
    return {
      milestone,
      passed_Cd: sum_Cd,
      median_Cd,
      sd_ln: Math.sqrt(sd_ln * sd_ln + start * start + (clock.sd_Cd / median_Cd) ** 2),
    };
  }
  return undefined;
}

interface Course {
  readonly end_ms: number;
  /** When so much warmth has come from now; beyond what is known by the mean of its last days. */
  reaches_ms(warmth_Cd: number): number;
}

/** Warmth of the coming days; undefined where there is none. */
function warmthAhead(growing: Growing, sight: Outward): Course | undefined {
  const clockwork = clockworkOf(growing, sight);
  const { now_ms, datesAhead, plant } = sight;
  const ends_ms: number[] = [];
  const sums_Cd: number[] = [];
  let sum_Cd = 0;
  let last_Cd = 0;
  datesAhead.forEach((date, ahead_d) => {
    const day = dayGrowth(sight.airAt(plant.spot, date), clockwork);
    const warmth_Cd = between(day.development, day, Math.max(now_ms, day.from_ms), day.to_ms);
    if (ahead_d >= datesAhead.length - LAST_DAYS_n) last_Cd += warmth_Cd;
    sum_Cd += warmth_Cd;
    ends_ms.push(day.to_ms);
    sums_Cd.push(sum_Cd);
  });
  const end_ms = ends_ms[ends_ms.length - 1];
  const rate_Cd_d = last_Cd / Math.max(1, Math.min(LAST_DAYS_n, datesAhead.length));
  if (end_ms === undefined || rate_Cd_d < STANDS_STILL_Cd_d) return undefined;
  return {
    end_ms,
    reaches_ms(warmth_Cd) {
      const at = sums_Cd.findIndex((each) => each >= warmth_Cd);
      if (at < 0) return Math.round(end_ms + ((warmth_Cd - sum_Cd) / rate_Cd_d) * DAY_ms);
      const from_ms = at === 0 ? now_ms : (ends_ms[at - 1] as number);
      const before_Cd = at === 0 ? 0 : (sums_Cd[at - 1] as number);
      const day_Cd = (sums_Cd[at] as number) - before_Cd;
      const share = day_Cd > 0 ? (warmth_Cd - before_Cd) / day_Cd : 0;
      return Math.round(from_ms + share * ((ends_ms[at] as number) - from_ms));
    },
  };
}
