import type { Sight, Step } from "../craft.ts";
import { waterIntegrate, waterRates } from "./advance.ts";
import type { WaterSlice } from "./slice.ts";

const DAY_ms = 86_400_000;
const MOST_STEPS_n = 800;

/** The slice carried on to an instant after its last cut, midnight by midnight, as the house would. */
export function carriedTo(slice: WaterSlice, sight: Sight, to_ms: number): WaterSlice {
  let next = slice;
  for (let step = 0; step < MOST_STEPS_n && next.at_ms < to_ms; step++) {
    const day = sight.airAt(sight.plant.spot, sight.dateOf(next.at_ms));
    const from_ms = next.at_ms;
    const end_ms = Math.min(to_ms, Math.max(day.to_ms, from_ms + 1));
    const stretch: Step = {
      plant: sight.plant,
      at_ms: from_ms,
      read: (name) => sight.read(name),
      airAt: (spot, date) => sight.airAt(spot, date),
      dateOf: (at_ms) => sight.dateOf(at_ms),
      site: sight.site,
      assumed: (key) => sight.assumed(key),
      from_ms,
      to_ms: end_ms,
      dt_d: (end_ms - from_ms) / DAY_ms,
      day,
      spells: day.spells,
    };
    next = { ...waterIntegrate(next, waterRates(next, stretch), stretch), at_ms: end_ms };
  }
  return next;
}
