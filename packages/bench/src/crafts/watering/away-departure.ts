import {
  CAPACITY,
  DEPLETION,
  drainedBelief,
  meanOf,
  quantileOf,
  setAnew,
  shareUpTo,
} from "@sillwood/science/water";
import type { AwayMember, Outward, SitterLine, Span } from "../craft.ts";
import { amountFor } from "./amount.ts";
import { changed } from "./changed.ts";
import { decide } from "./decide.ts";
import { forecastOf, type WaterForecast } from "./forecast.ts";
import { carriedTo } from "./now.ts";
import type { WaterSlice } from "./slice.ts";
import { awayWords } from "./words-away.ts";

const DAY_ms = 86_400_000;
export const AWAY_DRAWS_n = 200;
const MOST_WATERINGS_n = 40;

/** One pot on the day of leaving, watered before as advised. */
export interface Departure {
  readonly slice: WaterSlice;
  readonly sight: Outward;
  readonly forecast: WaterForecast;
  readonly days_d: number;
}

/** The pot on the day of leaving: watered at the advised visit if that comes first, else as it will be. */
export function departureOf({ slice, sight }: AwayMember<WaterSlice>, absence: Span): Departure {
  const before = forecastOf(slice, sight, { draws_n: AWAY_DRAWS_n });
  const from_ms = Math.max(sight.now_ms, absence.from_ms);
  const decision = decide(before, sight);
  const watered =
    decision.best_ms < from_ms ? full(carriedTo(before.slice, sight, decision.best_ms)) : before.slice;
  const leaving = carriedTo(watered, sight, from_ms);
  const today = sight.dateOf(from_ms);
  const later: Outward = {
    ...sight,
    now_ms: from_ms,
    at_ms: from_ms,
    datesAhead: sight.datesAhead.filter((date) => date >= today),
  };
  return {
    slice: leaving,
    sight: later,
    forecast: forecastOf(leaving, later, { draws_n: AWAY_DRAWS_n }),
    days_d: Math.max(0, (absence.to_ms - from_ms) / DAY_ms),
  };
}

/** The same pot just watered and drained. */
export function full(slice: WaterSlice): WaterSlice {
  const state = setAnew(slice.state, DEPLETION, drainedBelief(slice.state));
  return changed(slice, { state, surfaceLost_mm: 0 });
}

/** Chances that a forecast passes its threshold, and lasting wilt, within so many days. */
export function chancesWithin(forecast: WaterForecast, days_d: number) {
  return {
    wants_frac: shareUpTo(forecast.draws.dry_d, days_d),
    suffers_frac: shareUpTo(forecast.draws.wilt_d, days_d),
  };
}

/** Days between a sitter's waterings at the accepted risk, and the forecast they come from. */
export function sitterEvery({ slice, sight }: Departure) {
  const forecast = forecastOf(full(slice), sight, { draws_n: AWAY_DRAWS_n });
  const every_d = Math.max(0.5, quantileOf(forecast.draws.dry_d, sight.assumed("waterRisk_frac")));
  return { every_d, forecast };
}

/** Dates and amounts on which a sitter waters, each at the accepted risk after the one before. */
export function sitterLines(
  { slice, sight, forecast, days_d }: Departure,
  absence: Span,
): readonly SitterLine[] {
  const risk_frac = sight.assumed("waterRisk_frac");
  const first_d = quantileOf(forecast.draws.dry_d, risk_frac);
  if (first_d >= days_d) return [];
  const { every_d } = sitterEvery({ slice, sight, forecast, days_d });
  const words = awayWords(sight.say);
  const number = sight.say.name(sight.plant.id);
  const lines: SitterLine[] = [];
  for (let wait_d = first_d; wait_d < days_d && lines.length < MOST_WATERINGS_n; wait_d += every_d) {
    const at_ms = Math.min(sight.now_ms + wait_d * DAY_ms, absence.to_ms);
    const missing_g = forecast.threshold_frac * meanOf(slice.state, CAPACITY);
    const { volume_mL } = amountFor(
      changed(slice, { wilted_ms: undefined }),
      sight,
      missing_g,
      sight.say.units,
    );
    lines.push({
      plant: sight.plant.id,
      at_ms,
      said: words.sitterLine(number, sight.say.day(at_ms), sight.say.volume(volume_mL)),
      amount: { value: volume_mL, unit: "mL" },
    });
  }
  return lines;
}
