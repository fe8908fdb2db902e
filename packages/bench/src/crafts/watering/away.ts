import { CAPACITY, DEPLETION, meanOf, quantileOf } from "@sillwood/science/water";
import type { AwayMember, AwayPlan, AwayPlant, Span } from "../craft.ts";
import { chancesWithin, type Departure, departureOf, sitterLines } from "./away-departure.ts";
import { remediesOf } from "./away-remedies.ts";
import type { WaterSlice } from "./slice.ts";
import { awayWords } from "./words-away.ts";

/** A pot this likely to have wilted is looked at first on return. @source our assumption */
const LOOK_FIRST_frac = 0.1;

/** What an absence does to the pots of a bench, ranked remedies with their sums, a sheet for the sitter, the return. */
export function waterAway(members: readonly AwayMember<WaterSlice>[], absence: Span): AwayPlan {
  const departures = members.map((member) => departureOf(member, absence));
  const plants = departures
    .map((departure) => awayPlant(departure))
    .sort((a, b) => b.wants_frac - a.wants_frac || (a.plant < b.plant ? -1 : 1));
  const sitter = departures
    .flatMap((departure) => sitterLines(departure, absence))
    .sort((a, b) => a.at_ms - b.at_ms || (a.plant < b.plant ? -1 : 1));
  const first = departures[0];
  if (!first) return { said: "", plants: [], sitter: [], sitterHow: [], back: [] };
  const words = awayWords(first.sight.say);
  const risk_frac = first.sight.assumed("waterRisk_frac");
  const short_n = plants.filter((plant) => plant.wants_frac > risk_frac).length;
  const drooping = plants.some((plant) => plant.suffers_frac > LOOK_FIRST_frac);
  return {
    said: words.said(short_n, plants.length),
    plants,
    sitter,
    sitterHow: sitter.length > 0 ? [words.sitterHow] : [words.sitterNothing],
    back: [
      ...(drooping && plants[0] ? [{ plant: plants[0].plant, said: words.backLook }] : []),
      ...departures
        .map((departure) => ({ departure, left_frac: leftOnReturn(departure) }))
        .sort((a, b) => a.left_frac - b.left_frac)
        .map(({ departure, left_frac }) => ({
          plant: departure.sight.plant.id,
          said: words.back(departure.sight.say.name(departure.sight.plant.id), left_frac),
        })),
    ],
  };
}

function awayPlant(departure: Departure): AwayPlant {
  const { sight, forecast, days_d } = departure;
  const chances = chancesWithin(forecast, days_d);
  return {
    plant: sight.plant.id,
    said: awayWords(sight.say).pot(sight.say.name(sight.plant.id), chances.wants_frac, chances.suffers_frac),
    ...chances,
    dates_ms: forecast.dates_ms,
    remedies: chances.wants_frac > sight.assumed("waterRisk_frac") ? remediesOf(departure) : [],
  };
}

/** Share of the store left on return, on the middle path, if nobody waters. */
function leftOnReturn({ slice, forecast, days_d }: Departure): number {
  const capacity_g = meanOf(slice.state, CAPACITY);
  const wilt_d = quantileOf(forecast.draws.wilt_d, 0.5);
  if (days_d >= wilt_d) return 0;
  const dry_d = quantileOf(forecast.draws.dry_d, 0.5);
  const now_frac = Math.max(0, 1 - meanOf(slice.state, DEPLETION) / capacity_g);
  const dry_frac = 1 - forecast.threshold_frac;
  if (days_d <= dry_d)
    return now_frac + ((Math.min(now_frac, dry_frac) - now_frac) * days_d) / Math.max(0.1, dry_d);
  return dry_frac * (1 - (days_d - dry_d) / Math.max(0.1, wilt_d - dry_d));
}
