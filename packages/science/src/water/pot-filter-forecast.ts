import type { Generator } from "../chance/index.ts";
import {
  drawState,
  EVEN_SCORES_n,
  evenPlaces,
  evenScores,
  FIRST_DAY_SCORE,
  spreadOf,
  THRESHOLD_SCORE,
} from "./pot-filter-draws.ts";
import { dayLuck, drawKey, firstScore, luckKey, secondScore } from "./pot-filter-luck.ts";
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

/** Another way in which a pot may stand now: somebody watered it and has not said so yet. */
export interface Otherwise {
  readonly state: PotState;
  /** Water lost from its surface layer, mm. */
  readonly lost_mm: number;
  /** How likely it stands so, 0 to 1. */
  readonly chance_frac: number;
}

/** What a dry-down is drawn from. */
export interface DryDown extends Drying {
  /** That share of the draws starts here: two ways to stand, matched by one in mean and spread, would give dates of neither. */
  readonly otherwise?: Otherwise | undefined;
  /** Depletion at lasting wilt, share of capacity. */
  readonly wilt_frac: number;
  readonly draws_n: number;
  /** The fan keeps this many draws over this many of `days`. */
  readonly fan: { readonly draws_n: number; readonly days_n: number };
  /** Days after which a pot that is still moist counts as "later than this". */
  readonly horizon_d: number;
  readonly chance: Generator;
}

/** Draws of a dry-down. What lies behind the threshold is worked out for who asks; asking changes no number. */
export interface DryDownDraws {
  /** Days from now to the threshold, ascending; 0 where it is past, `horizon_d` where later than that. */
  readonly dry_d: Float64Array;
  /** Days from now to lasting wilt, ascending; never before the threshold. */
  readonly wilt_d: Float64Array;
  /** Use over the first whole day, g, ascending. */
  readonly use_g: Float64Array;
  /** Water held at the end of each of the fan's days, [day][draw], each day ascending. */
  readonly held_g: readonly Float64Array[];
  /** Share of draws that have wilted by so many days from now, less than `horizon_d`; none is followed much further than that. */
  wiltedBy_frac(wait_d: number): number;
}

/** Correlation of one day's error with the next. @source air-water sheet section 9 (assumption there) */
export const DAY_TO_DAY_frac = 0.3;
export const LEAST_CAPACITY_frac = 0.2;
/** A wilted plant still draws a little. @source our assumption */
export const LEAST_STRESS_frac = 0.02;
const DRIEST_frac = 1.2;
const CARRIED_frac = Math.sqrt(1 - DAY_TO_DAY_frac ** 2);

/** Steps by this share fall evenly, whichever part of the draws is looked at. @source the golden section */
const GOLDEN_frac = (Math.sqrt(5) - 1) / 2;

/** Who asks of one visit often asks of the next. */
const WILT_AHEAD_d = 1;

/**
 * Predictive dates of a drying pot (F9 by simulation): depletion never falls between waterings, so the chance that it
 * is dry by t is the chance that depletion has passed the threshold by t; no first-passage correction.
 *
 * Each draw takes depletion, factors and capacity from the filter, its own threshold, day errors that hang together
 * from day to day, and a factor that wanders. The luck of a day hangs on draw and day alone: a draw goes the same way
 * whenever it is followed and however far. Most of that way lies between threshold and wilt, and most who ask want the
 * threshold.
 *
 * @param dryDown state, days ahead and what they are drawn with
 * @returns sorted days to the threshold and to lasting wilt, use of the first day, water held by day
 * @source lognormal crossing time of a monotone depletion, drawn; noise sizes: our assumption
 */
export function dryDownDraws(dryDown: DryDown): DryDownDraws {
  const { draws_n, horizon_d } = dryDown;
  const followed = followerOf(dryDown);
  const dry_d = new Float64Array(draws_n);
  const use_g = new Float64Array(draws_n);
  followed(draws_n, "dry", horizon_d, (way, draw) => {
    dry_d[draw] = Math.min(horizon_d, way.dry_d);
    use_g[draw] = way.usedOver_d > 0 ? way.used_g / way.usedOver_d : 0;
  });
  const dryByDraw_d = dry_d.slice();
  dry_d.sort();
  use_g.sort();
  let wilt_d = new Float64Array(0);
  let wiltKnown_d = Number.NEGATIVE_INFINITY;
  const wiltTo = (until_d: number) => {
    if (until_d <= wiltKnown_d) return wilt_d;
    wiltKnown_d = Math.min(horizon_d, until_d);
    wilt_d = new Float64Array(draws_n).fill(horizon_d);
    // What is not dry by then has not wilted.
    const dries = (draw: number) => (dryByDraw_d[draw] as number) <= wiltKnown_d;
    followed(
      draws_n,
      "wilt",
      wiltKnown_d,
      (way, draw) => {
        wilt_d[draw] = Math.min(horizon_d, way.wilt_d);
      },
      dries,
    );
    return wilt_d.sort();
  };
  let held_g: readonly Float64Array[] | undefined;
  return {
    dry_d,
    use_g,
    get wilt_d() {
      return wiltTo(horizon_d);
    },
    get held_g() {
      held_g ??= fanOf(dryDown, followed);
      return held_g;
    },
    wiltedBy_frac: (wait_d) =>
      shareUpTo(wait_d <= wiltKnown_d ? wilt_d : wiltTo(wait_d + WILT_AHEAD_d), wait_d),
  };
}

function fanOf({ fan, draws_n, days }: DryDown, followed: Follower): readonly Float64Array[] {
  const fanDraws_n = Math.min(fan.draws_n, draws_n);
  const days_n = Math.min(fan.days_n, days.length);
  let until_d = 0;
  for (let day = 0; day < days_n; day++) until_d += (days[day] as DayAhead).dt_d;
  const held_g = Array.from({ length: days_n }, () => new Float64Array(fanDraws_n));
  // Past lasting wilt nothing is left to forecast; the fan stays at nothing from there.
  followed(fanDraws_n, "wilt", until_d, ({ byDay_g, days_n: gone_n }, draw) => {
    for (let day = 0; day < Math.min(days_n, gone_n); day++)
      (held_g[day] as Float64Array)[draw] = byDay_g[day] as number;
  });
  for (const day_g of held_g) day_g.sort();
  return held_g;
}

/** How one draw went, as far as it was followed. */
interface Way {
  dry_d: number;
  wilt_d: number;
  used_g: number;
  usedOver_d: number;
  /** Water held at the end of the days it was followed for. */
  readonly byDay_g: Float64Array;
  days_n: number;
}

/** Follows so many draws, or those of them that are wanted, each to its threshold (and over its first day) or to its wilt, at most so far. */
type Follower = (
  draws_n: number,
  to: "dry" | "wilt",
  until_d: number,
  found: (way: Way, draw: number) => void,
  which?: (draw: number) => boolean,
) => void;

function followerOf(dryDown: DryDown): Follower {
  const { state, chance, horizon_d, fan, otherwise } = dryDown;
  const lower = spreadOf(state);
  const other = otherwise && {
    dryDown: {
      ...dryDown,
      state: otherwise.state,
      surface: { ...dryDown.surface, lost_mm: otherwise.lost_mm },
    },
    lower: spreadOf(otherwise.state),
    chance_frac: otherwise.chance_frac,
  };
  const places = evenPlaces(chance);
  const luck_n = luckKey(chance);
  const leastCapacity_g = LEAST_CAPACITY_frac * (state[CAPACITY] as number);
  return (draws_n, to, until_d, found, which) => {
    const drawn = new Float64Array(7);
    const scores = new Float64Array(EVEN_SCORES_n);
    const nextScores = evenScores(places);
    const way: Way = {
      dry_d: 0,
      wilt_d: 0,
      used_g: 0,
      usedOver_d: 0,
      byDay_g: new Float64Array(fan.days_n),
      days_n: 0,
    };
    for (let draw = 0; draw < draws_n; draw++) {
      nextScores(scores);
      if (which && !which(draw)) continue;
      const from = other && (draw * GOLDEN_frac) % 1 < other.chance_frac ? other : undefined;
      drawState(from ? from.dryDown.state : state, from ? from.lower : lower, scores, drawn);
      drawn[CAPACITY] = Math.max(drawn[CAPACITY] as number, leastCapacity_g);
      follow(
        from ? from.dryDown : dryDown,
        drawn,
        scores,
        drawKey(luck_n, draw),
        to,
        Math.min(until_d, horizon_d),
        way,
      );
      found(way, draw);
    }
  };
}

/** One dry-down from one drawn state, day by day. */
function follow(
  dryDown: DryDown,
  drawn: Float64Array,
  scores: Float64Array,
  key: number,
  to: "dry" | "wilt",
  until_d: number,
  way: Way,
): void {
  const { days, surface, stressFrom_frac } = dryDown;
  const W = drawn[CAPACITY] as number;
  const wilt_g = dryDown.wilt_frac * W;
  const dry_g = Math.min(
    wilt_g,
    dryDown.threshold_frac * W * Math.exp(dryDown.thresholdSd * (scores[THRESHOLD_SCORE] as number)),
  );
  const surfaceFactor = Math.exp(drawn[SURFACE] as number);
  const perRim_mm_g = 1 / (1000 * surface.rim_m2);
  const last = days.length - 1;
  let D = Math.max(0, Math.min(DRIEST_frac * W, drawn[DEPLETION] as number));
  let leafLn = drawn[LEAF] as number;
  let lost_mm = surface.lost_mm;
  let error = scores[FIRST_DAY_SCORE] as number;
  let elapsed_d = 0;
  let used_g = 0;
  let usedOver_d = 0;
  let dry_d = D >= dry_g ? 0 : Number.POSITIVE_INFINITY;
  let wilt_d = D >= wilt_g ? 0 : Number.POSITIVE_INFINITY;
  let day = 0;
  while (elapsed_d < until_d) {
    const ahead = days[day < last ? day : last] as DayAhead;
    const { dt_d, sd_frac, rain_g } = ahead;
    const luck_n = dayLuck(key, day);
    if (day > 0) error = DAY_TO_DAY_frac * error + CARRIED_frac * firstScore(luck_n);
    const luck = Math.exp(sd_frac * error - 0.5 * sd_frac * sd_frac);
    const r = D / W;
    const ks = r > stressFrom_frac ? Math.max(LEAST_STRESS_frac, (1 - r) / (1 - stressFrom_frac)) : 1;
    const leaf_g = Math.exp(leafLn) * ahead.leaf_g * luck * ks;
    const surface_g = surfaceFactor * ahead.surface_g * luck * surfaceWet_frac(lost_mm, surface.layer);
    const day_g = leaf_g + surface_g;
    const before_g = D;
    D = Math.min(DRIEST_frac * W, D + day_g);
    if (D >= dry_g && dry_d > elapsed_d)
      dry_d = Math.min(dry_d, elapsed_d + (dt_d * (dry_g - before_g)) / day_g);
    if (D >= wilt_g && wilt_d > elapsed_d)
      wilt_d = Math.min(wilt_d, elapsed_d + (dt_d * (wilt_g - before_g)) / day_g);
    if (rain_g > 0) D = Math.max(0, D - rain_g * luck);
    lost_mm += (surface_g + surface.rootShare_frac * leaf_g - rain_g) * perRim_mm_g;
    if (lost_mm < 0) lost_mm = 0;
    elapsed_d += dt_d;
    if (usedOver_d < 1) {
      used_g += day_g;
      usedOver_d += dt_d;
    }
    if (day < way.byDay_g.length) way.byDay_g[day] = Math.max(0, W - D);
    day++;
    if (to === "dry" ? dry_d <= elapsed_d && usedOver_d >= 1 : wilt_d <= elapsed_d) break;
    leafLn += dryDown.leaf_per_rootDay * Math.sqrt(dt_d) * secondScore(luck_n);
  }
  way.dry_d = dry_d;
  way.wilt_d = wilt_d;
  way.used_g = used_g;
  way.usedOver_d = usedOver_d;
  way.days_n = day;
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
