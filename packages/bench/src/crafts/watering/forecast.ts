import { seededGenerator } from "@sillwood/science/chance";
import {
  CAPACITY,
  type DayAhead,
  DEPLETION,
  type DryDownDraws,
  type Drying,
  dryDownDraws,
  equallyLikely,
  LEAF,
  meanOf,
  quantileOf,
  SURFACE,
  type SurfaceLayer,
  shifted,
  surfaceWet_frac,
} from "@sillwood/science/water";
import type { AirDay } from "../../places/ahead.ts";
import { rimArea_m2, USUAL_POT } from "../../plants/pot.ts";
import type { Outward, Sight } from "../craft.ts";
import { askerOf, demandBy, surfaceLayer, TOP_ROOTS_frac } from "./advance.ts";
import { changed } from "./changed.ts";
import { carriedTo } from "./now.ts";
import { NO_POOL, type Pooled } from "./pool.ts";
import { DAILY_AIR_SD_frac, type WaterSlice } from "./slice.ts";
import { thresholdOf } from "./threshold.ts";
import { type UnheardPour, unheardPour } from "./unheard.ts";

const DRAWS_n = 256;
export const HORIZON_d = 60;
/** The chart's fan: enough draws for its quantiles, as many days as the day line. */
const FAN = { draws_n: 200, days_n: 14 };
const DAY_ms = 86_400_000;
/** Lasting wilt as a share of the capacity: its own sd is in the capacity. */
const WILT_frac = 0.98;
/** Doubt of the threshold itself, beside the doubt of the capacity. @source our assumption */
const THRESHOLD_SD = 0.2;
/** How fast a bench's common error fades, per day. @source air-water sheet section 8, pooling (assumption there) */
const POOL_FADE = 0.7;

/** What is expected of one pot, as things stand. */
export interface WaterForecast {
  readonly slice: WaterSlice;
  readonly now_ms: number;
  readonly pooled: Pooled;
  readonly flowering: boolean;
  readonly threshold_frac: number;
  readonly days: readonly DayAhead[];
  readonly ends_ms: readonly number[];
  readonly draws: DryDownDraws;
  /** Watered today and not written yet: in so many of the draws, and nowhere else. */
  readonly unheard?: UnheardPour;
  /** Twenty equally likely instants at which it should be watered. */
  readonly dates_ms: readonly number[];
  /** Next day's use at the middle of what is believed, by part, and its 80 % range. */
  readonly leafUse_g_d: number;
  readonly surfaceUse_g_d: number;
  readonly use_g_d: number;
  readonly useLow_g_d: number;
  readonly useHigh_g_d: number;
  readonly today: AirDay;
}

/** Parts of a forecast that a what-if changes. */
export interface WhatIf {
  readonly draws_n?: number;
  readonly state?: WaterSlice["state"];
  /** Another air and light at the spot of the plant. */
  airAt?(date: string): AirDay;
  readonly demand_frac?: number;
}

/** Forecast of one pot from its slice: 256 dry-downs drawn evenly over the air and light ahead. */
export function forecastOf(slice: WaterSlice, sight: Outward, whatIf: WhatIf = {}): WaterForecast {
  const { now_ms } = sight;
  const at = carriedTo(slice, sight, now_ms);
  const pooled = (sight.pooled as Pooled | undefined) ?? NO_POOL;
  const airAt = (date: string) => whatIf.airAt?.(date) ?? sight.airAt(sight.plant.spot, date);
  const { days, ends_ms } = daysAhead(at, sight, airAt, pooled, whatIf.demand_frac ?? 1);
  const { flowering, threshold_frac } = thresholdOf(sight);
  const believed = whatIf.state
    ? changed(at, { state: whatIf.state, surfaceLost_mm: 0 })
    : withPool(at, pooled);
  const drying = dryingOf({ slice: believed, days, threshold_frac }, sight);
  const unheard = whatIf.state ? undefined : unheardPour(believed, sight);
  const draws = dryDownDraws({
    ...drying,
    otherwise: unheard,
    wilt_frac: WILT_frac,
    draws_n: whatIf.draws_n ?? DRAWS_n,
    fan: FAN,
    horizon_d: HORIZON_d,
    chance: seededGenerator(sight.seed),
  });
  return {
    slice: believed,
    now_ms,
    pooled,
    flowering,
    threshold_frac,
    days,
    ends_ms,
    draws,
    ...(unheard ? { unheard } : {}),
    dates_ms: equallyLikely(draws.dry_d).map((wait_d) => Math.round(now_ms + wait_d * DAY_ms)),
    ...middleUse(believed, days, drying.surface.layer, drying.stressFrom_frac),
    useLow_g_d: quantileOf(draws.use_g, 0.1),
    useHigh_g_d: quantileOf(draws.use_g, 0.9),
    today: airAt(sight.dateOf(now_ms)),
  };
}

/** What a pot dries by, for whoever draws it. */
export const dryingOf = (
  { slice, days, threshold_frac }: Pick<WaterForecast, "slice" | "days" | "threshold_frac">,
  sight: Sight,
): Drying => ({
  state: slice.state,
  days,
  threshold_frac,
  thresholdSd: THRESHOLD_SD,
  stressFrom_frac: sight.assumed("stressFrom_frac"),
  leaf_per_rootDay: sight.assumed("leafWander"),
  surface: {
    lost_mm: slice.surfaceLost_mm,
    layer: surfaceLayer(sight),
    rim_m2: rimArea_m2(sight.plant.pot ?? USUAL_POT),
    rootShare_frac: TOP_ROOTS_frac,
  },
});

/** What the neighbours' weights say of the days since this pot was last seen. */
function withPool(slice: WaterSlice, pooled: Pooled): WaterSlice {
  if (pooled.ln === 0 || slice.seen === undefined) return slice;
  const used_g = Math.max(0, slice.ledger.used_g - slice.seen.used_g);
  return changed(slice, { state: shifted(slice.state, DEPLETION, (Math.exp(pooled.ln) - 1) * used_g) });
}

function daysAhead(
  slice: WaterSlice,
  sight: Outward,
  airAt: (date: string) => AirDay,
  pooled: Pooled,
  demand_frac: number,
) {
  const { now_ms } = sight;
  const dates = sight.datesAhead.length > 0 ? sight.datesAhead : [sight.dateOf(now_ms)];
  const days: DayAhead[] = [];
  const ends_ms: number[] = [];
  const asker = askerOf(sight);
  const noise_frac = sight.assumed("demandNoise_frac");
  let bench_ln = pooled.ln;
  for (const date of dates) {
    const air = airAt(date);
    const from_ms = Math.max(now_ms, air.from_ms);
    if (air.to_ms - from_ms < 60_000) continue;
    const demand = demandBy(asker, air, from_ms, air.to_ms, slice.leafArea_m2);
    const neighbours_frac = bench_ln === 0 ? demand_frac : demand_frac * Math.exp(bench_ln);
    bench_ln *= POOL_FADE;
    const air_frac = slice.seen ? air.demandSd_frac : Math.min(DAILY_AIR_SD_frac, air.demandSd_frac);
    days.push({
      dt_d: (air.to_ms - from_ms) / DAY_ms,
      leaf_g: demand.leaf_g * neighbours_frac,
      surface_g: demand.surface_g * neighbours_frac,
      rain_g: demand.rain_g,
      // Lasting doubt of air and light sits in the factors; what is left is the day's own.
      sd_frac: Math.sqrt(noise_frac * noise_frac + air_frac * air_frac),
    });
    ends_ms.push(air.to_ms);
  }
  if (days.length > 0) return { days, ends_ms };
  return {
    days: [{ dt_d: 1, leaf_g: 0, surface_g: 0, rain_g: 0, sd_frac: 0.2 }],
    ends_ms: [now_ms + DAY_ms],
  };
}

function middleUse(
  slice: WaterSlice,
  days: readonly DayAhead[],
  layer: SurfaceLayer,
  stressFrom_frac: number,
) {
  let leaf_g = 0;
  let surface_g = 0;
  let over_d = 0;
  const r = meanOf(slice.state, DEPLETION) / meanOf(slice.state, CAPACITY);
  const ks = r > stressFrom_frac ? Math.max(0, (1 - r) / (1 - stressFrom_frac)) : 1;
  for (const day of days) {
    if (over_d >= 1) break;
    leaf_g += Math.exp(meanOf(slice.state, LEAF)) * day.leaf_g * ks;
    surface_g +=
      Math.exp(meanOf(slice.state, SURFACE)) * day.surface_g * surfaceWet_frac(slice.surfaceLost_mm, layer);
    over_d += day.dt_d;
  }
  const leafUse_g_d = leaf_g / over_d;
  const surfaceUse_g_d = surface_g / over_d;
  return { leafUse_g_d, surfaceUse_g_d, use_g_d: leafUse_g_d + surfaceUse_g_d };
}
