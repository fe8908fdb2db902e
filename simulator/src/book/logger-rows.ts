import type { BenchAir } from "../nursery/bench-air.ts";
import { HOUR_ms } from "../nursery/calendar.ts";
import type { Chance } from "../nursery/chance.ts";
import { saturation_kPa } from "../nursery/vapour.ts";
import type { SeriesRow } from "./series-file.ts";

export const LOGGER_COLUMNS = ["air_C", "humidity_frac"] as const;

/** Hourly readings with the noise of a cheap sensor; now and then the battery sleeps through a night. */
export function loggerRows(air: BenchAir, from_ms: number, until_ms: number, chance: Chance): SeriesRow[] {
  const rows: SeriesRow[] = [];
  let asleep_h = 0;
  for (let i = Math.round((from_ms - air.from_ms) / HOUR_ms); i < air.hours_n; i++) {
    const at_ms = air.from_ms + i * HOUR_ms;
    if (at_ms >= until_ms) break;
    if (asleep_h > 0) asleep_h--;
    else if (chance.happens(0.0015)) asleep_h = chance.whole(3, 12);
    if (asleep_h > 0) continue;
    const air_C = air.air_C[i] as number;
    const humidity_frac = (air.vapour_kPa[i] as number) / saturation_kPa(air_C) + chance.normal(0, 0.012);
    rows.push({
      at_ms,
      values: [
        Number((air_C + chance.normal(0, 0.15)).toFixed(1)),
        Number(Math.max(0.1, Math.min(0.99, humidity_frac)).toFixed(2)),
      ],
    });
  }
  return rows;
}
