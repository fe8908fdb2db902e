import { rootRegrowth_d, rootsCarry_d } from "@sillwood/science/medium";
import type { Limit } from "../../round/task.ts";
import type { Say } from "../../words/say.ts";
import type { Sight } from "../craft.ts";
import type { PotSlice } from "./slice.ts";
import { pottingWords } from "./words.ts";

export const CRAFT = "potting";
const DAY_ms = 86_400_000;
/** A hard cut comes before the root wash of the same day, then none for three weeks. @source common practice, no source */
const NO_CUT_d = 21;
/** New roots take no oil, soap or feed for so long at least. @source common practice, no source */
const NO_SPRAY_d = 14;
const LEAST_NO_FEED_d = 14;
const NO_REPOT_d = 60;
/** @source medium-repot sheet 10: not within 7 d of a sale; our assumption for after */
const NO_SALE_d = 14;
/** Share of the former use that roots must carry before feed. @source medium-repot sheet 11 */
const CARRIED_frac = 0.85;
const USUAL_ROOM_C = 20;
/** A pot of fresh medium whose roots were left alone. @source our assumption */
const UNTOUCHED_frac = 0.9;
const NONE: readonly Limit[] = [];

/** When feed may begin: roots carry most of the use again, two weeks at least. Fresh medium waits as well (its charge feeds). */
function noFeedDays_d(slice: PotSlice, sight: Pick<Sight, "assumed">): number {
  const rootsKept_frac = Math.max(0.05, slice.roots?.kept_frac ?? UNTOUCHED_frac);
  const carried_d = rootsCarry_d({
    rootsKept_frac,
    useWanted_frac: CARRIED_frac,
    exponent: sight.assumed("rootExponent_frac"),
    regrowth_d: rootRegrowth_d(USUAL_ROOM_C),
  });
  return Math.max(LEAST_NO_FEED_d, carried_d);
}

/** After-care: what other crafts must leave alone, and until when. None is firm. */
export function potLimits(slice: PotSlice, sight: Sight, say: Say): readonly Limit[] {
  const from_ms = slice.roots?.at_ms ?? slice.day?.pot_ms;
  if (from_ms === undefined || sight.at_ms - from_ms > NO_REPOT_d * DAY_ms) return NONE;
  const words = pottingWords(say).limit;
  const limits: Limit[] = [];
  const until = (work: Limit["work"], days: number, why: string) => {
    const until_ms = from_ms + days * DAY_ms;
    if (until_ms > sight.at_ms)
      limits.push({ work, on: sight.plant.id, from_ms, until_ms, why, by: CRAFT, firm: false });
  };
  if (slice.roots) {
    until("cut", NO_CUT_d, words.cut);
    until("spray", NO_SPRAY_d, words.spray);
    until("wash", NO_REPOT_d, words.wash);
    until("sell", NO_SALE_d, words.sell);
  }
  until("feed", noFeedDays_d(slice, sight), words.feed);
  until("repot", NO_REPOT_d, words.repot);
  return limits;
}
