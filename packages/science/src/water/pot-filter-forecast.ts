import type { Generator } from "../chance/index.ts";
import {
  drawState,
  EVEN_SCORES_n,
  evenScores,
  FIRST_DAY_SCORE,
  normalScore,
  spreadOf,
  THRESHOLD_SCORE,
} from "./pot-filter-draws.ts";
import { CAPACITY, DEPLETION, LEAF, type PotState, SURFACE } from "./pot-filter-state.ts";

/** How a bare surface dries: water lost from its top layer freely, and in all, mm. */
export interface SurfaceLayer {
  readonly readilyEvaporable_mm: number;
  readonly totalEvaporable_mm: number;
}

/**
 * Share of the wet rate at which a drying surface still evaporates: `evaporationReduction` without its checks, since a
 * forecast asks it some ten thousand times.
 *
 * @param lost_mm water lost from the top layer since it was wet [mm], 0 or more
 * @param layer freely and in all evaporable water [mm], the latter larger
 * @returns share, 0 to 1
 * @source FAO56 eq. 74
 */
export function surfaceWet_frac(lost_mm: number, layer: SurfaceLayer): number {
  if (lost_mm <= layer.readilyEvaporable_mm) return 1;
  if (lost_mm >= layer.totalEvaporable_mm) return 0;
  return (layer.totalEvaporable_mm - lost_mm) / (layer.totalEvaporable_mm - layer.readilyEvaporable_mm);
}

/** Demand of one day ahead (the first may be a part of a day), at factors one. */
export interface DayAhead {
  readonly dt_d: number;
  readonly leaf_g: number;
  /** From a wet surface. */
  readonly surface_g: number;
  readonly rain_g: number;
  /** Relative sd of the day's demand: day to day, and from not knowing the weather. */
  readonly sd_frac: number;
}

/** What a pot dries by. */
export interface Drying {
  readonly state: PotState;
  /** In order, the first from now; the last is repeated until every pot is dry. */
  readonly days: readonly DayAhead[];
  /** Depletion at which it should be watered, share of capacity. */
  readonly threshold_frac: number;
  /** Sd of ln threshold that belongs to the threshold itself, beside the doubt of the capacity. */
  readonly thresholdSd: number;
  readonly stressFrom_frac: number;
  /** Random walk of the ln factors, per root day. */
  readonly leaf_per_rootDay: number;
  readonly surface: {
    readonly lost_mm: number;
    readonly layer: SurfaceLayer;
    readonly rim_m2: number;
    /** Share of the leaves' use that the top layer gives. */
    readonly rootShare_frac: number;
  };
}

/** What a dry-down is drawn from. */
export interface DryDown extends Drying {
  /** Depletion at lasting wilt, share of capacity. */
  readonly wilt_frac: number;
  readonly draws_n: number;
  /** The fan keeps this many draws over this many of `days`. */
  readonly fan: { readonly draws_n: number; readonly days_n: number };
  /** Days after which a pot that is still moist counts as "later than this". */
  readonly horizon_d: number;
  readonly chance: Generator;
}

/** Draws of a dry-down. */
export interface DryDownDraws {
  /** Days from now to the threshold, ascending; 0 where it is past, `horizon_d` where later than that. */
  readonly dry_d: Float64Array;
  /** Days from now to lasting wilt, ascending. */
  readonly wilt_d: Float64Array;
  /** Use over the first whole day, g, ascending. */
  readonly use_g: Float64Array;
  /** Water held at the end of each of the fan's days, [day][draw], each day ascending. */
  readonly held_g: readonly Float64Array[];
}

/** Correlation of one day's error with the next. @source air-water sheet section 9 (assumption there) */
export const DAY_TO_DAY_frac = 0.3;
export const LEAST_CAPACITY_frac = 0.2;
/** A wilted plant still draws a little. @source our assumption */
export const LEAST_STRESS_frac = 0.02;
const DRIEST_frac = 1.2;

/**
 * Predictive dates of a drying pot (F9 by simulation): depletion never falls between waterings, so the chance that it
 * is dry by t is the chance that depletion has passed the threshold by t; no first-passage correction.
 *
 * Each draw takes depletion, factors and capacity from the filter, its own threshold, day errors that hang together
 * from day to day, and a factor that wanders.
 *
 * @param dryDown state, days ahead and what they are drawn with
 * @returns sorted days to the threshold and to lasting wilt, use of the first day, water held by day
 * @source lognormal crossing time of a monotone depletion, drawn; noise sizes: our assumption
 */
export function dryDownDraws(dryDown: DryDown): DryDownDraws {
  const { state, draws_n, chance, horizon_d } = dryDown;
  const lower = spreadOf(state);
  const drawn = new Float64Array(7);
  const scores = new Float64Array(EVEN_SCORES_n);
  const nextScores = evenScores(chance);
  const dry_d = new Float64Array(draws_n);
  const wilt_d = new Float64Array(draws_n);
  const use_g = new Float64Array(draws_n);
  const fanDraws_n = Math.min(dryDown.fan.draws_n, draws_n);
  const held_g = Array.from(
    { length: Math.min(dryDown.fan.days_n, dryDown.days.length) },
    () => new Float64Array(fanDraws_n),
  );
  const found = { dry_d: 0, wilt_d: 0, use_g: 0 };
  for (let draw = 0; draw < draws_n; draw++) {
    nextScores(scores);
    drawState(state, lower, scores, drawn);
    drawn[CAPACITY] = Math.max(drawn[CAPACITY] as number, LEAST_CAPACITY_frac * (state[CAPACITY] as number));
    dryOnce(dryDown, drawn, scores, draw < fanDraws_n ? held_g : [], draw, found);
    dry_d[draw] = Math.min(horizon_d, found.dry_d);
    wilt_d[draw] = Math.min(horizon_d, found.wilt_d);
    use_g[draw] = found.use_g;
  }
  dry_d.sort();
  wilt_d.sort();
  use_g.sort();
  // Sorted for who draws the fan: most forecasts are made to ask for dates alone.
  let sorted = false;
  return {
    dry_d,
    wilt_d,
    use_g,
    get held_g() {
      if (!sorted) for (const day_g of held_g) day_g.sort();
      sorted = true;
      return held_g;
    },
  };
}

/** One dry-down from one drawn state, day by day until it has wilted or the horizon is reached. */
function dryOnce(
  dryDown: DryDown,
  drawn: Float64Array,
  scores: Float64Array,
  held_g: readonly Float64Array[],
  draw: number,
  found: { dry_d: number; wilt_d: number; use_g: number },
): void {
  const { days, chance, horizon_d, surface, stressFrom_frac } = dryDown;
  const W = drawn[CAPACITY] as number;
  const dry_g =
    dryDown.threshold_frac * W * Math.exp(dryDown.thresholdSd * (scores[THRESHOLD_SCORE] as number));
  const wilt_g = dryDown.wilt_frac * W;
  const surfaceFactor = Math.exp(drawn[SURFACE] as number);
  const carried = Math.sqrt(1 - DAY_TO_DAY_frac ** 2);
  const perRim_mm_g = 1 / (1000 * surface.rim_m2);
  const last = days.length - 1;
  let D = Math.max(0, Math.min(DRIEST_frac * W, drawn[DEPLETION] as number));
  let leafLn = drawn[LEAF] as number;
  let lost_mm = surface.lost_mm;
  let error = scores[FIRST_DAY_SCORE] as number;
  let elapsed_d = 0;
  let used_g = 0;
  let usedOver_d = 0;
  found.dry_d = D >= dry_g ? 0 : Number.POSITIVE_INFINITY;
  found.wilt_d = D >= wilt_g ? 0 : Number.POSITIVE_INFINITY;
  for (let day = 0; elapsed_d < horizon_d; day++) {
    const ahead = days[Math.min(day, last)] as DayAhead;
    const { dt_d, sd_frac } = ahead;
    if (day > 0) error = DAY_TO_DAY_frac * error + carried * normalScore(chance);
    const luck = Math.exp(sd_frac * error - 0.5 * sd_frac * sd_frac);
    const r = D / W;
    const ks = r > stressFrom_frac ? Math.max(LEAST_STRESS_frac, (1 - r) / (1 - stressFrom_frac)) : 1;
    const leaf_g = Math.exp(leafLn) * ahead.leaf_g * luck * ks;
    const surface_g = surfaceFactor * ahead.surface_g * luck * surfaceWet_frac(lost_mm, surface.layer);
    const day_g = leaf_g + surface_g;
    const before_g = D;
    D = Math.min(DRIEST_frac * W, D + day_g);
    if (D >= dry_g && found.dry_d > elapsed_d) {
      found.dry_d = Math.min(found.dry_d, elapsed_d + (dt_d * (dry_g - before_g)) / day_g);
    }
    if (D >= wilt_g && found.wilt_d > elapsed_d) {
      found.wilt_d = Math.min(found.wilt_d, elapsed_d + (dt_d * (wilt_g - before_g)) / day_g);
    }
    if (ahead.rain_g > 0) D = Math.max(0, D - ahead.rain_g * luck);
    lost_mm += (surface_g + surface.rootShare_frac * leaf_g - ahead.rain_g) * perRim_mm_g;
    if (lost_mm < 0) lost_mm = 0;
    elapsed_d += dt_d;
    if (usedOver_d < 1) {
      used_g += day_g;
      usedOver_d += dt_d;
    }
    // Past lasting wilt nothing is left to forecast; the fan stays at nothing from there.
    if (day < held_g.length) (held_g[day] as Float64Array)[draw] = Math.max(0, W - D);
    if (found.wilt_d <= elapsed_d && found.dry_d <= elapsed_d && usedOver_d >= 1) break;
    leafLn += dryDown.leaf_per_rootDay * Math.sqrt(dt_d) * normalScore(chance);
  }
  found.use_g = usedOver_d > 0 ? used_g / usedOver_d : 0;
}

/**
 * Quantile of sorted draws, by linear interpolation.
 *
 * @param sorted draws, ascending, at least one
 * @param probability 0 to 1
 * @returns the quantile
 * @source Hyndman RJ, Fan Y (1996) Sample quantiles in statistical packages, type 7, from memory
 */
export function quantileOf(sorted: Float64Array, probability: number): number {
  const place = probability * (sorted.length - 1);
  const below = Math.floor(place);
  const low = sorted[below] as number;
  return low + (place - below) * ((sorted[Math.min(below + 1, sorted.length - 1)] as number) - low);
}

/**
 * Share of sorted draws up to a value.
 *
 * @param sorted draws, ascending
 * @param value any number
 * @returns share, 0 to 1
 * @source definition
 */
export function shareUpTo(sorted: Float64Array, value: number): number {
  let low = 0;
  let high = sorted.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((sorted[middle] as number) <= value) low = middle + 1;
    else high = middle;
  }
  return sorted.length === 0 ? 0 : low / sorted.length;
}

/**
 * Twenty equally likely values out of sorted draws: the 2.5 %, 7.5 % ... 97.5 % quantiles.
 *
 * @param sorted draws, ascending
 * @param count_n how many, 20 by default
 * @returns ascending values
 * @source definition
 */
export function equallyLikely(sorted: Float64Array, count_n = 20): readonly number[] {
  return Array.from({ length: count_n }, (_, index) => quantileOf(sorted, (index + 0.5) / count_n));
}
