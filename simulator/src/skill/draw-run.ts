import type { Chance } from "../nursery/chance.ts";
import type { Visit } from "../nursery/nursery.ts";
import type { Tended } from "../nursery/tend.ts";
import { type Crew, drawCrew } from "./draw-people.ts";
import { drawPlace, type Place, ZONE } from "./draw-place.ts";
import { type DrawnPot, drawPot } from "./draw-pots.ts";
import { drawTools, type Tools } from "./draw-tools.ts";
import { trimVisits } from "./trim-visits.ts";

/** Growers with two benches, a window and a lamp, all drawn. */
export interface DrawnRun extends Place {
  readonly name: string;
  readonly zone: string;
  readonly days_n: number;
  readonly crew: Crew;
  readonly tools: Tools;
  readonly visits: readonly Visit[];
  readonly pots: readonly DrawnPot[];
  readonly tended: readonly Tended[];
  readonly chance: Chance;
}

/** Draws the people, rooms, weather and plants of one run; see `ranges.ts`. */
export function drawRun(
  index: number,
  pots_n: number,
  days_n: number,
  horizon_d: number,
  chance: Chance,
): DrawnRun {
  const all_n = days_n + horizon_d + 2;
  const place = drawPlace(all_n, chance.under("place"));
  const crew = drawCrew(place.days.slice(0, days_n), chance.under("crew"));
  const pots = Array.from({ length: pots_n }, (_, key) =>
    drawPot(key, index, place.from_ms, days_n, all_n, chance.under(`pot ${key}`)),
  );
  return {
    ...place,
    name: `run ${index}`,
    zone: ZONE,
    days_n,
    crew,
    tools: drawTools(chance.under("tools")),
    visits: [...crew.visits, ...trimVisits(pots, crew)],
    pots,
    tended: pots.map(({ tended }) => tended),
    chance,
  };
}
