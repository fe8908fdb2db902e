import type { Desk } from "./desk.ts";
import { pageWords } from "./words.ts";

/** "Weather of Sun 12 Jan 18:00; days after Thu 16 Jan are wider for it." Undefined while the weather is fresh. */
export function staleWeatherSaid({ ledger, say, now_ms }: Desk): string | undefined {
  const stale = ledger.staleWeather(now_ms);
  if (!stale) return undefined;
  const until = say.day(ledger.calendar.hour_ms(stale.until, 12));
  return stale.written_ms === undefined
    ? pageWords(say).recordUntil(until)
    : pageWords(say).weatherOf(`${say.day(stale.written_ms)} ${say.time(stale.written_ms)}`, until);
}
