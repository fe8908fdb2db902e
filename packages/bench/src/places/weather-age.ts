import type { Records } from "./records.ts";
import { addDays } from "./time.ts";

/** A forecast older than this no longer counts as fresh. @source our assumption */
const FRESH_ms = 86_400_000;

/** Weather that is not of today: how far it reaches, and when a forecast was written. */
export interface StaleWeather {
  /** Last day that was seen or forecast. */
  readonly until: string;
  readonly written_ms?: number;
}

/**
 * Whether what comes outdoors rests on old weather: a forecast of more than a day ago, or, without one, a record that ends before
 * yesterday. Undefined while it is fresh, and where there is no record at all: that is an assumption and shown as one.
 */
export function staleWeather(
  { lastWeatherDate, lastForecast }: Pick<Records, "lastWeatherDate" | "lastForecast">,
  now_ms: number,
  today: string,
): StaleWeather | undefined {
  if (lastForecast && lastForecast.until >= today && lastForecast.written_ms <= now_ms) {
    const { until, written_ms } = lastForecast;
    return now_ms - written_ms > FRESH_ms ? { until, written_ms } : undefined;
  }
  return lastWeatherDate !== undefined && lastWeatherDate < addDays(today, -1)
    ? { until: lastWeatherDate }
    : undefined;
}
