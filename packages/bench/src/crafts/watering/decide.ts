import { CAPACITY, meanOf, shareUpTo } from "@sillwood/science/water";
import type { Outward } from "../craft.ts";
import { depletionAt_g } from "./amount.ts";
import { depletion_frac } from "./events.ts";
import { HORIZON_d, type WaterForecast } from "./forecast.ts";

const DAY_ms = 86_400_000;
/** A visit sooner than this is the present one. */
const SAME_VISIT_ms = 3 * 3_600_000;
/** A pot watered within this time is not asked about again on the same round: a look decides, not a guess. @source our assumption */
const JUST_WATERED_ms = 6 * 3_600_000;
/** A pot this likely to wilt before the next visit must be watered at this one. @source our assumption */
const MUST_WILT_frac = 0.15;
/** Later than this chance of being too dry, the latest date has passed. @source our assumption */
const LATEST_frac = 0.5;

/** Up to this share of the way to the threshold a pot counts as moist. @source our assumption, after Turner 2018 (soak and dry-down) */
const STILL_MOIST_frac = 0.6;

/** When to water, decided from the dates and the visits. */
export interface Decision {
  readonly earliest_ms: number;
  readonly best_ms: number;
  readonly latest_ms: number;
  readonly must: boolean;
  /** Chance that it is past its threshold before the visit after the best one. */
  readonly chanceBeforeNext_frac: number;
  /** Whether the best visit is the present one. */
  readonly now: boolean;
}

/**
 * Visit on which to water (F10): the last visit v with P(too dry by the visit after v) still at most q; so the first v
 * at which waiting once more would risk more than q.
 */
export function decide(forecast: WaterForecast, sight: Outward): Decision {
  const { draws, now_ms } = forecast;
  const visits = visitsFrom(now_ms, sight.visits_ms);
  const risk_frac = sight.assumed("waterRisk_frac");
  const dryBy = (at_ms: number) => shareUpTo(draws.dry_d, (at_ms - now_ms) / DAY_ms);
  // Nothing wilts before it is dry: where few are dry by then, nobody need follow the draws to their wilt.
  const mayWiltBy = (at_ms: number) =>
    dryBy(at_ms) > MUST_WILT_frac && draws.wiltedBy_frac((at_ms - now_ms) / DAY_ms) > MUST_WILT_frac;
  const moistUpTo_g = STILL_MOIST_frac * forecast.threshold_frac * meanOf(forecast.slice.state, CAPACITY);
  // A wide range alone is no reason to pour into a pot that is most likely moist: full soaks with dry-downs between
  // spread roots and water better than sips. Only a threat of wilting overrules that.
  const moistAt = (at_ms: number) =>
    depletionAt_g(forecast.slice, forecast.use_g_d, now_ms, at_ms) < moistUpTo_g;
  let best = visits.length - 2;
  const poured_ms = forecast.slice.pours.at(-1)?.at_ms ?? Number.NEGATIVE_INFINITY;
  const first = now_ms - poured_ms < JUST_WATERED_ms && visits.length > 2 ? 1 : 0;
  for (let visit = first; visit + 1 < visits.length; visit++) {
    const next_ms = visits[visit + 1] as number;
    if (dryBy(next_ms) > risk_frac && (!moistAt(visits[visit] as number) || mayWiltBy(next_ms))) {
      best = visit;
      break;
    }
  }
  let latest = best;
  while (
    latest + 2 < visits.length &&
    dryBy(visits[latest + 1] as number) <= LATEST_frac &&
    !mayWiltBy(visits[latest + 1] as number)
  ) {
    latest++;
  }
  const best_ms = visits[best] as number;
  const next_ms = visits[1] as number;
  return {
    earliest_ms: best_ms,
    best_ms,
    latest_ms: visits[latest] as number,
    must: best === 0 && (depletion_frac(forecast.slice) > 0.85 || mayWiltBy(next_ms)),
    chanceBeforeNext_frac: dryBy(visits[best + 1] as number),
    now: best === 0,
  };
}

/** The present visit, the known ones, and daily ones after the last known until the horizon. */
function visitsFrom(now_ms: number, visits_ms: readonly number[]): readonly number[] {
  const ahead = visits_ms.filter((at_ms) => at_ms > now_ms + SAME_VISIT_ms);
  const all = [now_ms, ...ahead];
  const horizon_ms = now_ms + HORIZON_d * DAY_ms;
  for (let at_ms = (all.at(-1) as number) + DAY_ms; at_ms < horizon_ms; at_ms += DAY_ms) all.push(at_ms);
  return all.length > 1 ? all : [now_ms, now_ms + DAY_ms];
}
