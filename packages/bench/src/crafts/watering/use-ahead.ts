import { seededGenerator } from "@sillwood/science/chance";
import { quantileOf, useByDay_g } from "@sillwood/science/water";
import type { Daily, Outward } from "../craft.ts";
import { dryingOf, type WaterForecast } from "./forecast.ts";

/** Enough draws for a mean, a spread and an 80 % range. */
const DRAWS_n = 64;
/** The rest of today and a week. */
const DAYS_n = 8;

/** Use on each of the coming days of a pot that is watered whenever it comes due. */
export function useAhead(forecast: WaterForecast, sight: Outward): Daily {
  const { ends_ms, now_ms } = forecast;
  const drawn = useByDay_g({
    ...dryingOf(forecast, sight),
    draws_n: DRAWS_n,
    days_n: DAYS_n,
    chance: seededGenerator(`${sight.seed}/use`),
  });
  return {
    name: "use_g",
    stretches: drawn.map((use_g, i) => {
      const from_ms = i === 0 ? now_ms : (ends_ms[i - 1] as number);
      const mean = use_g.reduce((sum, value) => sum + value, 0) / use_g.length;
      const variance =
        use_g.reduce((sum, value) => sum + (value - mean) ** 2, 0) / Math.max(1, use_g.length - 1);
      return {
        date: sight.dateOf(from_ms),
        from_ms,
        to_ms: ends_ms[i] as number,
        mean,
        sd: Math.sqrt(variance),
        p10: quantileOf(use_g, 0.1),
        p90: quantileOf(use_g, 0.9),
      };
    }),
  };
}
