import type { Generator } from "../chance/index.ts";
import {
  drawState,
  EVEN_SCORES_n,
  evenPlaces,
  evenScores,
  FIRST_DAY_SCORE,
  normalScore,
  spreadOf,
  THRESHOLD_SCORE,
} from "./pot-filter-draws.ts";
import {
  DAY_TO_DAY_frac,
  type DayAhead,
  type Drying,
  LEAST_CAPACITY_frac,
  LEAST_STRESS_frac,
  surfaceWet_frac,
} from "./pot-filter-forecast.ts";
import { CAPACITY, DEPLETION, LEAF, SURFACE } from "./pot-filter-state.ts";

/** What the use of the coming days is drawn from. */
export interface UseAhead extends Drying {
  readonly draws_n: number;
  /** How many of `days`. */
  readonly days_n: number;
  readonly chance: Generator;
}

/**
 * Use on each of the coming days of a pot that is watered whenever it comes due: each draw takes its state from the filter,
 * its own day errors, threshold and wandering factor, as a dry-down does (`dryDownDraws`), and starts anew, full and with a
 * wet surface, after the day on which it passed its threshold.
 *
 * @param ahead state, days and what they are drawn with; at least one draw
 * @returns use by day, g, over that day's own length, [day][draw], each day ascending
 * @source mass balance of a pot, drawn; noise sizes: our assumption
 */
export function useByDay_g(ahead: UseAhead): readonly Float64Array[] {
  const { state, draws_n, chance } = ahead;
  const lower = spreadOf(state);
  const drawn = new Float64Array(7);
  const scores = new Float64Array(EVEN_SCORES_n);
  const nextScores = evenScores(evenPlaces(chance));
  const days_n = Math.min(ahead.days_n, ahead.days.length);
  const use_g = Array.from({ length: days_n }, () => new Float64Array(draws_n));
  for (let draw = 0; draw < draws_n; draw++) {
    nextScores(scores);
    drawState(state, lower, scores, drawn);
    drawn[CAPACITY] = Math.max(drawn[CAPACITY] as number, LEAST_CAPACITY_frac * (state[CAPACITY] as number));
    useOnce(ahead, drawn, scores, use_g, draw);
  }
  for (const day_g of use_g) day_g.sort();
  return use_g;
}

function useOnce(
  ahead: UseAhead,
  drawn: Float64Array,
  scores: Float64Array,
  use_g: readonly Float64Array[],
  draw: number,
): void {
  const { days, chance, surface, stressFrom_frac } = ahead;
  const capacity_g = drawn[CAPACITY] as number;
  const dry_g =
    ahead.threshold_frac * capacity_g * Math.exp(ahead.thresholdSd * (scores[THRESHOLD_SCORE] as number));
  const surfaceFactor = Math.exp(drawn[SURFACE] as number);
  const carried = Math.sqrt(1 - DAY_TO_DAY_frac ** 2);
  let depletion_g = Math.max(0, Math.min(capacity_g, drawn[DEPLETION] as number));
  let leafLn = drawn[LEAF] as number;
  let lost_mm = surface.lost_mm;
  let error = scores[FIRST_DAY_SCORE] as number;
  for (let day = 0; day < use_g.length; day++) {
    const { dt_d, sd_frac, leaf_g, surface_g, rain_g } = days[day] as DayAhead;
    if (day > 0) error = DAY_TO_DAY_frac * error + carried * normalScore(chance);
    if (depletion_g >= dry_g) {
      depletion_g = 0;
      lost_mm = 0;
    }
    const luck = Math.exp(sd_frac * error - 0.5 * sd_frac * sd_frac);
    const used_frac = depletion_g / capacity_g;
    const stress =
      used_frac > stressFrom_frac ? Math.max(LEAST_STRESS_frac, (1 - used_frac) / (1 - stressFrom_frac)) : 1;
    const leaf = Math.exp(leafLn) * leaf_g * luck * stress;
    const bare = surfaceFactor * surface_g * luck * surfaceWet_frac(lost_mm, surface.layer);
    (use_g[day] as Float64Array)[draw] = leaf + bare;
    depletion_g = Math.max(0, depletion_g + leaf + bare - rain_g * luck);
    lost_mm = Math.max(
      0,
      lost_mm + (bare + surface.rootShare_frac * leaf - rain_g) / (1000 * surface.rim_m2),
    );
    leafLn += ahead.leaf_per_rootDay * Math.sqrt(dt_d) * normalScore(chance);
  }
}
