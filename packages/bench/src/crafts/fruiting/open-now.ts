import type { Outward } from "../craft.ts";
import type { FruitSlice } from "./slice.ts";

const DAY_ms = 86_400_000;
const HOUR_ms = 3_600_000;
/** Hours of the day for pollen; plants in flower are brushed from nine to noon. @source common practice, no source */
const FROM_h = 9;
const BEST_h = 10;
const UNTIL_h = 12;

/** Flowers that are open now as far as somebody saw them within the days that a flower lasts. */
export function openNow(slice: FruitSlice, keepsOpen_d: number, at_ms: number): number {
  const { open } = slice;
  return open && at_ms - open.at_ms < keepsOpen_d * DAY_ms ? open.n : 0;
}

export interface Brushing {
  readonly open_n: number;
  readonly earliest_ms: number;
  readonly best_ms: number;
  readonly latest_ms: number;
  /** Before, within the days that a flower lasts. */
  readonly visits_n: number;
}

/** When the flowers want the brush: indoors, once each morning while they are open. */
export function brushingDue(slice: FruitSlice, sight: Outward): Brushing | undefined {
  const keepsOpen_d = sight.assumed("keepsOpen_d");
  const open_n = openNow(slice, keepsOpen_d, sight.now_ms);
  if (open_n === 0) return undefined;
  const { plant, now_ms } = sight;
  const today = sight.airAt(plant.spot, sight.dateOf(now_ms));
  if (today.outdoors) return undefined;
  const last_ms = slice.brushes_ms.at(-1) ?? -Infinity;
  const isDone = last_ms >= today.from_ms;
  const from_ms = isDone ? today.to_ms : today.from_ms;
  // Tomorrow the same flowers are open no more.
  if (slice.open && from_ms + FROM_h * HOUR_ms - slice.open.at_ms >= keepsOpen_d * DAY_ms) return undefined;
  return {
    open_n,
    earliest_ms: from_ms + FROM_h * HOUR_ms,
    best_ms: Math.max(from_ms + BEST_h * HOUR_ms, isDone ? 0 : Math.min(now_ms, from_ms + UNTIL_h * HOUR_ms)),
    latest_ms: from_ms + UNTIL_h * HOUR_ms + (isDone ? 0 : Math.max(0, now_ms - from_ms - UNTIL_h * HOUR_ms)),
    visits_n: slice.brushes_ms.filter((at_ms) => now_ms - at_ms < keepsOpen_d * DAY_ms).length,
  };
}
